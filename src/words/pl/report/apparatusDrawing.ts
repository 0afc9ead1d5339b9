import type { LaterWords } from '../../catalogue.ts';
import { fixed, stampedHertz } from '../../numbers.ts';

export const drawing: LaterWords['drawing'] = {
  title: 'Układ, w skali wzdłuż linijki',
  fork: (hz) => `kamerton, ${stampedHertz(hz)}\u00a0Hz`,
  column: (ends, diameterM) =>
    diameterM === null
      ? `słup powietrza, ${ends}`
      : `słup powietrza, ${ends}, średnica wewnętrzna ${fixed(diameterM * 1000, 1)}\u00a0mm`,
  tick: (m) => fixed(m * 100, 0),
  centimetres: (m) => fixed(m * 100, 1),
  below: (zeroOffsetM) =>
    zeroOffsetM === 0
      ? 'linijka, cm; pod nią długości odczytane w rezonansie'
      : `linijka, cm, przesunięcie zera ${fixed(zeroOffsetM * 1000, 1)}\u00a0mm; pod nią długości odczytane w rezonansie`,
  caption:
    'Układ, w skali wzdłuż linijki, ale nie w poprzek. Kreski pod linijką: długości, przy których słup rezonował.',
};
