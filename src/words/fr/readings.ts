import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading}\u00a0cm est plus long que le tube (${longest}\u00a0cm). Si c’est juste, corrigez la colonne la plus longue sous Montage.`,
};
