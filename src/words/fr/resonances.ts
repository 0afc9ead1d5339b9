import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb} dB par rapport au diapason seul, ${aboveRoomDb} dB au-dessus de la salle, phase tournée de ${turnedDeg}°`;
