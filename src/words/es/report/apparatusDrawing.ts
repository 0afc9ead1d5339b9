import type { LaterWords } from '../../catalogue.ts';
import { fixed, stampedHertz } from '../../numbers.ts';

export const drawing: LaterWords['drawing'] = {
  title: 'El montaje, a escala a lo largo de su regla',
  fork: (hz) => `diapasón, ${stampedHertz(hz)}\u00a0Hz`,
  column: (ends, diameterM) =>
    diameterM === null
      ? `columna de aire, ${ends}`
      : `columna de aire, ${ends}, diámetro interior ${fixed(diameterM * 1000, 1)}\u00a0mm`,
  tick: (m) => fixed(m * 100, 0),
  centimetres: (m) => fixed(m * 100, 1),
  below: (zeroOffsetM) =>
    zeroOffsetM === 0
      ? 'regla, cm; debajo, las longitudes leídas en resonancia'
      : `regla, cm, con un desfase del cero de ${fixed(zeroOffsetM * 1000, 1)}\u00a0mm; debajo, las longitudes leídas en resonancia`,
  caption:
    'El montaje, a escala a lo largo de la regla, pero no a lo ancho. Líneas bajo la regla: longitudes a las que resonó la columna.',
};
