import { defaultToleranceHz } from '../../../src/session/hearing/forkTolerance.ts';
import { Random, slowNoise } from '../detector/random.ts';
import { HAND_RATE_HZ, unsteadiness } from './hand.ts';
import { LiveStages } from './liveStages.ts';
import { DistancePolicy, LevelPolicy, MovingHand } from './obeyingHand.ts';
import type { Policy, Told } from './obeyingHand.ts';
import { roomSound, SAMPLE_RATE_HZ } from './recording.ts';
import { columnOf, columnShare, drawScene } from './scene.ts';
import type { Room, Scene } from './scene.ts';
import { at, OnePole } from './tone.ts';

/** Frames in an analysis block, and from one value of the envelope to the next. */
const BLOCK = 1024;
const ENVELOPE_STEP = 8;
/** Of the direct sound at the strike. */
const AMPLITUDE = 0.04;
/** From page to hand, s. */
const DELAY_S = 0.3;
/** The tremor of a hand: 50 µm, up to 4 Hz. */
const TREMOR_M = 5e-5;
const TREMOR_HZ = 4;
/** A fork that was damped, or held away to be struck, falls within this, s. */
const DAMPING_S = 0.03;
const ATTACK_S = 0.02;
/** Within this of resonance the column is there, m, and must stay for so long, s. */
const THERE_M = 0.0005;
const HELD_S = 1;
/** Time allowed after the flag, s: as demanded, and twice as long. */
export const ALLOWED_S = [5, 10] as const;

export type Way = 'distance' | 'level';

/** How one trial ended. */
export interface Outcome {
  readonly isFlagged: boolean;
  /** Was the column at resonance and held there, after each of the allowed times? */
  readonly isThere: readonly boolean[];
  /** How far off it was then, mm, > 0 too long. */
  readonly offMm: readonly number[];
}

export interface Trial {
  readonly scene: Scene;
  readonly isStruckAgain: boolean;
}

export function drawTrial(seed: number, room: Room): Trial {
  const random = new Random(seed).branch('closed loop');
  const isStruckAgain = seed % 2 === 0;
  const scene = drawScene(random.branch('scene'), 'one pole', room, isStruckAgain);
  const passMps = random.uniform(0.015, 0.04);
  return { scene: { ...scene, hand: { ...scene.hand, passMps } }, isStruckAgain };
}

/** One pass, a flag, and a hand that goes back as the page tells it. The same seed draws the same for each way. */
export function runTrial(seed: number, { scene, isStruckAgain }: Trial, way: Way): Outcome {
  const random = new Random(seed).branch('trial');
  const column = columnOf(scene);
  const { resonantLengthM: centreM, halfWidthM } = column;
  const direction = random.sign();
  const wantedM = random.uniform(0.018, 0.04) + 4 * halfWidthM;
  // A short column can't start far below its resonance.
  const beforeM = direction > 0 ? Math.min(wantedM, centreM - 0.03) : wantedM;
  const hand = new MovingHand(random.branch(`moves ${way}`), centreM - direction * beforeM);
  const strikeS = random.uniform(1, 1.6);
  const slideS = strikeS + random.uniform(0.7, 1.5);
  const passS = slideS + beforeM / scene.hand.passMps;
  const longestS = passS + 3 + ALLOWED_S[1] + HELD_S;
  const sound = new ColumnSound(random.branch('sound'), scene, longestS, passS - strikeS);
  const tube = { ends: scene.closed ? 'closed' : 'open', diameterM: scene.diameterM } as const;
  const fork = { nominalHz: scene.nominalHz, toleranceHz: defaultToleranceHz(scene.nominalHz) };
  const stages = new LiveStages(SAMPLE_RATE_HZ, fork, tube);
  const policy: Policy =
    way === 'distance' ? new DistancePolicy(-direction) : new LevelPolicy(-direction, DELAY_S);
  const again = { afterS: random.uniform(1, 2.5), gapS: random.uniform(0.2, 0.5) };
  const tells: { readonly timeS: number; readonly told: Told }[] = [];
  const track: { readonly timeS: number; readonly offM: number }[] = [];
  let flaggedS: number | null = null;
  /** Flags before the column has passed are the room's. */
  let roomFlags = 0;
  sound.strikeAt(strikeS, 1);
  for (let timeS = 0; timeS < longestS; timeS = sound.timeS) {
    if (flaggedS === null && timeS >= slideS) hand.slide(direction * scene.hand.passMps);
    // Nothing was flagged though the column has long passed: the trial is over.
    if (flaggedS === null && timeS > passS + 3) break;
    if (flaggedS !== null && timeS > flaggedS + ALLOWED_S[1] + HELD_S) break;
    const told = stages.push(sound.block(hand));
    tells.push({ timeS: sound.timeS, told });
    track.push({ timeS: sound.timeS, offM: sound.lengthM - centreM });
    if (direction * (sound.lengthM - centreM) < 0 && flaggedS === null) roomFlags = told.flags;
    if (flaggedS === null && told.flags > roomFlags) {
      flaggedS = sound.timeS;
      if (isStruckAgain) sound.strikeAgain(flaggedS + again.afterS, again.gapS);
    }
    const seen = tells.findLast((one) => one.timeS <= sound.timeS - DELAY_S)?.told;
    if (seen !== undefined && seen.flags > roomFlags) policy.look(seen, hand, sound.timeS);
  }
  return outcomeOf(track, flaggedS);
}

function outcomeOf(
  track: readonly { readonly timeS: number; readonly offM: number }[],
  flaggedS: number | null,
): Outcome {
  if (flaggedS === null) return { isFlagged: false, isThere: ALLOWED_S.map(() => false), offMm: [] };
  const after = ALLOWED_S.map((allowedS) => {
    const from = flaggedS + allowedS;
    return track.filter(({ timeS }) => timeS >= from && timeS <= from + HELD_S);
  });
  return {
    isFlagged: true,
    isThere: after.map((held) => held.every(({ offM }) => Math.abs(offM) <= THERE_M)),
    offMm: after.map((held) => 1000 * held[0].offM),
  };
}

/** What the microphone hears of fork, column and room, made block by block as the hand moves. */
class ColumnSound {
  /** Of the column at the end of the newest block. */
  lengthM = 0;
  private readonly scene: Scene;
  private readonly room: Float32Array;
  private readonly levelNp: Float64Array;
  private readonly phaseRad: Float64Array;
  private readonly tremorM: Float64Array;
  private readonly pole: OnePole;
  private readonly share: readonly [number, number];
  private readonly column: ReturnType<typeof columnOf>;
  private readonly random: Random;
  private readonly strikes: { startS: number; level: number; phaseRad: number }[] = [];
  private frames = 0;
  private last: readonly [number, number] = [0, 0];

  /** @param sinceStrikeS  from the strike to the pass, when the room is as loud as the fork */
  constructor(random: Random, scene: Scene, durationS: number, sinceStrikeS: number) {
    this.scene = scene;
    this.random = random.branch('strikes');
    const length = Math.ceil(durationS * SAMPLE_RATE_HZ) + BLOCK;
    const atPass = AMPLITUDE * Math.exp(-sinceStrikeS / scene.decayS);
    this.room = roomSound(random.branch('room'), scene, length, atPass / Math.SQRT2);
    const count = Math.ceil((durationS + 1) * HAND_RATE_HZ);
    const { levelNp, phaseRad } = unsteadiness(random.branch('hand'), scene.hand, count);
    this.levelNp = levelNp;
    this.phaseRad = phaseRad;
    this.tremorM = slowNoise(random.branch('tremor'), count, HAND_RATE_HZ, TREMOR_HZ, TREMOR_M);
    this.column = columnOf(scene);
    this.pole = new OnePole(this.column.ringUpS);
    const m = columnShare(scene.riseDb, scene.angleRad);
    this.share = [m * Math.cos(scene.angleRad), m * Math.sin(scene.angleRad)];
  }

  get timeS(): number {
    return this.frames / SAMPLE_RATE_HZ;
  }

  strikeAt(startS: number, level: number): void {
    this.strikes.push({ startS, level, phaseRad: this.random.uniform(-3, 3) });
  }

  /** The fork is taken away and struck: nothing sounds meanwhile. */
  strikeAgain(startS: number, gapS: number): void {
    this.strikeAt(startS, 0);
    this.strikeAt(startS + gapS, Math.exp(0.4 * this.random.gauss()));
  }

  /** The next block while the hand goes on moving. */
  block(hand: MovingHand): Float32Array {
    const samples = this.room.slice(this.frames, this.frames + BLOCK);
    const turn = (2 * Math.PI * this.scene.forkHz) / SAMPLE_RATE_HZ;
    for (let i = 0; i < BLOCK; i += ENVELOPE_STEP) {
      const [fromRe, fromIm] = this.last;
      hand.step(ENVELOPE_STEP / SAMPLE_RATE_HZ);
      this.last = this.heardAt((this.frames + i) / SAMPLE_RATE_HZ, hand.positionM);
      for (let k = 0; k < ENVELOPE_STEP; k += 1) {
        const part = k / ENVELOPE_STEP;
        const re = fromRe + part * (this.last[0] - fromRe);
        const im = fromIm + part * (this.last[1] - fromIm);
        const angle = turn * (this.frames + i + k);
        samples[i + k] += AMPLITUDE * (re * Math.cos(angle) - im * Math.sin(angle));
      }
    }
    this.frames += BLOCK;
    return samples;
  }

  private heardAt(timeS: number, positionM: number): readonly [number, number] {
    this.lengthM = positionM + at(this.tremorM, timeS);
    const size = Math.exp(at(this.levelNp, timeS));
    const turn = at(this.phaseRad, timeS);
    const [x, y] = this.forkAt(timeS);
    const re = size * (x * Math.cos(turn) - y * Math.sin(turn));
    const im = size * (x * Math.sin(turn) + y * Math.cos(turn));
    const { resonantLengthM, halfWidthM } = this.column;
    this.pole.step((this.lengthM - resonantLengthM) / halfWidthM, re, im, ENVELOPE_STEP / SAMPLE_RATE_HZ);
    const [shareRe, shareIm] = this.share;
    return [
      re + shareRe * this.pole.re - shareIm * this.pole.im,
      im + shareRe * this.pole.im + shareIm * this.pole.re,
    ];
  }

  /** The fork alone. Each strike ends the one before. */
  private forkAt(timeS: number): readonly [number, number] {
    let [re, im] = [0, 0];
    for (const [i, { startS, level, phaseRad }] of this.strikes.entries()) {
      if (timeS < startS) break;
      const endS = this.strikes.at(i + 1)?.startS ?? Infinity;
      const since = timeS - startS;
      let size = level * Math.exp(-since / this.scene.decayS) * (1 - Math.exp(-since / ATTACK_S));
      if (timeS > endS) size *= Math.exp((endS - timeS) / DAMPING_S);
      re += size * Math.cos(phaseRad);
      im += size * Math.sin(phaseRad);
    }
    return [re, im];
  }
}
