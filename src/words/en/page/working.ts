import { fixed } from '../../numbers.ts';

/** Every step from lengths to the speed. */
export const working = {
  heading: 'Working',
  empty: 'Each step appears here with its numbers as soon as a mark has its length.',
  lead: 'Every step with its numbers, so that you can check it by hand.',
  /** What the letters of the formulas mean; the report's `terms` have the rest. */
  letters: {
    L: 'length read off the rule, less its zero offset',
    n: 'order of the resonance',
    f: 'frequency of the fork',
    λ: 'wavelength',
    e: 'end correction',
    ℓ: 'length of the air column, end correction included',
    v: 'speed of sound in the tube',
    w: 'part of the speed that the walls take off',
    c: 'speed of sound in free air',
    'χ²': 'sum of the squared residuals, each over its uncertainty',
    a: 'part of the half width by which the place may lie beside the resonance',
    b: 'half width of the resonance',
    q: 'rise over the fork alone, as a ratio of amplitudes',
    u: 'standard uncertainty',
    U: 'expanded uncertainty, k·u',
    t: 'temperature of the air',
    h: 'relative humidity',
    p: 'air pressure',
    γ: 'ratio of the two specific heats of the gas',
    R: 'gas constant',
    T: 'absolute temperature',
    M: 'molar mass of the gas',
    Δ: 'difference of the two speeds',
  },
};

/** Where the uncertainty comes from. */
export const budget = {
  region: 'Uncertainty budget',
  heading: 'Where the uncertainty comes from',
  table: 'Lines of the budget',
};

/** The fit line and what it leaves over. */
export const fit = {
  heading: 'Fit',
  lead: 'The slope is the speed in the tube. How far below zero the line begins is the end correction (twice that for open columns).',
};

/** Which further mark would make the result more certain. */
export const nextMarks = {
  heading: 'What next',
  lead: 'The marks that would reduce the uncertainty most, with the forks you have.',
  none: 'Mark one resonance with its length first.',
};

/** Why ear and level don't find the resonance itself. */
export const circle = {
  heading: 'Why the loudest place is not the resonance',
  lead: 'The microphone hears two sounds of the same frequency: the fork’s own and the column’s. The phase of the column’s sound changes as the length passes the resonance, so the sum of the two moves round a circle. The resonance lies opposite the fork’s own sound; the loudest place is the point farthest from zero.',
  mark: 'Resonance of',
  own: (name: string) => `This is the circle of ${name}, as it was heard.`,
  example:
    'An example, not yet yours: the column’s sound is 1.5 times the fork’s own, and 60° ahead of it. Slide past a resonance while this page listens, and its mark shows your own circle.',
  /** Where a column that is read at the loudest place is too long. @param halfWidths  above 0 */
  tooLong: {
    inHalfWidths: (halfWidths: number, louderDb: string) =>
      `The loudest place lies ${fixed(halfWidths, 2)} half widths beside the resonance and is ${louderDb} dB louder. A column read there is too long.`,
    inMillimetres: (halfWidths: number, mm: string, louderDb: string) =>
      `The loudest place lies ${fixed(halfWidths, 2)} half widths (${mm} mm) beside the resonance and is ${louderDb} dB louder. A column read there is too long.`,
  },
  tooShort: {
    inHalfWidths: (halfWidths: number, louderDb: string) =>
      `The loudest place lies ${fixed(halfWidths, 2)} half widths beside the resonance and is ${louderDb} dB louder. A column read there is too short.`,
    inMillimetres: (halfWidths: number, mm: string, louderDb: string) =>
      `The loudest place lies ${fixed(halfWidths, 2)} half widths (${mm} mm) beside the resonance and is ${louderDb} dB louder. A column read there is too short.`,
  },
  alike: 'Here the loudest place is the resonance: both sounds are in step.',
  nowhere: 'Here the column’s sound only weakens the fork’s own: no place is loudest.',
  noMillimetres:
    'It is given in millimetres, too, once the tube’s diameter and the resonance’s order are known.',
  stays:
    'While fork, hand and microphone stay as they are, this goes to the same side at every resonance: repeating doesn’t average it out. Reading where this page says “Here” avoids it.',
};
