import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb}\u00a0dB ponad sam kamerton, ${aboveRoomDb}\u00a0dB ponad hałas w sali, faza obrócona o ${turnedDeg}°`;
