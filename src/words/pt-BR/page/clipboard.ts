import type { LaterWords } from '../../catalogue.ts';

export const clipboard: LaterWords['clipboard'] = {
  notCopied: 'O navegador não permitiu copiar. Em vez disso, salve o arquivo CSV.',
};
