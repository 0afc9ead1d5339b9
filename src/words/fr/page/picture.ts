import type { LaterWords } from '../../catalogue.ts';

export const picture: LaterWords['picture'] = {
  region: (title) => `Image\u00a0: ${title}`,
  alternative: (title, words) => `${title}. ${words}`,
  saveSvg: 'Enregistrer en SVG',
  saveSvgNamed: (title) => `Enregistrer «\u00a0${title}\u00a0» en SVG`,
  savePng: 'Enregistrer en PNG',
  savePngNamed: (title) => `Enregistrer «\u00a0${title}\u00a0» en PNG`,
};
