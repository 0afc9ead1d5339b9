import type { LaterWords } from '../../catalogue.ts';

export const soundFact: LaterWords['soundFact'] = {
  names: { raw: 'Son brut', input: 'Entrée', room: 'Bruit de la salle' },
  raw: {
    'not listening': 'appuyez d’abord sur «\u00a0Écouter\u00a0»',
    'nothing processes': 'oui, rien ne traite le son de cette source',
    off: 'oui, le navigateur ne traite pas le son',
    'not said': 'le navigateur ne le dit pas ; faites le contrôle du gain',
    'level changed': 'non : le navigateur change le niveau. Essayez un autre navigateur ou un autre micro',
  },
  nothingHeard: 'rien entendu pour l’instant',
  upTo: (loudestDb) => `jusqu’à ${loudestDb}\u00a0dB (0\u00a0dB\u00a0: une sinusoïde à pleine échelle)`,
  faint: (loudestDb) =>
    `jusqu’à ${loudestDb}\u00a0dB (0\u00a0dB\u00a0: une sinusoïde à pleine échelle)\u00a0; très faible`,
  roomUnheard: 'pas encore mesuré',
  room: (roomDb) => `${roomDb}\u00a0dB à la fréquence du diapason`,
};

export const forkFinding: LaterWords['forkFinding'] = {
  none: 'frappez-le pour mesurer sa vraie fréquence',
  measured: (frequencyHz, uncertaintyHz, offHz, offPercent) =>
    `${frequencyHz} ± ${uncertaintyHz}\u00a0Hz, écart à la valeur gravée\u00a0: ${offHz}\u00a0Hz (${offPercent}\u00a0%)`,
  withDecay: (measured, decayTimeS) => `${measured}\u00a0; l’amplitude tombe à 1/e en ${decayTimeS}\u00a0s`,
};
