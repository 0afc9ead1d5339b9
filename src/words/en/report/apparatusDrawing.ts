import { fixed, stampedHertz } from '../../numbers.ts';

/** In and under the drawing of the apparatus. */
export const drawing = {
  title: 'The apparatus, along its rule to scale',
  fork: (hz: number) => `fork, ${stampedHertz(hz)} Hz`,
  column: (ends: string, diameterM: number | null) =>
    diameterM === null
      ? `air column, ${ends}`
      : `air column, ${ends}, ${fixed(diameterM * 1000, 1)} mm wide inside`,
  tick: (m: number) => fixed(m * 100, 0),
  centimetres: (m: number) => fixed(m * 100, 1),
  below: (zeroOffsetM: number) =>
    zeroOffsetM === 0
      ? 'rule, cm; below it the lengths read at resonance'
      : `rule, cm, with a zero offset of ${fixed(zeroOffsetM * 1000, 1)} mm; below it the lengths read at resonance`,
  caption:
    'The apparatus, to scale along the rule but not across it. Lines below the rule: lengths at which the column resonated.',
};
