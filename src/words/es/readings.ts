import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading} cm es más largo que el tubo (${longest} cm). Si es correcto, corrige la columna más larga en Montaje.`,
};
