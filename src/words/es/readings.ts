import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading}\u00a0cm es más largo que el tubo (${longest}\u00a0cm). Si es correcto, corrige la columna más larga en Montaje.`,
};
