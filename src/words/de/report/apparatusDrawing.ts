import type { LaterWords } from '../../catalogue.ts';
import { fixed, stampedHertz } from '../../numbers.ts';

export const drawing: LaterWords['drawing'] = {
  title: 'Der Aufbau, in Längsrichtung maßstäblich',
  fork: (hz) => `Gabel, ${stampedHertz(hz)}\u00a0Hz`,
  column: (ends, diameterM) =>
    diameterM === null
      ? `Luftsäule, ${ends}`
      : `Luftsäule, ${ends}, innen ${fixed(diameterM * 1000, 1)}\u00a0mm weit`,
  tick: (m) => fixed(m * 100, 0),
  centimetres: (m) => fixed(m * 100, 1),
  below: (zeroOffsetM) =>
    zeroOffsetM === 0
      ? 'Maßstab, cm; darunter die Längen bei Resonanz'
      : `Maßstab, cm, Nullpunktverschiebung ${fixed(zeroOffsetM * 1000, 1)}\u00a0mm; darunter die Längen bei Resonanz`,
  caption:
    'Der Aufbau, maßstäblich nur in Längsrichtung. Striche darunter: Längen, bei denen die Säule in Resonanz war.',
};
