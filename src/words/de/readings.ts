import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading}\u00a0cm ist länger als das Rohr (${longest}\u00a0cm). Wenn es stimmt, korrigiere die längste Säule unter Aufbau.`,
};
