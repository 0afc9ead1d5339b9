import type { FirstWords } from '../catalogue.ts';

export const reading: FirstWords['reading'] = {
  beyondTube: (reading, longest) =>
    `${reading}\u00a0cm é mais longo que o tubo (${longest}\u00a0cm). Se estiver certo, corrija a coluna mais longa em Montagem.`,
};
