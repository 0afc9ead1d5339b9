import { ColumnAtPitch, type Envelope, type Tube } from './column.ts';
import { addBurst } from './noises.ts';
import { slowNoise, type Random } from './random.ts';

export interface ForkTruth {
  readonly nominalHz: number;
  readonly actualHz: number;
  /** Time in which the amplitude falls to 1/e. */
  readonly decayTimeS: number;
}

/** One strike and what the hand does with the fork afterwards. `null`: it doesn't happen. */
export interface Strike {
  readonly strikeS: number;
  /** Amplitude relative to the performance's level. */
  readonly strength: number;
  /** The fork moves to the mouth from … to …; and away again. */
  readonly visits: readonly { fromS: number; byS: number; leaveS: number | null; goneS: number | null }[];
  readonly dampedS: number | null;
}

/** A fork, a tube and two hands. */
export interface Performance {
  readonly fork: ForkTruth;
  readonly tube: Tube | null;
  /** Length of the column at the envelope's rate, m. */
  readonly lengthM: Float64Array;
  readonly strikes: readonly Strike[];
  /** Amplitude of the direct sound at the microphone after a strike of strength 1. */
  readonly amplitude: number;
  /** Rise of the level over the direct sound at the resonance `riseOrder`, dB. */
  readonly riseDb: number;
  readonly riseOrder: number;
  /** Phase of the mouth's sound against the direct sound at resonance, rad. */
  readonly mouthPhaseRad: number;
  /** Direct level away from the mouth against that at the mouth, dB. */
  readonly awayDb: number;
  readonly wobbleDb: number;
  readonly wobbleHz: number;
  readonly phaseRms: number;
  readonly phaseCornerHz: number;
  /** Angle of the fork about its stem, rad; 0: facing. Null: held still. */
  readonly turnRad: Float64Array | null;
  readonly clickLevel: number;
  readonly clangLevel: number;
  readonly clangDecayS: number;
}

export interface PerformedTone {
  /** Direct sound and the mouth's, dry. */
  readonly envelope: Envelope;
  /** Level over the fork alone that the column adds with the fork steady at its mouth; wobble and dying left out, dB. */
  readonly columnGainDb: Float64Array;
  /** 0 away … 1 at the mouth. */
  readonly coupling: Float64Array;
  /** |cos| of the turning, 1 where not turned. */
  readonly facing: Float64Array;
  /** Whether the fork sounds. */
  readonly sounding: Uint8Array;
}

/** Amplitude of the mouth's sound at resonance that gives the wanted rise over a direct sound of 1. */
export function mouthAmplitude(
  column: ColumnAtPitch,
  order: number,
  riseDb: number,
  phaseRad: number,
): number {
  const centre = column.resonantLengthM(order);
  const half = column.halfWidthM(order);
  const [peakRe, peakIm] = column.steadyFlow(centre);
  const peak = Math.hypot(peakRe, peakIm);
  const flows: [number, number][] = [];
  for (let i = -60; i <= 60; i += 1) flows.push(column.steadyFlow(centre + (i / 20) * half));
  const tilt = phaseRad - Math.atan2(peakIm, peakRe);
  const highest = (amplitude: number): number => {
    let best = 0;
    for (const [re, im] of flows) {
      const mRe = (amplitude / peak) * (re * Math.cos(tilt) - im * Math.sin(tilt));
      const mIm = (amplitude / peak) * (re * Math.sin(tilt) + im * Math.cos(tilt));
      best = Math.max(best, Math.hypot(1 + mRe, mIm));
    }
    return best;
  };
  let low = 0;
  let high = 2 + 2 * 10 ** (riseDb / 20);
  for (let i = 0; i < 50; i += 1) {
    const middle = (low + high) / 2;
    if (highest(middle) < 10 ** (riseDb / 20)) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Works out the envelope of one performance at the fork's real pitch. */
export function perform(random: Random, what: Performance, rateHz: number): PerformedTone {
  const n = what.lengthM.length;
  const coupling = new Float64Array(n);
  const strength = new Float64Array(n);
  const sounding = new Uint8Array(n);
  const facing = new Float64Array(n).fill(1);
  what.strikes.forEach((strike, index) => {
    const next = what.strikes[index + 1]?.strikeS ?? Infinity;
    const first = Math.round(strike.strikeS * rateHz);
    const last = Math.min(n, Math.round(next * rateHz));
    for (let i = Math.max(0, first); i < last; i += 1) {
      const time = i / rateHz;
      const since = time - strike.strikeS;
      let level = strike.strength * Math.min(1, since / 0.002) * Math.exp(-since / what.fork.decayTimeS);
      if (strike.dampedS !== null && time > strike.dampedS) {
        level *= 1 - smoothStep((time - strike.dampedS) / 0.045);
      }
      strength[i] = level;
      sounding[i] = level > 0 && (strike.dampedS === null || time <= strike.dampedS) ? 1 : 0;
      for (const visit of strike.visits) {
        let near = smoothStep((time - visit.fromS) / (visit.byS - visit.fromS));
        if (visit.leaveS !== null && visit.goneS !== null) {
          near *= 1 - smoothStep((time - visit.leaveS) / (visit.goneS - visit.leaveS));
        }
        coupling[i] = Math.max(coupling[i], near);
      }
    }
  });
  const wobble = slowNoise(random, n, rateHz, what.wobbleHz, what.wobbleDb / 4);
  const swing = random.uniform(0, 2 * Math.PI);
  const nearWobble = slowNoise(random, n, rateHz, what.wobbleHz, what.wobbleDb / 4);
  const phase = slowNoise(random, n, rateHz, what.phaseCornerHz, what.phaseRms);
  const nullShift = random.uniform(-0.2, 0.2);
  const directRe = new Float64Array(n);
  const directIm = new Float64Array(n);
  const driveRe = new Float64Array(n);
  const driveIm = new Float64Array(n);
  for (let i = 0; i < n; i += 1) {
    const time = i / rateHz;
    const regular = 0.5 * what.wobbleDb * Math.sin(swing + 2 * Math.PI * what.wobbleHz * time);
    const gain = what.amplitude * strength[i] * 10 ** ((wobble[i] + regular) / 20);
    const away = 10 ** ((what.awayDb * (1 - coupling[i])) / 20);
    const turn = what.turnRad?.[i] ?? 0;
    // A fork is a quadrupole: four silent directions, and the sign flips across each of them.
    const direct = gain * away * Math.cos(2 * turn);
    const drive = gain * coupling[i] * Math.cos(2 * (turn + (what.turnRad === null ? 0 : nullShift)));
    facing[i] = Math.abs(Math.cos(2 * turn));
    directRe[i] = direct * Math.cos(phase[i]);
    directIm[i] = direct * Math.sin(phase[i]);
    // Near the mouth the distance matters more than at the microphone, so the drive wobbles by itself too.
    const nearGain = drive * 10 ** (nearWobble[i] / 20);
    driveRe[i] = nearGain * Math.cos(phase[i]);
    driveIm[i] = nearGain * Math.sin(phase[i]);
  }
  const columnGainDb = new Float64Array(n);
  if (what.tube === null) {
    return { envelope: { rateHz, re: directRe, im: directIm }, columnGainDb, coupling, facing, sounding };
  }
  const column = new ColumnAtPitch(what.tube, what.fork.actualHz);
  const [peakRe, peakIm] = column.steadyFlow(column.resonantLengthM(what.riseOrder));
  const scale =
    mouthAmplitude(column, what.riseOrder, what.riseDb, what.mouthPhaseRad) / Math.hypot(peakRe, peakIm);
  const tilt = what.mouthPhaseRad - Math.atan2(peakIm, peakRe);
  const cos = scale * Math.cos(tilt);
  const sin = scale * Math.sin(tilt);
  const flow = column.flow(what.lengthM, { rateHz, re: driveRe, im: driveIm });
  const steady = column.flow(what.lengthM, {
    rateHz,
    re: new Float64Array(n).fill(1),
    im: new Float64Array(n),
  });
  for (let i = 0; i < n; i += 1) {
    directRe[i] += cos * flow.re[i] - sin * flow.im[i];
    directIm[i] += sin * flow.re[i] + cos * flow.im[i];
    const re = 1 + cos * steady.re[i] - sin * steady.im[i];
    const im = sin * steady.re[i] + cos * steady.im[i];
    columnGainDb[i] = 10 * Math.log10(re * re + im * im + 1e-12);
  }
  return { envelope: { rateHz, re: directRe, im: directIm }, columnGainDb, coupling, facing, sounding };
}

/** Puts an envelope on its carrier and adds it to samples. */
export function addTone(
  target: Float32Array,
  sampleRateHz: number,
  envelope: Envelope,
  frequencyHz: number,
  startPhaseRad: number,
): void {
  const ratio = envelope.rateHz / sampleRateHz;
  const step = (2 * Math.PI * frequencyHz) / sampleRateHz;
  const last = envelope.re.length - 2;
  for (let i = 0; i < target.length; i += 1) {
    const at = i * ratio;
    const j = Math.min(last, Math.floor(at));
    const part = Math.min(1, at - j);
    const re = envelope.re[j] + part * (envelope.re[j + 1] - envelope.re[j]);
    const im = envelope.im[j] + part * (envelope.im[j + 1] - envelope.im[j]);
    if (re === 0 && im === 0) continue;
    const phase = startPhaseRad + step * i;
    target[i] += re * Math.cos(phase) - im * Math.sin(phase);
  }
}

/** The click of each strike and the clang mode (clamped-free beam: 6.267 times the pitch), gone in under a second. */
export function addStrikeSounds(
  random: Random,
  target: Float32Array,
  sampleRateHz: number,
  what: Performance,
): void {
  for (const strike of what.strikes) {
    const level = what.amplitude * strike.strength;
    const clangHz = 6.267 * what.fork.actualHz;
    if (clangHz < 0.45 * sampleRateHz) {
      addBurst(target, sampleRateHz, strike.strikeS, {
        level: level * what.clangLevel,
        frequencyHz: clangHz,
        decayS: what.clangDecayS,
      });
    }
    for (let mode = 0; mode < 6; mode += 1) {
      addBurst(target, sampleRateHz, strike.strikeS, {
        level: (level * what.clickLevel * random.uniform(0.3, 1)) / 3,
        frequencyHz: random.uniform(120, 6000),
        decayS: random.uniform(0.001, 0.012),
      });
    }
    if (strike.dampedS !== null) {
      addBurst(target, sampleRateHz, strike.dampedS, {
        level: level * random.uniform(0.05, 0.4),
        frequencyHz: random.uniform(150, 1500),
        decayS: random.uniform(0.003, 0.015),
      });
    }
  }
}

/** 0 below 0, 1 above 1, smooth between. */
function smoothStep(x: number): number {
  const t = Math.max(0, Math.min(1, x));
  return t * t * (3 - 2 * t);
}
