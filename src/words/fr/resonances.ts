import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb}\u00a0dB par rapport au diapason seul, ${aboveRoomDb}\u00a0dB au-dessus de la salle, phase tournée de ${turnedDeg}°`;
