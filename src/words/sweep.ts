import type { SweepFault } from '../session/hearing/sweepFault.ts';
import type { SweepFailure } from '../session/hearing/sweepRun.ts';
import type { SweepResonances } from '../resonance/sweep/sweepResonances.ts';
import type { SweepSpeed, SweptResonance } from '../solver/sweepSpeed.ts';
import { captureFailureWords } from './capture.ts';
import { readingFaultWords } from './columnFaults.ts';
import { inFull } from './faultWords.ts';
import { words } from './inUse.ts';
import { counted, ordinal } from './en/grammar.ts';
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
      order: ordinal(one.order),
      frequency: frequencyWords(one),
      speed: `${fixed(one.speedMps, 1)} m/s`,
    })),
    ...found.leftOut.map((one) => ({
      order: 'none',
      frequency: frequencyWords(one),
      speed: 'left out',
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
  const walls = found.wallsRemoved
    ? 'The walls’ slowing is taken off.'
    : 'Note the tube’s diameter: the end correction is a guess and the walls’ slowing is still in it.';
  return {
    speed: `${pair.value} ± ${pair.uncertainty} m/s`,
    detail: `95 %, k = ${fixed(found.coverageFactor, 2)}, from ${counted(found.resonances.length, 'resonance')} and an end correction of ${fixed(found.endCorrectionM * 1000, 1)} mm by theory, which one length can’t measure. ${walls}`,
  };
}

/** What was lost of a sweep's sound and what that leaves unknown; null where nothing was. */
export function lostWords({ lostS, voidHz, gaps }: SweepResonances): string | null {
  if (gaps === 0) return null;
  const lost = lostS >= 0.01 ? `${fixed(lostS, 2)} s of sound were lost` : 'The sound broke off for a moment';
  if (voidHz.length === 0) return `${lost}; no resonance was near.`;
  const frequencies = voidHz.map((hz) => fixed(hz, 0)).join(' and ');
  return `${lost}: the resonance near ${frequencies} Hz is left out. Close other programs and sweep again.`;
}

/** What else the notes say of a sweep: that it was simulated, or what is to be said of its level. */
export type SweepRemark = 'practice' | 'unproven' | 'doubtful';

const REMARKS: Readonly<Record<SweepRemark, string>> = {
  practice: 'simulated, in practice',
  unproven: 'level not proven raw',
  doubtful: 'level in doubt',
};

/** A line for the experiment's notes. */
export function sweepNote(found: SweepSpeed, lengthM: number, remark: SweepRemark | null): string {
  const list = found.resonances.map((one) => `${ordinal(one.order)} ${frequencyWords(one)}`).join(', ');
  return `Sweep at ${fixed(lengthM * 100, 2)} cm: ${list}; speed ${sweepWords(found).speed}${remark === null ? '' : ` (${REMARKS[remark]})`}.`;
}

/** Why a column can’t be swept, and what to do. */
export function sweepFaultWords(fault: SweepFault): string {
  switch (fault.code) {
    case 'no-column':
      return readingFaultWords(fault.fault);
    case 'ends-below-start':
      return 'The sweep must end at a higher pitch than it starts at.';
    case 'beyond-theory':
      return `In practice a tube of ${fullMillimetres(fault.diameterM)} mm can be swept up to ${Math.floor(fault.highestHz)} Hz, got ${hertz(fault.toHz)} Hz: beyond it there is no theory of its open end. Sweep less far, or a narrower tube.`;
  }
}

/** Why a sweep ended without a result, and what to do. */
export function sweepFailureWords(failure: SweepFailure): string {
  return failure.code === 'held-up' ? words.hold[failure.hold] : inFull(captureFailureWords(failure));
}
