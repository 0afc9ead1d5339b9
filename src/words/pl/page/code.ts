import type { LaterWords } from '../../catalogue.ts';

export const code: LaterWords['code'] = {
  picture: (name) => `Kod QR: ${name}`,
  pictureOfSeveral: (name, number, of) => `Kod QR ${number} z ${of}: ${name}`,
  place: (number, of) => `Kod ${number} z ${of}: odczytaj wszystkie, w dowolnej kolejności`,
  before: '‹ Poprzedni',
  next: 'Następny ›',
};
