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
  way: 'A circle from the fork’s own sound (ring) through the resonance opposite (diamond) and back, from 6 half widths too short to 6 too long. Crosses mark zero and one half width to either side.',
  ahead: (times: string, degrees: string) =>
    `At resonance the column’s sound is ${times} times the fork’s own, ${degrees}° ahead of it.`,
  behind: (times: string, degrees: string) =>
    `At resonance the column’s sound is ${times} times the fork’s own, ${degrees}° behind it.`,
  /** @param halfWidths  from the resonance */
  loudestTooLong: (halfWidths: string) =>
    `The dashed line leads from zero to the loudest place (disc), ${halfWidths} half widths too long.`,
  loudestTooShort: (halfWidths: string) =>
    `The dashed line leads from zero to the loudest place (disc), ${halfWidths} half widths too short.`,
  loudestAlike: 'The dashed line leads from zero to the loudest place (disc), which is the resonance itself.',
};
