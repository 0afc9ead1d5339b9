import type { LaterWords } from '../../catalogue.ts';

export const code: LaterWords['code'] = {
  picture: (name) => `Code QR\u00a0: ${name}`,
  pictureOfSeveral: (name, number, of) => `Code QR ${number} sur ${of}\u00a0: ${name}`,
  place: (number, of) => `Code ${number} sur ${of}\u00a0: lisez-les tous, dans n’importe quel ordre`,
  before: '‹ Précédent',
  next: 'Suivant ›',
};
