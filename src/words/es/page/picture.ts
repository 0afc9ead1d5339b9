import type { LaterWords } from '../../catalogue.ts';

export const picture: LaterWords['picture'] = {
  region: (title) => `Imagen: ${title}`,
  alternative: (title, words) => `${title}. ${words}`,
  saveSvg: 'Guardar como SVG',
  saveSvgNamed: (title) => `Guardar «${title}» como SVG`,
  savePng: 'Guardar como PNG',
  savePngNamed: (title) => `Guardar «${title}» como PNG`,
};
