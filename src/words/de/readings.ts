import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading} cm ist länger als das Rohr (${longest} cm). Wenn es stimmt, korrigiere die längste Säule unter Aufbau.`,
};
