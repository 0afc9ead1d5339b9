import type { FirstWords } from '../catalogue.ts';

export const resonanceWhy: FirstWords['resonanceWhy'] = (riseDb, aboveRoomDb, turnedDeg) =>
  `+${riseDb} dB über der Gabel allein, ${aboveRoomDb} dB über dem Raumgeräusch, Phase um ${turnedDeg}° gedreht`;
