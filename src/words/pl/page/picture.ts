import type { LaterWords } from '../../catalogue.ts';

export const picture: LaterWords['picture'] = {
  region: (title) => `Obraz: ${title}`,
  alternative: (title, words) => `${title}. ${words}`,
  saveSvg: 'Zapisz jako SVG',
  saveSvgNamed: (title) => `Zapisz „${title}” jako SVG`,
  savePng: 'Zapisz jako PNG',
  savePngNamed: (title) => `Zapisz „${title}” jako PNG`,
};
