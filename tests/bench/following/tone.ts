import type { Random } from '../detector/random.ts';
import type { Envelope } from '../detector/column.ts';
import { reverberateTone } from '../detector/reverberation.ts';
import { HAND_RATE_HZ, unsteadiness } from './hand.ts';
import type { Unsteadiness } from './hand.ts';
import type { Plan } from './plan.ts';
import { columnOf, columnShare } from './scene.ts';
import type { Scene } from './scene.ts';

/** Values a second of an envelope; a wave's way through the shortest column must last one. */
export const ENVELOPE_RATE_HZ = 8000;
/** A fork stops within this when damped, s. */
const DAMPING_S = 0.03;
/** Brought to the mouth, the column's part comes within this, s. */
const ATTACK_S = 0.02;

/** Value of hand-rate numbers at a time, linearly. */
export function at(values: ArrayLike<number>, timeS: number): number {
  const place = Math.max(0, Math.min(values.length - 1.001, timeS * HAND_RATE_HZ));
  const i = Math.floor(place);
  return values[i] + (place - i) * (values[i + 1] - values[i]);
}

/** The fork alone, the hand left out: complex, changing with time. */
export function forkAt(scene: Scene, plan: Plan, timeS: number): [number, number] {
  for (const strike of plan.strikes) {
    if (timeS < strike.startS || timeS >= strike.endS + 5 * DAMPING_S) continue;
    const since = timeS - strike.startS;
    let size = strike.level * Math.exp(-since / scene.decayS) * (1 - Math.exp(-since / ATTACK_S));
    if (timeS > strike.endS) size *= Math.exp((strike.endS - timeS) / DAMPING_S);
    return [size * Math.cos(strike.phaseRad), size * Math.sin(strike.phaseRad)];
  }
  return [0, 0];
}

/** What reaches the microphone at the fork's pitch, its carrier taken out; the direct sound is 1 at the strike. */
export function toneEnvelope(random: Random, scene: Scene, plan: Plan): Envelope {
  const count = Math.ceil(plan.durationS * ENVELOPE_RATE_HZ);
  const hand = unsteadiness(random.branch('hand'), scene.hand, plan.lengthM.length);
  const apart = unsteadiness(random.branch('apart'), scene.hand, plan.lengthM.length);
  const direct = { rateHz: ENVELOPE_RATE_HZ, re: new Float64Array(count), im: new Float64Array(count) };
  for (let i = 0; i < count; i += 1) {
    const timeS = i / ENVELOPE_RATE_HZ;
    const [x, y] = forkAt(scene, plan, timeS);
    const size = Math.exp(at(hand.levelNp, timeS));
    const turn = at(hand.phaseRad, timeS);
    direct.re[i] = size * (x * Math.cos(turn) - y * Math.sin(turn));
    direct.im[i] = size * (x * Math.sin(turn) + y * Math.cos(turn));
  }
  const column =
    scene.world === 'line' ? lineColumn(scene, plan, direct) : onePoleColumn(scene, plan, direct);
  const share = scene.hand.apartShare;
  for (let i = 0; i < count; i += 1) {
    const [x, y] = share > 0 ? moved(direct, i, apart, share) : [direct.re[i], direct.im[i]];
    direct.re[i] = x + column.re[i];
    direct.im[i] = y + column.im[i];
  }
  if (scene.world === 'one pole') return direct;
  return reverberateTone(random.branch('echo'), direct, random.uniform(0.3, 0.6), random.uniform(8, 16));
}

function moved(direct: Envelope, i: number, by: Unsteadiness, share: number): [number, number] {
  const timeS = i / ENVELOPE_RATE_HZ;
  const size = Math.exp(share * at(by.levelNp, timeS));
  const turn = share * at(by.phaseRad, timeS);
  const x = size * Math.cos(turn);
  const y = size * Math.sin(turn);
  return [direct.re[i] * x - direct.im[i] * y, direct.re[i] * y + direct.im[i] * x];
}

/** T q' = drive − (1 + ix) q, the column's part m e^{iθ} q; exact for steps in which x stays. */
function onePoleColumn(scene: Scene, plan: Plan, drive: Envelope): Envelope {
  const { resonantLengthM, halfWidthM, ringUpS } = columnOf(scene);
  const m = columnShare(scene.riseDb, scene.angleRad);
  const cosine = m * Math.cos(scene.angleRad);
  const sine = m * Math.sin(scene.angleRad);
  const pole = new OnePole(ringUpS);
  const count = drive.re.length;
  const re = new Float64Array(count);
  const im = new Float64Array(count);
  for (let i = 0; i < count; i += 1) {
    const x = (at(plan.lengthM, i / ENVELOPE_RATE_HZ) - resonantLengthM) / halfWidthM;
    pole.step(x, drive.re[i], drive.im[i], 1 / ENVELOPE_RATE_HZ);
    re[i] = cosine * pole.re - sine * pole.im;
    im[i] = cosine * pole.im + sine * pole.re;
  }
  return { rateHz: drive.rateHz, re, im };
}

/** A resonator in the frame that turns with the fork. */
export class OnePole {
  re = 0;
  im = 0;
  private readonly ringUpS: number;

  constructor(ringUpS: number) {
    this.ringUpS = ringUpS;
  }

  step(x: number, driveRe: number, driveIm: number, stepS: number): void {
    const power = 1 + x * x;
    const restRe = (driveRe + x * driveIm) / power;
    const restIm = (driveIm - x * driveRe) / power;
    const part = stepS / this.ringUpS;
    const decay = Math.exp(-part);
    const cos = decay * Math.cos(x * part);
    const sin = -decay * Math.sin(x * part);
    const offRe = this.re - restRe;
    const offIm = this.im - restIm;
    this.re = restRe + offRe * cos - offIm * sin;
    this.im = restIm + offRe * sin + offIm * cos;
  }
}

/** The wave in the tube, scaled so that the loudest place stands so many dB over the direct sound. */
function lineColumn(scene: Scene, plan: Plan, drive: Envelope): Envelope {
  const { column, resonantLengthM } = columnOf(scene);
  const lengths = Float64Array.from(drive.re, (_, i) => at(plan.lengthM, i / ENVELOPE_RATE_HZ));
  const flow = column.flow(lengths, drive);
  const [flowRe, flowIm] = column.steadyFlow(resonantLengthM);
  const m = columnShare(scene.riseDb, scene.angleRad) / Math.hypot(flowRe, flowIm);
  const turn = scene.angleRad - Math.atan2(flowIm, flowRe);
  const cosine = m * Math.cos(turn);
  const sine = m * Math.sin(turn);
  const re = flow.re.map((x, i) => cosine * x - sine * flow.im[i]);
  const im = flow.im.map((y, i) => cosine * y + sine * flow.re[i]);
  return { rateHz: drive.rateHz, re, im };
}
