import { plural } from './grammar.ts';

/** The picture of a class's speeds over the temperatures of their air. */
export const classTemperatures = {
  title: 'Speed and temperature, group by group',
  x: 'air temperature, °C',
  y: 'speed of sound as measured, m/s',
  shown: (groups: number) =>
    `${groups} ${plural(groups, 'group', 'groups')} with the temperature and the speed that each measured, and the 95 % interval.`,
  outlying: 'A cross is an outlying group.',
  nameless: 'Only outlying groups have their names here.',
  band: 'The band is the predicted speed, from dry to saturated air.',
};
