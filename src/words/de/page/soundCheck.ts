import type { LaterWords } from '../../catalogue.ts';

export const soundFact: LaterWords['soundFact'] = {
  names: { raw: 'Unveränderter Ton', input: 'Eingang', room: 'Raumgeräusch' },
  raw: {
    'not listening': 'drück zuerst „Zuhören“',
    'nothing processes': 'ja, nichts verändert den Ton dieser Quelle',
    off: 'ja, der Browser bearbeitet den Ton nicht',
    'not said': 'der Browser sagt es nicht; mach den Verstärkungstest',
    'level changed':
      'nein: Der Browser verändert den Pegel. Versuch einen anderen Browser oder ein anderes Mikrofon',
  },
  nothingHeard: 'noch nichts gehört',
  upTo: (loudestDb) => `bis ${loudestDb}\u00a0dB (0\u00a0dB: ein voll ausgesteuerter Sinus)`,
  faint: (loudestDb) => `bis ${loudestDb}\u00a0dB (0\u00a0dB: ein voll ausgesteuerter Sinus); sehr leise`,
  roomUnheard: 'noch nicht gehört',
  room: (roomDb) => `${roomDb}\u00a0dB bei der Frequenz der Gabel`,
};

export const forkFinding: LaterWords['forkFinding'] = {
  none: 'schlag sie an, um ihre wirkliche Frequenz zu messen',
  measured: (frequencyHz, uncertaintyHz, offHz, offPercent) =>
    `${frequencyHz} ± ${uncertaintyHz}\u00a0Hz, ${offHz}\u00a0Hz (${offPercent}\u00a0%) neben ihrer Angabe`,
  withDecay: (measured, decayTimeS) => `${measured}; fällt in ${decayTimeS}\u00a0s auf 1/e`,
};
