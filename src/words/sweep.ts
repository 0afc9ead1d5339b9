import type { SweepFault } from '../session/hearing/sweepFault.ts';
import type { SweepFailure } from '../session/hearing/sweepRun.ts';
import type { SweepResonances } from '../resonance/sweep/sweepResonances.ts';
import type { SweepSpeed, SweptResonance } from '../solver/sweepSpeed.ts';
import { captureFailureWords } from './capture.ts';
import { readingFaultWords } from './columnFaults.ts';
import { inFull } from './faultWords.ts';
import { laterWords, words } from './inUse.ts';
import { listed } from './lists.ts';
import { fixed, fullMillimetres, hertz, roundPair } from './numbers.ts';

/** One resonance of a swept column as a row of its table. */
export interface SweepRow {
  readonly order: string;
  readonly frequency: string;
  readonly speed: string;
}

/** The resonances with their orders; those that fit none come last. */
export function sweepRows(found: SweepSpeed): readonly SweepRow[] {
  return [
    ...found.resonances.map((one) => ({
      order: laterWords.sweep.order(one.order),
      frequency: frequencyWords(one),
      speed: `${fixed(one.speedMps, 1)} m/s`,
    })),
    ...found.leftOut.map((one) => ({
      order: laterWords.sweep.noOrder,
      frequency: frequencyWords(one),
      speed: laterWords.sweep.outlier,
    })),
  ];
}

function frequencyWords({ frequencyHz, standardUncertaintyHz }: SweptResonance): string {
  const pair = roundPair(frequencyHz, standardUncertaintyHz);
  return `${pair.value} ± ${pair.uncertainty} Hz`;
}

/** The speed with what it rests on, in whole sentences. */
export function sweepWords(found: SweepSpeed): { readonly speed: string; readonly detail: string } {
  const pair = roundPair(found.speedMps, found.expandedUncertaintyMps);
  const { basis, wallsCorrected, noDiameter } = laterWords.sweep;
  const rests = basis(
    found.resonances.length,
    fixed(found.coverageFactor, 2),
    fixed(found.endCorrectionM * 1000, 1),
  );
  return {
    speed: `${pair.value} ± ${pair.uncertainty} m/s`,
    detail: `${rests} ${found.wallsRemoved ? wallsCorrected : noDiameter}`,
  };
}

/** What was lost of a sweep's sound and what that leaves unknown; null where nothing was. */
export function lostWords({ lostS, voidHz, gaps }: SweepResonances): string | null {
  if (gaps === 0) return null;
  const said = laterWords.sweep;
  const lost = lostS >= 0.01 ? said.lost(fixed(lostS, 2)) : said.lostMoment;
  if (voidHz.length === 0) return `${lost} ${said.noneNear}`;
  return `${lost} ${said.nearLost(voidHz.length, listed(voidHz.map((hz) => fixed(hz, 0))))}`;
}

/** What else the notes say of a sweep: that it was simulated, or what is to be said of its level. */
export type SweepRemark = 'practice' | 'unproven' | 'doubtful';

/** A line for the experiment's notes. */
export function sweepNote(found: SweepSpeed, lengthM: number, remark: SweepRemark | null): string {
  const said = laterWords.sweep;
  const list = listed(found.resonances.map((one) => said.found(one.order, frequencyWords(one))));
  const note = said.note(fixed(lengthM * 100, 2), list, sweepWords(found).speed);
  return remark === null ? note : `${note} ${said.remarks[remark]}`;
}

/** Why a column can’t be swept, and what to do. */
export function sweepFaultWords(fault: SweepFault): string {
  switch (fault.code) {
    case 'no-column':
      return readingFaultWords(fault.fault);
    case 'ends-below-start':
      return laterWords.sweep.endsBelowStart;
    case 'beyond-theory':
      return laterWords.sweep.beyondTheory(
        fullMillimetres(fault.diameterM),
        hertz(Math.floor(fault.highestHz)),
        hertz(fault.toHz),
      );
  }
}

/** Why a sweep ended without a result, and what to do. */
export function sweepFailureWords(failure: SweepFailure): string {
  return failure.code === 'held-up' ? words.hold[failure.hold] : inFull(captureFailureWords(failure));
}
