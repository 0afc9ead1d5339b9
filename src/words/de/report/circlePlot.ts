import type { LaterWords } from '../../catalogue.ts';

export const circlePlot: LaterWords['circlePlot'] = {
  title: (name) => `Was das Mikrofon hört: ${name}`,
  example: 'ein Beispiel',
  x: 'im Takt mit der Gabel (ihre Amplitude ist 1)',
  y: 'eine Viertelperiode voraus',
  silence: 'null',
  direct: 'Gabel allein',
  resonance: 'Resonanz',
  loudest: 'am lautesten',
  tooShort: 'zu kurz',
  tooLong: 'zu lang',
  way: 'Ein Kreis vom Ton der Gabel allein (Ring) durch die Resonanz gegenüber (Raute) und zurück, von 6 halben Breiten zu kurz bis 6 zu lang. Kreuze zeigen null und die Stellen eine halbe Breite neben der Resonanz.',
  ahead: (times, degrees) =>
    `In der Resonanz ist der Ton der Säule ${times}-mal so stark wie der der Gabel und eilt ihm um ${degrees}° voraus.`,
  behind: (times, degrees) =>
    `In der Resonanz ist der Ton der Säule ${times}-mal so stark wie der der Gabel und eilt ihm um ${degrees}° nach.`,
  loudestTooLong: (halfWidths) =>
    `Die gestrichelte Linie führt von null zur lautesten Stelle (Scheibe), ${halfWidths} halbe Breiten zu lang.`,
  loudestTooShort: (halfWidths) =>
    `Die gestrichelte Linie führt von null zur lautesten Stelle (Scheibe), ${halfWidths} halbe Breiten zu kurz.`,
  loudestAlike:
    'Die gestrichelte Linie führt von null zur lautesten Stelle (Scheibe), und das ist die Resonanz selbst.',
};
