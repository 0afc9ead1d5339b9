import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const budgetColumns: LaterWords['budgetColumns'] = {
  quantity: 'Magnitud',
  uncertainty: 'Incertidumbre típica',
  evaluation: 'Tipo',
  distribution: 'Distribución',
  sensitivity: 'Sensibilidad',
  contribution: 'Contribución a la velocidad',
  degrees: 'Grados de libertad',
  share: 'Parte',
};

export const budgetLine: LaterWords['budgetLine'] = {
  reading: 'Longitudes: leerlas y encontrar la resonancia',
  readingWidened: 'Longitudes: leerlas y encontrar la resonancia, corregido según su dispersión',
  fork: (hertz) => `Frecuencia del diapasón de ${hertz}\u00a0Hz`,
  loudest: 'Posición más sonora, al lado de la resonancia',
  zero: 'Cero de la regla',
  scale: 'Escala de la regla',
  endOfMouth: 'Corrección de extremo conocida por la boca, dividida por el radio',
  endOfTubes: 'Corrección de extremo habitual de los tubos',
  wall: 'Frenado por la pared',
  wallLeft: 'Frenado por la pared, sin corregir',
  distributions: {
    normal: 'normal',
    rectangular: 'rectangular',
    arcsine: 'arcoseno',
  },
  types:
    'Tipo A: de la dispersión de las longitudes. Tipo B: de lo que se sabe por otra vía, como un valor grabado o un instrumento. Sensibilidad: cuántos m/s cambia la velocidad por cada unidad de la magnitud. (JCGM 100:2008, 4.2, 4.3 y 5.1)',
  perMillimetre: (mps) => `${mps}\u00a0m/s por mm`,
  perHertz: (mps) => `${mps}\u00a0m/s por Hz`,
  correlation: 'Correlación entre la velocidad y la corrección de extremo',
  degrees: 'Grados de libertad efectivos',
  degreesBy: (degrees) => `ν = ${degrees}, según Welch y Satterthwaite`,
  repeatability: 'Repetibilidad de una lectura',
  repeatabilityFrom: (millimetres, degrees) =>
    `s = ${millimetres}\u00a0mm, Tipo A, con ${counted(degrees, 'grado', 'grados')} de libertad`,
};
