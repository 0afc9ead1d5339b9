import type { LaterWords } from '../../catalogue.ts';

export const picture: LaterWords['picture'] = {
  region: (title) => `Figura: ${title}`,
  alternative: (title, words) => `${title}. ${words}`,
  saveSvg: 'Salvar como SVG',
  saveSvgNamed: (title) => `Salvar “${title}” como SVG`,
  savePng: 'Salvar como PNG',
  savePngNamed: (title) => `Salvar “${title}” como PNG`,
};
