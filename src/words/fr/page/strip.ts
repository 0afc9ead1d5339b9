import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const stripLabels: FirstWords['stripLabels'] = {
  nothing: 'Rien entendu pour l’instant.',
  alternative: (words) => `Niveau de la dernière minute. ${words}`,
  empty: 'La dernière minute de son apparaît ici pendant que cette page écoute.',
  tone: 'son à la fréquence du diapason',
  room: 'bruit de la salle à la même fréquence',
  all: 'tout le son',
  timeTick: (seconds) => `${seconds}\u00a0s`,
  levelTick: (levelDb) => `${levelDb}\u00a0dB`,
};

export const stripSpoken: FirstWords['stripSpoken'] = {
  strikes: (strikes) => plural(strikes, `${strikes} frappe entendue.`, `${strikes} frappes entendues.`),
  noResonance: 'Aucune résonance trouvée.',
  resonances: (resonances) => `Résonances\u00a0: ${resonances}.`,
  resonance: (seconds, riseDb) => `à ${seconds}\u00a0s, hausse ${riseDb}\u00a0dB`,
  perhaps: (seconds, riseDb) => `peut-être à ${seconds}\u00a0s, hausse ${riseDb}\u00a0dB`,
};
