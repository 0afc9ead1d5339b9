import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb}\u00a0dB acima do diapasão sozinho, ${aboveRoomDb}\u00a0dB acima da sala, fase girada em ${turnedDeg}°`;
