import type { LaterWords } from '../../catalogue.ts';

export const clipboard: LaterWords['clipboard'] = {
  notCopied: 'El navegador no dejó copiar. Guarda en su lugar el archivo CSV.',
};
