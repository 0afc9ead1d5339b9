import type { LaterWords } from '../../catalogue.ts';

export const soundFact: LaterWords['soundFact'] = {
  names: { raw: 'Surowy dźwięk', input: 'Wejście', room: 'Hałas w sali' },
  raw: {
    'not listening': 'najpierw naciśnij „Słuchaj”',
    'nothing processes': 'tak, nic nie przetwarza dźwięku tego źródła',
    off: 'tak, przeglądarka nie przetwarza dźwięku',
    'not said': 'przeglądarka tego nie podaje; zrób test wzmocnienia',
    'level changed': 'nie: przeglądarka zmienia poziom. Spróbuj innej przeglądarki albo innego mikrofonu',
  },
  nothingHeard: 'jeszcze nic nie słychać',
  upTo: (loudestDb) => `do ${loudestDb}\u00a0dB (0\u00a0dB: sinus o pełnej skali)`,
  faint: (loudestDb) => `do ${loudestDb}\u00a0dB (0\u00a0dB: sinus o pełnej skali); bardzo słabo`,
  roomUnheard: 'jeszcze nie zmierzono',
  room: (roomDb) => `${roomDb}\u00a0dB przy częstotliwości kamertonu`,
};

export const forkFinding: LaterWords['forkFinding'] = {
  none: 'uderz w niego, żeby zmierzyć jego prawdziwą częstotliwość',
  measured: (frequencyHz, uncertaintyHz, offHz, offPercent) =>
    `${frequencyHz} ± ${uncertaintyHz}\u00a0Hz, ${offHz}\u00a0Hz (${offPercent}\u00a0%) od wybitej wartości`,
  withDecay: (measured, decayTimeS) => `${measured}; zanika do 1/e w ciągu ${decayTimeS}\u00a0s`,
};
