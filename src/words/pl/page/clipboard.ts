import type { LaterWords } from '../../catalogue.ts';

export const clipboard: LaterWords['clipboard'] = {
  notCopied: 'Przeglądarka nie pozwoliła kopiować. Zamiast tego zapisz plik CSV.',
};
