import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb}\u00a0dB über der Gabel allein, ${aboveRoomDb}\u00a0dB über dem Raumgeräusch, Phase um ${turnedDeg}° gedreht`;
