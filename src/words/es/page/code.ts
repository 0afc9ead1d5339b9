import type { LaterWords } from '../../catalogue.ts';

export const code: LaterWords['code'] = {
  picture: (name) => `Código QR: ${name}`,
  pictureOfSeveral: (name, number, of) => `Código QR ${number} de ${of}: ${name}`,
  place: (number, of) => `Código ${number} de ${of}: léelos todos, en cualquier orden`,
  before: '‹ Anterior',
  next: 'Siguiente ›',
};
