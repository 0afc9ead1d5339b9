import { fixed, stampedHertz } from '../../numbers.ts';

/** In and under the drawing of the apparatus. */
export const drawing = {
  title: 'The apparatus, along its rule to scale',
  fork: (hz: number) => `fork, ${stampedHertz(hz)} Hz`,
  column: (ends: string, diameterM: number | null) =>
    `air column, ${ends}${diameterM === null ? '' : `, ${fixed(diameterM * 1000, 1)} mm wide inside`}`,
  tick: (m: number) => fixed(m * 100, 0),
  centimetres: (m: number) => fixed(m * 100, 1),
  below: (zeroOffsetM: number) =>
    zeroOffsetM === 0
      ? 'rule, cm; below it the lengths that were read at resonance'
      : `rule, cm; it reads ${fixed(zeroOffsetM * 1000, 1)} mm at no length; below it the lengths that were read at resonance`,
  caption:
    'The apparatus, to scale along the rule and not across it. Stems below the rule: lengths at which the column resonated.',
};
