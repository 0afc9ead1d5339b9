import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const budgetColumns: LaterWords['budgetColumns'] = {
  quantity: 'Grandeur',
  uncertainty: 'Incertitude-type',
  evaluation: 'Type',
  distribution: 'Loi',
  sensitivity: 'Sensibilité',
  contribution: 'Contribution à la vitesse',
  degrees: 'Degrés de liberté',
  share: 'Part',
};

export const budgetLine: LaterWords['budgetLine'] = {
  reading: 'Longueurs : lecture et recherche de la résonance',
  readingWidened: 'Longueurs : lecture et recherche de la résonance, corrigées selon leur dispersion',
  fork: (hertz) => `Fréquence du diapason de ${hertz}\u00a0Hz`,
  loudest: 'Position la plus sonore, à côté de la résonance',
  zero: 'Zéro de la règle',
  scale: 'Graduations de la règle',
  endOfMouth: 'Correction d’extrémité déduite de l’embouchure, divisée par le rayon',
  endOfTubes: 'Correction d’extrémité habituelle des tubes',
  wall: 'Ralentissement dû à la paroi',
  wallLeft: 'Ralentissement dû à la paroi, non corrigé',
  distributions: {
    normal: 'normale',
    rectangular: 'uniforme',
    arcsine: 'arc sinus',
  },
  types:
    'Type A\u00a0: évaluation d’après la dispersion des longueurs. Type B\u00a0: évaluation d’après ce qu’on sait par ailleurs, comme une gravure ou un instrument. Sensibilité : de combien de m/s la vitesse change pour une unité de la grandeur. (JCGM 100:2008, 4.2, 4.3 et 5.1)',
  perMillimetre: (mps) => `${mps}\u00a0m/s par mm`,
  perHertz: (mps) => `${mps}\u00a0m/s par Hz`,
  correlation: 'Corrélation de la vitesse et de la correction d’extrémité',
  degrees: 'Degrés de liberté effectifs',
  degreesBy: (degrees) => `ν = ${degrees}, selon Welch et Satterthwaite`,
  repeatability: 'Répétabilité d’une lecture',
  repeatabilityFrom: (millimetres, degrees) =>
    `s = ${millimetres}\u00a0mm, Type A, avec ${counted(degrees, 'degré', 'degrés')} de liberté`,
};
