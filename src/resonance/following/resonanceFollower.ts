import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { ColumnGuess } from './columnGuess.ts';
import { canTell } from './followedPlace.ts';
import type { FollowedPlace } from './followedPlace.ts';
import { HAND } from './handModel.ts';
import { firstIndexOf } from './passCentre.ts';
import type { SteadyPass } from './passFit.ts';
import { beginLevel, likeliestPass, logWeight, runPass } from './passRun.ts';
import type { CentreMoment } from './passRun.ts';
import { PlaceMixture } from './placeMixture.ts';
import { LEVEL, SHARE, SLOPE, UNREST, V, X } from './placeState.ts';
import { ToneBlock } from './toneBlock.ts';

/** Values in a block, and blocks between two answers: ten a second. */
const BLOCK = 5;
const BLOCKS_PER_PLACE = 2;
const MOST_STATES = 8;
/** A slide's speed (a judgement): median, m/s, and standard deviation of its logarithm. */
const USUAL_SLIDE_MPS = 0.024;
const SLIDE_SPREAD = 0.45;
/** How badly a model that holds foresees a block (chi-square with two degrees of freedom), and one that doesn't. */
const FORESEEN = 2;
const LOST = 3.5;
/** Over which it is averaged, s. */
const SURPRISE_S = 1;
/** A run less likely than the best one by this (ln) is let go. */
const UNLIKELY = 5;
/** Farther from resonance than this, half widths, a flag is another resonance. */
const ANOTHER = 4;
/** After a strike: level against the last one's (Np); what holding the fork anew does to the column's share. */
const STRIKE_LEVEL_U = 0.7;
const HELD_ANEW_U = 0.12;
/** Of the fork's dying and frequency when struck anew, 1/s and rad/s. */
const DYING_ANEW_U = 0.04;
const TURN_ANEW_U = 0.03;
/** Of a distance, what its uncertainty is at least: far from resonance little is heard, and the width is a guess. */
const DISTANCE_U = 0.3;
/** Places tried after a strike, half widths. */
const TRIED = [-4, -3.2, -2.4, -1.6, -0.8, 0, 0.8, 1.6, 2.4, 3.2, 4] as const;
const TRIED_U = 0.4;
const MOST_STATES_SEEKING = 14;
/** How far a hand goes between two strikes, half widths, standard. */
const MOVED_MEANWHILE = 1.5;

/** A flagged pass. */
export interface FlaggedPass {
  readonly pass: SteadyPass;
  /** The frame's offset as known then, Hz beside the frequency moved to 0 Hz. */
  readonly offsetHz: number;
  /** First value of the sounding that counts. */
  readonly fromIndex: number;
  /** Whether it may be another resonance than the one that is followed, whatever the sound seems to say. */
  readonly mayBeAnother: boolean;
}

/** One idea of the column with all that follows from it. */
interface Run {
  readonly guess: ColumnGuess;
  mixture: PlaceMixture;
  /** ln of how usual its slide was. */
  readonly logPrior: number;
}

/**
 * Follows the column after a pass: ten times a second how far it is from resonance, with its side. It is fed by asking:
 * `advance` works through what the series has got since. Causal: each answer uses what was heard by then.
 */
export class ResonanceFollower {
  private readonly series: ToneSeries;
  private readonly guesses: () => readonly ColumnGuess[];
  private readonly block: ToneBlock;
  /** How badly the model foresaw the newest second. */
  private surprise = FORESEEN;
  private runs: Run[] = [];
  private offsetHz = 0;
  private next = 0;
  private blocks = 0;
  private isSounding = false;

  /** @param guesses  what the column may be, as known at the moment of a flag; see `guessesOf` */
  constructor(series: ToneSeries, guesses: () => readonly ColumnGuess[]) {
    this.series = series;
    this.guesses = guesses;
    this.block = new ToneBlock(series);
  }

  /** The same column in another series of the same source and fork; it waits for a strike there. */
  handedTo(series: ToneSeries): ResonanceFollower {
    const other = new ResonanceFollower(series, this.guesses);
    other.runs = this.runs;
    other.offsetHz = this.offsetHz;
    return other;
  }

  /** Whether the column is near the resonance that is followed; null where that isn't known. */
  get isNear(): boolean | null {
    if (this.runs.length === 0 || !this.isSounding || this.isLost) return null;
    return Math.abs(this.read().halfWidths) < ANOTHER;
  }

  /**
   * A pass was flagged. One that belongs to the resonance that is being followed changes nothing.
   * @returns when the length was right; null where nothing was changed
   */
  flag({ pass, offsetHz, fromIndex, mayBeAnother }: FlaggedPass): CentreMoment | null {
    if (!mayBeAnother && this.isNear === true) return null;
    const order = {
      series: this.series,
      offsetHz,
      fromIndex,
      untilIndex: this.series.length,
      pass,
    };
    const found = runPass(order, likelyGuesses(this.guesses(), pass));
    this.runs = found.map(({ guess, mixture, centre }) => ({
      guess,
      mixture: mixture.thinned(MOST_STATES),
      logPrior: slideLogPrior(guess, centre.standardUncertaintyHalfWidths / centre.standardUncertaintyS),
    }));
    this.surprise = FORESEEN;
    this.offsetHz = offsetHz;
    this.next = found[0].nextIndex;
    this.blocks = 0;
    this.isSounding = true;
    return likeliestPass(found).centre;
  }

  /** The fork was damped or has died. What was learnt of column and microphone stays. */
  end(): void {
    this.isSounding = false;
  }

  /** The fork is struck anew: its own phase and level are unknown, the column's share and width stay. @param startS  of the strike */
  strike(startS: number): void {
    if (this.runs.length === 0) return;
    const start = firstIndexOf(startS, this.series.rateHz);
    this.block.read(Math.min(start, this.series.length - BLOCK), BLOCK, this.offsetHz);
    for (const run of this.runs) run.mixture = struckAnew(run.mixture, run.guess, this.block);
    this.next = start;
    this.isSounding = true;
  }

  /** All answers that have become due. */
  advance(): FollowedPlace[] {
    const places: FollowedPlace[] = [];
    const { rateHz } = this.series;
    for (; this.runs.length > 0 && this.next + BLOCK <= this.series.length; this.next += BLOCK) {
      if (!this.isSounding) continue;
      this.block.read(this.next, BLOCK, this.offsetHz);
      const heard = this.block.isHeard ? this.block : null;
      const timeS = (this.next + (BLOCK - 1) / 2) / rateHz;
      for (const { mixture } of this.runs) mixture.step(BLOCK / rateHz, timeS, heard);
      if (heard !== null) {
        const { surprise } = this.runs[this.likeliest()].mixture;
        this.surprise += ((surprise - this.surprise) * BLOCK) / (SURPRISE_S * rateHz);
      }
      this.blocks += 1;
      if (this.blocks % BLOCKS_PER_PLACE !== 0) continue;
      this.letGo();
      places.push(this.place(timeS));
    }
    return places;
  }

  /** Which run explains best what was heard. */
  private likeliest(): number {
    const logs = this.runs.map(logOf);
    return logs.indexOf(Math.max(...logs));
  }

  /** What can't be any more isn't followed further. */
  private letGo(): void {
    const least = Math.max(...this.runs.map(logOf)) - UNLIKELY;
    if (this.runs.some((run) => logOf(run) < least)) {
      this.runs = this.runs.filter((run) => logOf(run) >= least);
    }
  }

  /** The sound isn't what the model foresees: it was another pass, or the hand did something else. */
  private get isLost(): boolean {
    return this.surprise > LOST;
  }

  /** What the likeliest guess says: between two widths there is none that is right. */
  private read() {
    const { guess, mixture } = this.runs[this.likeliest()];
    return { ...mixture.read(), halfWidthM: guess.halfWidthM };
  }

  private place(timeS: number): FollowedPlace {
    const reading = this.read();
    if (this.isLost || !canTell(reading)) return { timeS, ...NOTHING_TOLD };
    const { halfWidths, halfWidthM } = reading;
    const standardUncertainty = Math.hypot(reading.standardUncertainty, DISTANCE_U * halfWidths);
    return {
      timeS,
      halfWidths,
      standardUncertainty,
      distanceM: halfWidthM === null ? null : halfWidths * halfWidthM,
      standardUncertaintyM: halfWidthM === null ? null : standardUncertainty * halfWidthM,
    };
  }
}

const NOTHING_TOLD = {
  halfWidths: null,
  standardUncertainty: null,
  distanceM: null,
  standardUncertaintyM: null,
};

/** ln of how well a run explains all, up to a constant that all share. */
const logOf = ({ guess, mixture, logPrior }: Run): number => logPrior + logWeight(guess, mixture.logEvidence);

/** What a pass may have been, by how usual its slide would be: the rest isn't worked out. */
function likelyGuesses(guesses: readonly ColumnGuess[], { halfWidthS }: SteadyPass): readonly ColumnGuess[] {
  const logs = guesses.map((guess) => Math.log(guess.weight) + slideLogPrior(guess, 1 / halfWidthS));
  const least = Math.max(...logs) - UNLIKELY;
  return guesses.filter((_guess, index) => logs[index] >= least);
}

/** ln of how usual the slide would be if the column were so. @param halfWidthsPerS  its speed, > 0 */
function slideLogPrior({ halfWidthM }: ColumnGuess, halfWidthsPerS: number): number {
  if (halfWidthM === null) return 0;
  return -0.5 * (Math.log((halfWidthM * halfWidthsPerS) / USUAL_SLIDE_MPS) / SLIDE_SPREAD) ** 2;
}

/** The column at any place near where it was, and the level that would make each agree with what is heard. */
function struckAnew(before: PlaceMixture, guess: ColumnGuess, heard: ToneBlock): PlaceMixture {
  const old = before.best;
  const mixture = new PlaceMixture(MOST_STATES_SEEKING);
  if (old === null) return mixture;
  for (const x of TRIED) {
    const state = mixture.add();
    state.copy(old);
    state.ringUpS = guess.ringUpS;
    state.seeksCrossing = false;
    state.mean[X] = x;
    state.mean[V] = 0;
    state.setVariance(X, TRIED_U ** 2);
    state.setVariance(V, HAND.change ** 2);
    const share = HELD_ANEW_U ** 2 * (old.mean[SHARE] ** 2 + old.mean[SHARE + 1] ** 2);
    for (let k = 0; k < 2; k += 1) {
      state.mean[UNREST + k] = 0;
      state.setVariance(UNREST + k, HAND.unrest ** 2);
      state.blur(SHARE + k, share);
      state.setVariance(LEVEL + k, 0.3 ** 2);
    }
    state.blur(SLOPE, DYING_ANEW_U ** 2);
    state.blur(SLOPE + 1, TURN_ANEW_U ** 2);
    state.settle();
    beginLevel(state, heard);
    const off = (state.mean[LEVEL] - old.mean[LEVEL]) / STRIKE_LEVEL_U;
    const moved = (x - old.mean[X]) / Math.hypot(MOVED_MEANWHILE, 1);
    state.weight = Math.exp(-0.5 * (off * off + moved * moved));
  }
  mixture.normalise();
  mixture.logEvidence = before.logEvidence;
  return mixture;
}
