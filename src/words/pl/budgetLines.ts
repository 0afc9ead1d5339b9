import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const budgetColumns: LaterWords['budgetColumns'] = {
  quantity: 'Wielkość',
  uncertainty: 'Niepewność standardowa',
  evaluation: 'Typ',
  distribution: 'Rozkład',
  sensitivity: 'Wrażliwość',
  contribution: 'Wkład w niepewność',
  degrees: 'Stopnie swobody',
  share: 'Udział',
};

export const budgetLine: LaterWords['budgetLine'] = {
  reading: 'Długości: odczyt i znalezienie rezonansu',
  readingWidened: 'Długości: odczyt i znalezienie rezonansu, skorygowane według ich rozrzutu',
  fork: (hertz) => `Częstotliwość kamertonu ${hertz}\u00a0Hz`,
  loudest: 'Najgłośniejsze miejsce obok rezonansu',
  zero: 'Zero linijki',
  scale: 'Podziałka linijki',
  endOfMouth: 'Poprawka na końcu rury znana z wylotu, podzielona przez promień',
  endOfTubes: 'Poprawka na końcu rury, jak zwykle w rurach',
  wall: 'Spowolnienie przez ścianki',
  wallLeft: 'Spowolnienie przez ścianki, bez korekty',
  distributions: {
    normal: 'normalny',
    rectangular: 'prostokątny',
    arcsine: 'arcsin',
  },
  types:
    'Typ A: z rozrzutu długości. Typ B: z tego, co wiadomo skądinąd, na przykład z napisu na kamertonie albo z przyrządu. Wrażliwość: o ile m/s zmienia się prędkość na jednostkę wielkości. (JCGM 100:2008, 4.2, 4.3 i 5.1)',
  perMillimetre: (mps) => `${mps}\u00a0m/s na mm`,
  perHertz: (mps) => `${mps}\u00a0m/s na Hz`,
  correlation: 'Korelacja prędkości i poprawki na końcu rury',
  degrees: 'Efektywne stopnie swobody',
  degreesBy: (degrees) => `ν = ${degrees}, według Welcha i Satterthwaite’a`,
  repeatability: 'Powtarzalność jednego odczytu',
  repeatabilityFrom: (millimetres, degrees) =>
    `s = ${millimetres}\u00a0mm, Typ A, z ${counted(degrees, 'stopnia', 'stopni', 'stopni')} swobody`,
};
