import { fixed } from '../../numbers.ts';

export const circlePlot = {
  title: (name: string) => `What the microphone hears: ${name}`,
  example: 'an example',
  x: 'in step with the fork’s own sound (its size is 1)',
  y: 'a quarter period ahead',
  silence: 'zero',
  direct: 'fork alone',
  resonance: 'resonance',
  loudest: 'loudest',
  tooShort: 'too short',
  tooLong: 'too long',
  /** @param loudestHalfWidths  from resonance to the loudest place, > 0 too long; null where none is loudest */
  shows: (size: number, angleDegrees: number, loudestHalfWidths: number | null) => {
    const way =
      'A circle from the fork’s own sound (ring) through the resonance opposite (diamond) and back, from 6 half widths too short to 6 too long; crosses mark zero and one half width to either side.';
    const part = `At resonance the column’s sound is ${fixed(size, 1)} times the fork’s own, ${fixed(Math.abs(angleDegrees), 0)}° ${angleDegrees < 0 ? 'behind' : 'ahead'}.`;
    if (loudestHalfWidths === null) return `${way} ${part}`;
    const side = loudestHalfWidths < 0 ? 'too short' : 'too long';
    return `${way} ${part} The dashed line leads from zero to the loudest place (disc), ${fixed(Math.abs(loudestHalfWidths), 2)} half widths ${side}.`;
  },
};
