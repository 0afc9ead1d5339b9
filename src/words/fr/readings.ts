import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading} cm est plus long que le tube (${longest} cm). Si c’est juste, corrigez la colonne la plus longue sous Montage.`,
};
