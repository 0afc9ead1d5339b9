import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const stripLabels: FirstWords['stripLabels'] = {
  nothing: 'Noch nichts gehört.',
  alternative: (words) => `Pegel der letzten Minute. ${words}`,
  empty: 'Hier erscheint die letzte Minute Ton, während diese Seite zuhört.',
  tone: 'Ton bei der Frequenz der Gabel',
  room: 'Raumgeräusch bei derselben Frequenz',
  all: 'gesamter Schall',
  timeTick: (seconds) => `${seconds}\u00a0s`,
  levelTick: (levelDb) => `${levelDb}\u00a0dB`,
};

export const stripSpoken: FirstWords['stripSpoken'] = {
  strikes: (strikes) => plural(strikes, 'Ein Anschlag gehört.', `${strikes} Anschläge gehört.`),
  noResonance: 'Keine Resonanz gefunden.',
  resonances: (resonances) => `Resonanzen: ${resonances}.`,
  resonance: (seconds, riseDb) => `bei ${seconds}\u00a0s, Anstieg ${riseDb}\u00a0dB`,
  perhaps: (seconds, riseDb) => `vielleicht bei ${seconds}\u00a0s, Anstieg ${riseDb}\u00a0dB`,
};
