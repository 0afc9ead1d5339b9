import { fixed } from '../numbers.ts';

export const spreadPicture = {
  title: 'Spread of the class',
  heading: 'Speed of sound, group by group',
  axis: 'speed of sound, m/s (bars: 95 %)',
  /** Where a group lies beyond the picture's edge. */
  beyond: (speedMps: number) => fixed(speedMps, 0),
};
