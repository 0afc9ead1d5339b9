import type { LaterWords } from '../../catalogue.ts';

export const circlePlot: LaterWords['circlePlot'] = {
  title: (name) => `Lo que oye el micrófono: ${name}`,
  example: 'un ejemplo',
  x: 'en fase con el sonido del diapasón (que vale 1)',
  y: 'adelantado un cuarto de periodo',
  silence: 'cero',
  direct: 'diapasón solo',
  resonance: 'resonancia',
  loudest: 'más sonora',
  tooShort: 'demasiado corta',
  tooLong: 'demasiado larga',
  way: 'Un círculo desde el sonido del diapasón (anillo), por la resonancia en el punto opuesto (rombo) y de vuelta, desde 6 semianchuras de menos hasta 6 de más. Las cruces marcan el cero y una semianchura a cada lado.',
  ahead: (times, degrees) =>
    `En resonancia, el sonido de la columna es ${times} veces el del diapasón y va adelantado ${degrees}°.`,
  behind: (times, degrees) =>
    `En resonancia, el sonido de la columna es ${times} veces el del diapasón y va retrasado ${degrees}°.`,
  loudestTooLong: (halfWidths) =>
    `La línea discontinua va del cero a la posición más sonora (disco), a ${halfWidths} semianchuras de más.`,
  loudestTooShort: (halfWidths) =>
    `La línea discontinua va del cero a la posición más sonora (disco), a ${halfWidths} semianchuras de menos.`,
  loudestAlike:
    'La línea discontinua va del cero a la posición más sonora (disco), que es la propia resonancia.',
};
