import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb} dB ponad sam kamerton, ${aboveRoomDb} dB ponad hałas w sali, faza obrócona o ${turnedDeg}°`;
