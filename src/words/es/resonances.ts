import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb}\u00a0dB sobre el diapasón solo, ${aboveRoomDb}\u00a0dB sobre la sala, fase girada ${turnedDeg}°`;
