import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb} dB sobre el diapasón solo, ${aboveRoomDb} dB sobre la sala, fase girada ${turnedDeg}°`;
