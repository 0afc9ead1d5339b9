import type { SweepResonances } from '../resonance/sweep/sweepResonances.ts';
import type { SweepSpeed } from '../solver/sweepSpeed.ts';
import { fixed, ordinal, roundPair } from './rounding.ts';

/** One resonance of a swept column as a row of its table. */
export interface SweepRow {
  readonly order: string;
  readonly frequency: string;
  readonly speed: string;
}

/** The resonances with their orders; those that fit none come last. */
export function sweepRows(found: SweepSpeed): readonly SweepRow[] {
  const written = (hz: number, uncertaintyHz: number): string => {
    const pair = roundPair(hz, uncertaintyHz);
    return `${pair.value} ± ${pair.uncertainty} Hz`;
  };
  return [
    ...found.resonances.map((one) => ({
      order: ordinal(one.order),
      frequency: written(one.frequencyHz, one.standardUncertaintyHz),
      speed: `${fixed(one.speedMps, 1)} m/s`,
    })),
    ...found.leftOut.map((one) => ({
      order: 'none',
      frequency: written(one.frequencyHz, one.standardUncertaintyHz),
      speed: 'left out',
    })),
  ];
}

/** The speed with what it rests on, in whole sentences. */
export function sweepWords(found: SweepSpeed): { readonly speed: string; readonly detail: string } {
  const pair = roundPair(found.speedMps, found.expandedUncertaintyMps);
  const walls = found.wallsRemoved
    ? 'The walls’ slowing is taken off.'
    : 'Note the tube’s diameter: the end correction is a guess and the walls’ slowing is still in it.';
  return {
    speed: `${pair.value} ± ${pair.uncertainty} m/s`,
    detail: `95 %, k = ${fixed(found.coverageFactor, 2)}, from ${found.resonances.length} ${
      found.resonances.length === 1 ? 'resonance' : 'resonances'
    } and an end correction of ${fixed(found.endCorrectionM * 1000, 1)} mm by theory, which one length can’t measure. ${walls}`,
  };
}

/** What was lost of a sweep's sound and what that leaves unknown; null where nothing was. */
export function lostWords({ lostS, voidHz, gaps }: SweepResonances): string | null {
  if (gaps === 0) return null;
  const lost = lostS >= 0.01 ? `${fixed(lostS, 2)} s of sound were lost` : 'The sound broke off for a moment';
  if (voidHz.length === 0) return `${lost}; no resonance was near.`;
  const pitches = voidHz.map((hz) => fixed(hz, 0)).join(' and ');
  return `${lost}: the resonance near ${pitches} Hz is left out. Close other programs and sweep again.`;
}

/** A line for the experiment's notes. @param isUnproven  whether the level may have been rewritten */
export function sweepNote(found: SweepSpeed, lengthM: number, isUnproven: boolean): string {
  const list = sweepRows(found)
    .filter((row) => row.speed !== 'left out')
    .map((row) => `${row.order} ${row.frequency}`)
    .join(', ');
  return `Sweep at ${fixed(lengthM * 100, 2)} cm: ${list}; speed ${sweepWords(found).speed}${isUnproven ? ' (level not proven raw)' : ''}.`;
}
