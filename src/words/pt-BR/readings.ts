import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading} cm é mais longo que o tubo (${longest} cm). Se estiver certo, corrija a coluna mais longa em Montagem.`,
};
