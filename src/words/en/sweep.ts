import { ordinal, plural } from './grammar.ts';

/** What a sweep of a column found. */
export const sweep = {
  order: (order: number) => ordinal(order),
  /** Of a resonance that fits no order: where its order would stand, and its speed. */
  noOrder: 'none',
  outlier: 'outlier',
  basis: (resonances: number, factor: string, endMm: string) =>
    `95 %, k = ${factor}, from ${resonances} ${plural(resonances, 'resonance')}. The end correction of ${endMm} mm is predicted: one length can’t measure it.`,
  wallsCorrected: 'The slowing of the wave by the wall is corrected for.',
  noDiameter:
    'Note the tube’s diameter: without it the end correction is a guess, and the slowing by the wall isn’t corrected for.',
  lost: (seconds: string) => `${seconds} s of sound were lost.`,
  lostMoment: 'The sound broke off for a moment.',
  noneNear: 'No resonance was near.',
  nearLost: (resonances: number, hertz: string) =>
    `${plural(resonances, 'The resonance', 'The resonances')} near ${hertz} Hz ${plural(resonances, 'isn’t', 'aren’t')} used. Close other programs and sweep again.`,
  /** A line for the notes. @param list  resonances as `found` has them */
  note: (cm: string, list: string, speed: string) => `Sweep at ${cm} cm: ${list}; speed ${speed}.`,
  found: (order: number, frequency: string) => `${ordinal(order)} ${frequency}`,
  remarks: {
    practice: 'Simulated on the practice column.',
    unproven: 'The level was not checked.',
    doubtful: 'The level is in doubt.',
  },
  endsBelowStart: 'The sweep must end at a higher frequency than it starts at.',
  beyondTheory: (mm: string, highestHz: string, toHz: string) =>
    `Practice can sweep a tube of ${mm} mm up to ${highestHz} Hz, not to ${toHz} Hz: there is no theory for its open end beyond that. End the sweep earlier, or take a narrower tube.`,
};
