import type { LaterWords } from '../../catalogue.ts';

export const gainAnswer: LaterWords['gainAnswer'] = {
  verdicts: { rewritten: 'Modifié', steady: 'Inchangé', 'cannot-tell': 'À l’écoute' },
  details: {
    rewritten: (departureDb) =>
      `Le niveau s’écarte de ${departureDb}\u00a0dB d’une décroissance régulière. Quelque chose entre le micro et la page le change.`,
    steady: (departureDb) =>
      `Le diapason s’est éteint régulièrement, à ${departureDb}\u00a0dB près, pendant que quelqu’un parlait.`,
  },
  waits: {
    strike: 'Frappez le diapason une fois et tenez-le immobile, près du micro.',
    time: (followedS) => `Ne bougez pas et continuez à parler\u00a0: ${followedS}\u00a0s entendues.`,
    talk: (talkS) =>
      `Que quelqu’un parle maintenant, aussi fort que la classe\u00a0: ${talkS}\u00a0s de parole entendues.`,
    fork: 'La parole couvre le diapason. Frappez-le encore une fois et tenez-le plus près du micro.',
  },
  kept: {
    steady: (when, departureDb, limitDb, device) =>
      `Enregistré avec l’expérience\u00a0: ${when}\u00a0: inchangé, à ${departureDb}\u00a0dB d’une décroissance régulière (limite ${limitDb}\u00a0dB), ${device}.`,
    rewritten: (when, departureDb, limitDb, device) =>
      `Enregistré avec l’expérience\u00a0: ${when}\u00a0: modifié, à ${departureDb}\u00a0dB d’une décroissance régulière (limite ${limitDb}\u00a0dB), ${device}.`,
  },
  namelessDevice: 'micro sans nom',
  microphone: (number) => `Micro ${number}`,
};
