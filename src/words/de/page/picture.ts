import type { LaterWords } from '../../catalogue.ts';

export const picture: LaterWords['picture'] = {
  region: (title) => `Bild: ${title}`,
  alternative: (title, words) => `${title}. ${words}`,
  saveSvg: 'Als SVG speichern',
  saveSvgNamed: (title) => `„${title}“ als SVG speichern`,
  savePng: 'Als PNG speichern',
  savePngNamed: (title) => `„${title}“ als PNG speichern`,
};
