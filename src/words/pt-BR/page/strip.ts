import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const stripLabels: FirstWords['stripLabels'] = {
  nothing: 'Nada ouvido ainda.',
  alternative: (words) => `Nível do último minuto. ${words}`,
  empty: 'O último minuto de som aparece aqui enquanto esta página ouve.',
  tone: 'tom na frequência do diapasão',
  room: 'ruído da sala na mesma frequência',
  all: 'todo o som',
  timeTick: (seconds) => `${seconds}\u00a0s`,
  levelTick: (levelDb) => `${levelDb}\u00a0dB`,
};

export const stripSpoken: FirstWords['stripSpoken'] = {
  strikes: (strikes) =>
    strikes === 0
      ? 'Nenhuma batida ouvida.'
      : plural(strikes, 'Uma batida ouvida.', `${strikes} batidas ouvidas.`),
  noResonance: 'Nenhuma ressonância encontrada.',
  resonances: (resonances) => `Ressonâncias: ${resonances}.`,
  resonance: (seconds, riseDb) => `em ${seconds}\u00a0s, aumento ${riseDb}\u00a0dB`,
  perhaps: (seconds, riseDb) => `talvez em ${seconds}\u00a0s, aumento ${riseDb}\u00a0dB`,
};
