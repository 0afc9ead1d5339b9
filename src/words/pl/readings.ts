import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading} cm to więcej niż długość rury (${longest} cm). Jeśli to się zgadza, popraw najdłuższy słup w widoku Układ.`,
};
