import type { FirstWords } from '../../catalogue.ts';

export const capture: FirstWords['capture'] = {
  ended: 'Écoute terminée',
  notListening: 'Pas d’écoute.',
  held: 'Écoute en pause',
  paused: 'En pause.',
  again: 'Recommencer',
  ownTab: 'Ouvrir dans un onglet',
  help: 'Aide pour le micro',
};

export const processingFlag: FirstWords['processingFlag'] = {
  on: 'actif',
  off: 'inactif',
  unknown: 'inconnu',
};

export const trustPart: FirstWords['trustPart'] = {
  name: 'Peut-on se fier au niveau ?',
  doubtful: 'Le niveau est douteux.',
  unproven: 'Pas encore contrôlé.',
  withheld: (flags) =>
    `Entendues mais sans repère\u00a0: ${flags}. Le son s’est interrompu pendant le passage, comme quand une suppression du bruit le coupe\u00a0: ce n’était peut-être pas une résonance.`,
  flag: (seconds, riseDb) => `à ${seconds}\u00a0s, hausse ${riseDb}\u00a0dB`,
  maybes:
    'Peut-être une résonance. Passez-y encore une fois : si elle s’entend de nouveau, elle devient un repère. Ou gardez-la, si vous l’avez entendue aussi.',
  maybe: (seconds, percent, reason) => `○ à ${seconds}\u00a0s, sûre à ${percent}\u00a0%\u00a0: ${reason}`,
  keep: 'Garder',
  keepNamed: (seconds) => `Garder la résonance à ${seconds}\u00a0s`,
  letIn: 'Ajouter quand même',
  letInNamed: (flag) => `Ajouter un repère pour la résonance ${flag}`,
  letAllIn: 'Les ajouter toutes',
  toCheck: 'Aller au contrôle du gain',
};
