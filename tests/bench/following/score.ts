import { median } from '../../../src/numeric/median.ts';
import { defaultToleranceHz } from '../../../src/session/hearing/forkTolerance.ts';
import { analyseRecording } from '../../../src/session/recording/analyseRecording.ts';
import type { CheckedReport } from '../../../src/session/recording/analyseRecording.ts';
import { HAND_RATE_HZ } from './hand.ts';
import { SAMPLE_RATE_HZ } from './recording.ts';
import type { Recording } from './recording.ts';

/** Nearer than this the side doesn't matter, half widths. */
const HERE = 0.35;

/** How a column was followed through one recording. */
export interface Score {
  readonly beyond: number;
  readonly named: number;
  readonly right: number;
  readonly errorsMm: readonly number[];
  readonly errorsHalfWidths: readonly number[];
  readonly scale: number;
  /** Of each resonance found, against the nearest moment in which the length was right. */
  readonly lateMs: { readonly level: readonly number[]; readonly centre: readonly number[] };
  readonly isFlagged: boolean;
}

/** The stages over a recording, with the tube or without. */
export function analyse({ samples, scene }: Recording, isTubeKnown = true): CheckedReport {
  const { nominalHz, closed, diameterM } = scene;
  const tube = isTubeKnown ? ({ ends: closed ? 'closed' : 'open', diameterM } as const) : null;
  const fork = { nominalHz, toleranceHz: defaultToleranceHz(nominalHz) };
  return analyseRecording(samples, { sampleRateHz: SAMPLE_RATE_HZ, fork, follow: { tube } });
}

/** A report against the truth of its recording. */
export function score({ plan, truth }: Recording, report: CheckedReport): Score {
  const places = report.following ?? [];
  const sounding = (timeS: number) =>
    plan.strikes.some(({ startS, endS }) => timeS > startS + 0.4 && timeS < endS - 0.1);
  let [beyond, named, right] = [0, 0, 0];
  const errorsMm: number[] = [];
  const errorsHalfWidths: number[] = [];
  const scales: number[] = [];
  for (const { timeS, halfWidths, distanceM } of places) {
    if (!sounding(timeS)) continue;
    const offM = truth.offM[Math.min(truth.offM.length - 1, Math.round(timeS * HAND_RATE_HZ))];
    const off = offM / truth.halfWidthM;
    if (Math.abs(off) > HERE) {
      beyond += 1;
      if (halfWidths !== null) {
        named += 1;
        if (halfWidths > 0 === off > 0) right += 1;
      }
    }
    if (halfWidths !== null) errorsHalfWidths.push(Math.abs(halfWidths - off));
    if (halfWidths !== null && distanceM !== null) scales.push(distanceM / halfWidths / truth.halfWidthM);
    if (distanceM !== null) errorsMm.push(1000 * Math.abs(distanceM - offM));
  }
  const crossings = crossingsOf(truth.offM, sounding);
  const lateMs = { level: [] as number[], centre: [] as number[] };
  for (const { timeS, centre } of report.resonances) {
    const own = nearest(crossings, timeS);
    if (Math.abs(own - timeS) > 0.5) continue;
    lateMs.level.push(1000 * (timeS - own));
    if (centre !== null) lateMs.centre.push(1000 * (centre.timeS - own));
  }
  return {
    beyond,
    named,
    right,
    errorsMm,
    errorsHalfWidths,
    scale: scales.length === 0 ? NaN : median(scales),
    lateMs,
    isFlagged: places.length > 0,
  };
}

/** Moments in which the length passes resonance while the fork sounds, s. */
function crossingsOf(offM: Float64Array, isSounding: (timeS: number) => boolean): number[] {
  const found: number[] = [];
  for (let i = 1; i < offM.length; i += 1) {
    if (offM[i - 1] * offM[i] <= 0 && isSounding(i / HAND_RATE_HZ)) found.push(i / HAND_RATE_HZ);
  }
  return found;
}

const nearest = (timesS: readonly number[], timeS: number): number =>
  timesS.reduce((best, one) => (Math.abs(one - timeS) < Math.abs(best - timeS) ? one : best), Infinity);
