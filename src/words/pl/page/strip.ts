import type { FirstWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const stripLabels: FirstWords['stripLabels'] = {
  nothing: 'Jeszcze nic nie słychać.',
  alternative: (words) => `Poziom w ostatniej minucie. ${words}`,
  empty: 'Gdy strona słucha, widać tu ostatnią minutę dźwięku.',
  tone: 'ton o częstotliwości kamertonu',
  room: 'hałas w sali przy tej samej częstotliwości',
  all: 'cały dźwięk',
  timeTick: (seconds) => `${seconds}\u00a0s`,
  levelTick: (levelDb) => `${levelDb}\u00a0dB`,
};

export const stripSpoken: FirstWords['stripSpoken'] = {
  strikes: (strikes) => `Słychać było ${counted(strikes, 'uderzenie', 'uderzenia', 'uderzeń')}.`,
  noResonance: 'Nie znaleziono rezonansu.',
  resonances: (resonances) => `Rezonanse: ${resonances}.`,
  resonance: (seconds, riseDb) => `w ${seconds}\u00a0s, wzrost ${riseDb}\u00a0dB`,
  perhaps: (seconds, riseDb) => `może w ${seconds}\u00a0s, wzrost ${riseDb}\u00a0dB`,
};
