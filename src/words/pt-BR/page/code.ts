import type { LaterWords } from '../../catalogue.ts';

export const code: LaterWords['code'] = {
  picture: (name) => `Código QR: ${name}`,
  pictureOfSeveral: (name, number, of) => `Código QR ${number} de ${of}: ${name}`,
  place: (number, of) => `Código ${number} de ${of}: leia todos, em qualquer ordem`,
  before: '‹ Anterior',
  next: 'Próximo ›',
};
