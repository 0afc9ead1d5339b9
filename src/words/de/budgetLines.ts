import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const budgetColumns: LaterWords['budgetColumns'] = {
  quantity: 'Größe',
  uncertainty: 'Standardunsicherheit',
  evaluation: 'Typ',
  distribution: 'Verteilung',
  sensitivity: 'Empfindlichkeit',
  contribution: 'Beitrag zur Geschwindigkeit',
  degrees: 'Freiheitsgrade',
  share: 'Anteil',
};

export const budgetLine: LaterWords['budgetLine'] = {
  reading: 'Längen: Ablesen und Finden der Resonanz',
  readingWidened: 'Längen: Ablesen und Finden der Resonanz, nach ihrer Streuung korrigiert',
  fork: (hertz) => `Frequenz der Gabel mit ${hertz}\u00a0Hz`,
  loudest: 'Lauteste Stelle neben der Resonanz',
  zero: 'Nullpunkt des Maßstabs',
  scale: 'Teilung des Maßstabs',
  endOfMouth: 'Mündungskorrektur, wie von der Mündung bekannt, durch den Radius',
  endOfTubes: 'Mündungskorrektur, wie bei Rohren üblich',
  wall: 'Bremsung durch die Rohrwand',
  wallLeft: 'Bremsung durch die Rohrwand, nicht korrigiert',
  distributions: {
    normal: 'normal',
    rectangular: 'Rechteck',
    arcsine: 'Arkussinus',
  },
  types:
    'Typ A: aus der Streuung der Längen. Typ B: aus dem, was sonst bekannt ist, etwa einem Aufdruck oder einem Messgerät. Empfindlichkeit: um wie viele m/s sich die Geschwindigkeit ändert, wenn sich die Größe um eine Einheit ändert. (JCGM 100:2008, 4.2, 4.3 und 5.1)',
  perMillimetre: (mps) => `${mps}\u00a0m/s je mm`,
  perHertz: (mps) => `${mps}\u00a0m/s je Hz`,
  correlation: 'Korrelation von Geschwindigkeit und Mündungskorrektur',
  degrees: 'Effektive Freiheitsgrade',
  degreesBy: (degrees) => `ν = ${degrees}, nach Welch und Satterthwaite`,
  repeatability: 'Wiederholbarkeit einer Ablesung',
  repeatabilityFrom: (millimetres, degrees) =>
    `s = ${millimetres}\u00a0mm, Typ A, aus ${counted(degrees, 'Freiheitsgrad', 'Freiheitsgraden')}`,
};
