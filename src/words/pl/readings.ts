import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading}\u00a0cm to więcej niż długość rury (${longest}\u00a0cm). Jeśli to się zgadza, popraw najdłuższy słup w widoku Układ.`,
};
