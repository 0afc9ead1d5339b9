import type { LaterWords } from '../../catalogue.ts';

export const clipboard: LaterWords['clipboard'] = {
  notCopied: 'Der Browser hat das Kopieren nicht erlaubt. Speichere stattdessen die CSV-Datei.',
};
