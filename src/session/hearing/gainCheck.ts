import { median } from '../../numeric/median.ts';
import { REWRITTEN_DB, STEADY_DB } from './gainLimits.ts';
import type { LevelPoint } from './listeningTypes.ts';

/** What a struck fork beside a fixed column, and somebody talking, say about the gain. */
export interface GainAnswer {
  /** `steady`: the fork died smoothly while there was talk. `rewritten`: something changed its level. */
  readonly verdict: 'steady' | 'rewritten' | 'cannot-tell';
  /** How far the level lies from a smooth decay (four of five bins are nearer), dB; null before it can be told. */
  readonly departureDb: number | null;
  /** How long the decay was followed, s. */
  readonly followedS: number;
  /** How long somebody talked meanwhile, s. */
  readonly talkS: number;
  /** What is still missing for an answer; null with one. */
  readonly missing: 'strike' | 'time' | 'talk' | 'fork' | null;
}

/** After the strike its click and the fork's clang die first, s. */
const SETTLE_S = 0.6;
/** The decay that is followed, s: a browser's suppression of noise takes about three seconds to eat a tone. */
const LEAST_S = 6;
const MOST_S = 10;
/** Levels are medians of bins this long, s: a syllable on the fork's pitch lasts less. */
const BIN_S = 0.5;
const LEAST_BINS = 6;
/** Level of the tone over the room that a bin must reach to count with its level, dB. */
const HEARD_DB = 9;
/** The fork's level at first above the talk's of the first seconds, dB. */
const ABOVE_TALK_DB = -3;
const EARLY_POINTS = 60;
/** Of ten points that overlap so many are independent. */
const FREE_VALUES = 2.5;
const FOUR_OF_FIVE = 0.8;
/** Points of the running median that finds strikes: half a second. */
const SMOOTH = 10;
/** Levels within this of the loudest belong to the same strike, dB. */
const LOUD_DB = 8;
/** A rise within half a second that stays is another strike, dB. */
const STRIKE_DB = 12;
/** The rest of the sound this far above its quiet moments is talk, dB; so much of it is needed, s. */
const TALK_DB = 8;
const LEAST_TALK_S = 1.5;
/** A hand's trembling and the fork's own unevenness, dB: the unit of the robust fit. */
const UNIT_DB = 0.4;

/** Below the steps of 24 bits: silence that no room makes. */
const LOST_DB = -130;

interface Bin {
  readonly timeS: number;
  /** Level of the tone; where it wasn't heard, the most that it can have been. */
  readonly levelDb: number;
  readonly isHeard: boolean;
  readonly noiseDb: number;
}

/**
 * Judges whether something rewrites the level: the column is fixed, the fork is struck once and dies, somebody talks.
 * @param points  the level points of the check so far, 20 a second, in order of time
 */
export function judgeGain(points: readonly LevelPoint[]): GainAnswer {
  const strikeAt = lastStrike(points);
  const strike = strikeAt === null ? undefined : points[strikeAt];
  if (strikeAt === null || strike === undefined) return nothingYet('strike');
  const startS = strike.timeS + SETTLE_S;
  const decay = points.slice(strikeAt).filter(({ timeS }) => timeS >= startS && timeS < startS + MOST_S);
  const bins = binsOf(decay, startS);
  const followedS = bins.length * BIN_S;
  const talkS = talkIn(decay, quietDb(points.slice(0, strikeAt), decay));
  const heard = bins.filter((bin) => bin.isHeard);
  const partly = { followedS, talkS, departureDb: null };
  if (followedS < LEAST_S) return { ...partly, verdict: 'cannot-tell', missing: 'time' };
  if (heard.length < LEAST_BINS) return { ...partly, verdict: 'cannot-tell', missing: 'fork' };
  if (!isLouderThanTalk(heard, decay)) return { ...partly, verdict: 'cannot-tell', missing: 'fork' };
  const departureDb = departure(heard, bins);
  const known = { followedS, talkS, departureDb };
  // Without talk nothing provokes a gain, and what departs then has other causes: a hand, sound that was lost.
  if (talkS < LEAST_TALK_S) return { ...known, verdict: 'cannot-tell', missing: 'talk' };
  if (departureDb > REWRITTEN_DB) return { ...known, verdict: 'rewritten', missing: null };
  if (departureDb > STEADY_DB || heard.length < 0.75 * bins.length || followedHeardS(heard) < LEAST_S - 1) {
    return { ...known, verdict: 'cannot-tell', missing: 'fork' };
  }
  return { ...known, verdict: 'steady', missing: null };
}

function nothingYet(missing: GainAnswer['missing']): GainAnswer {
  return { verdict: 'cannot-tell', departureDb: null, followedS: 0, talkS: 0, missing };
}

/** Index of the point at which the fork was struck last; null before the first strike. */
function lastStrike(points: readonly LevelPoint[]): number | null {
  if (points.length < 4 * SMOOTH) return null;
  const levels = points.map(({ toneDb, roomDb }) => toneDb ?? roomDb);
  const smooth = levels.map((_, i) => median(levels.slice(i, i + SMOOTH)));
  const leastDb = Math.max(...smooth) - LOUD_DB;
  // The first moment that is loud and stays so: a gain that rises later may be louder than the strike.
  let found = smooth.findIndex((_, i) =>
    [0, 1, 2].every((later) => (smooth[i + later * SMOOTH] ?? Infinity) >= leastDb),
  );
  for (let i = found + 2 * SMOOTH; i + 3 * SMOOTH < smooth.length; i += 1) {
    // A shout on the fork's pitch is over two seconds later; another strike is not.
    const after = Math.min(smooth[i], smooth[i + SMOOTH], smooth[i + 3 * SMOOTH]);
    if (after - smooth[i - SMOOTH] >= STRIKE_DB) found = i;
  }
  while (found < points.length && points[found]?.toneDb === null) found += 1;
  return found < points.length ? found : null;
}

function binsOf(decay: readonly LevelPoint[], startS: number): Bin[] {
  const bins: LevelPoint[][] = [];
  for (const point of decay) {
    const at = Math.floor((point.timeS - startS) / BIN_S);
    (bins[at] ??= []).push(point);
  }
  return bins.flatMap((within) => {
    // Sound that was lost says nothing.
    if (within.length < 5 || median(within.map((point) => point.broadbandDb)) < LOST_DB) return [];
    const timeS = within.reduce((sum, point) => sum + point.timeS, 0) / within.length;
    const roomDb = median(within.map((point) => point.roomDb));
    const levels = within.flatMap(({ toneDb }) => (toneDb === null ? [] : [toneDb]));
    const levelDb = levels.length > within.length / 2 ? median(levels) : -Infinity;
    const isHeard = levelDb > roomDb + HEARD_DB;
    // Noise of power N beside a tone of power S scatters its level by 8.686 dB √(N / 2S); a median of ten halves it.
    const roomNoiseDb = (8.686 * Math.sqrt(10 ** ((roomDb - levelDb) / 10) / 2)) / 2;
    // Syllables on the fork's pitch come and go within the bin: their scatter shows there.
    const scatterDb = isHeard ? 1.48 * median(levels.map((level) => Math.abs(level - levelDb))) : 0;
    const noiseDb = Math.max(roomNoiseDb, scatterDb / Math.sqrt(FREE_VALUES));
    return [
      { timeS, levelDb: isHeard ? levelDb : roomDb + HEARD_DB, isHeard, noiseDb: isHeard ? noiseDb : 0 },
    ];
  });
}

/**
 * How far the bins lie from a line through the heard ones: four of five are nearer, because a shout on the fork's
 * pitch spoils some. A bin that wasn't heard counts only by what it lacks.
 */
function departure(heard: readonly Bin[], bins: readonly Bin[]): number {
  const line = robustLine(heard);
  const offs = bins.map((bin) => {
    const off = bin.levelDb - line.atDb - Math.min(0, line.slopeDbPerS) * bin.timeS;
    const own = bin.isHeard ? Math.abs(off) : Math.max(0, -off);
    return Math.sqrt(Math.max(0, own ** 2 - bin.noiseDb ** 2));
  });
  offs.sort((one, other) => one - other);
  // A struck fork can only grow quieter: what rises was turned up.
  const rise = Math.max(0, line.slopeDbPerS) * (bins.length * BIN_S);
  return Math.max(offs[Math.floor(FOUR_OF_FIVE * offs.length)] ?? 0, rise / 2);
}

/** Line through the levels, each weighted by its noise, far ones less (Huber's weights, twelve rounds). */
function robustLine(bins: readonly Bin[]): { atDb: number; slopeDbPerS: number } {
  let line = { atDb: 0, slopeDbPerS: 0 };
  for (let round = 0; round < 12; round += 1) {
    let [w, wt, wtt, wy, wty] = [0, 0, 0, 0, 0];
    for (const { timeS, levelDb, noiseDb } of bins) {
      const scale = Math.hypot(UNIT_DB, noiseDb);
      const off = Math.abs(levelDb - line.atDb - line.slopeDbPerS * timeS) / scale;
      const weight = (round === 0 ? 1 : Math.min(1, 1.5 / Math.max(off, 1e-9))) / scale ** 2;
      w += weight;
      wt += weight * timeS;
      wtt += weight * timeS * timeS;
      wy += weight * levelDb;
      wty += weight * timeS * levelDb;
    }
    const slopeDbPerS = (w * wty - wt * wy) / (w * wtt - wt * wt);
    line = { slopeDbPerS, atDb: (wy - slopeDbPerS * wt) / w };
  }
  return line;
}

/** Whether the fork began about as loud as the talk: a talker drowns a faint fork, and its level means nothing then. */
function isLouderThanTalk(heard: readonly Bin[], decay: readonly LevelPoint[]): boolean {
  const beganDb = median(heard.slice(0, 3).map((bin) => bin.levelDb));
  return beganDb > median(decay.slice(0, EARLY_POINTS).map(restDb)) + ABOVE_TALK_DB;
}

function followedHeardS(heard: readonly Bin[]): number {
  return (heard.at(-1)?.timeS ?? 0) - (heard.at(0)?.timeS ?? 0) + BIN_S;
}

/** Level of the sound without the tone, dB: its quietest tenth before the strike, else during the decay. */
function quietDb(before: readonly LevelPoint[], decay: readonly LevelPoint[]): number {
  const from = before.length >= 10 ? before : decay;
  const levels = from.map((point) => Math.max(LOST_DB, restDb(point))).sort((a, b) => a - b);
  return levels[Math.floor(levels.length / 10)] ?? 0;
}

function talkIn(decay: readonly LevelPoint[], quiet: number): number {
  return decay.filter((point) => restDb(point) > quiet + TALK_DB).length / 20;
}

/** The whole sound's level without the tone's; nothing where it lies 13 dB under the tone or more: it is lost there. */
function restDb({ toneDb, broadbandDb }: LevelPoint): number {
  const all = 10 ** (broadbandDb / 10);
  const rest = toneDb === null ? all : all - 10 ** (toneDb / 10);
  return rest > 0.05 * all ? 10 * Math.log10(rest) : -Infinity;
}
