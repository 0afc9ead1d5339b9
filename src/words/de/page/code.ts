import type { LaterWords } from '../../catalogue.ts';

export const code: LaterWords['code'] = {
  picture: (name) => `QR-Code: ${name}`,
  pictureOfSeveral: (name, number, of) => `QR-Code ${number} von ${of}: ${name}`,
  place: (number, of) => `Code ${number} von ${of}: alle lesen, in beliebiger Reihenfolge`,
  before: '‹ Zurück',
  next: 'Weiter ›',
};
