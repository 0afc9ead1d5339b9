import type { LaterWords } from '../../catalogue.ts';

export const leaving: LaterWords['leaving'] = {
  heading: (title) => `Quitter «\u00a0${title}\u00a0» sans l’enregistrer\u00a0?`,
  message:
    'Ce que vous avez saisi n’est que dans cet onglet. Quand une autre expérience prend sa place, c’est perdu, sauf si vous enregistrez d’abord son fichier.',
  messageWith: (why) =>
    `Ce que vous avez saisi n’est que dans cet onglet\u00a0: ${why} Quand une autre expérience prend sa place, c’est perdu, sauf si vous enregistrez d’abord son fichier.`,
  no: 'Rester ici',
  saveFirst: 'Enregistrer le fichier, puis continuer',
  yes: 'Continuer sans enregistrer',
};
