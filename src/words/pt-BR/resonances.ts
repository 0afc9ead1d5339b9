import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb} dB acima do diapasão sozinho, ${aboveRoomDb} dB acima da sala, fase girada em ${turnedDeg}°`;
