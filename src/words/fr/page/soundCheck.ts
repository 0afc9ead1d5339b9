import type { LaterWords } from '../../catalogue.ts';

export const soundFact: LaterWords['soundFact'] = {
  names: { raw: 'Son brut', input: 'Entrée', room: 'Bruit de la salle' },
  raw: {
    'not listening': 'appuyez d’abord sur Écouter',
    'nothing processes': 'oui, rien ne traite le son de cette source',
    off: 'oui, le navigateur ne traite pas le son',
    'not said': 'le navigateur ne le dit pas ; faites le contrôle du gain',
    'level changed': 'non : le navigateur change le niveau. Essayez un autre navigateur ou un autre micro',
  },
  nothingHeard: 'rien d’entendu encore',
  upTo: (loudestDb) => `jusqu’à ${loudestDb} dB (0 dB\u00a0: une sinusoïde à pleine échelle)`,
  faint: (loudestDb) =>
    `jusqu’à ${loudestDb} dB (0 dB\u00a0: une sinusoïde à pleine échelle)\u00a0; très faible`,
  roomUnheard: 'pas encore entendu',
  room: (roomDb) => `${roomDb} dB à la fréquence du diapason`,
};

export const forkFinding: LaterWords['forkFinding'] = {
  none: 'frappez-le pour mesurer sa vraie fréquence',
  measured: (frequencyHz, uncertaintyHz, offHz, offPercent) =>
    `${frequencyHz} ± ${uncertaintyHz} Hz, à ${offHz} Hz (${offPercent} %) de sa valeur gravée`,
  withDecay: (measured, decayTimeS) => `${measured}\u00a0; il tombe à 1/e en ${decayTimeS} s`,
};
