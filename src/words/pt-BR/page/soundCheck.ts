import type { LaterWords } from '../../catalogue.ts';

export const soundFact: LaterWords['soundFact'] = {
  names: { raw: 'Som sem processamento', input: 'Entrada', room: 'Ruído da sala' },
  raw: {
    'not listening': 'primeiro toque em Ouvir',
    'nothing processes': 'sim, nada processa o som desta fonte',
    off: 'sim, o navegador não processa o som',
    'not said': 'o navegador não diz; faça o teste de ganho',
    'level changed': 'não: o navegador muda o nível. Tente outro navegador ou outro microfone',
  },
  nothingHeard: 'nada ouvido ainda',
  upTo: (loudestDb) => `até ${loudestDb}\u00a0dB (0\u00a0dB: um seno de fundo de escala)`,
  faint: (loudestDb) => `até ${loudestDb}\u00a0dB (0\u00a0dB: um seno de fundo de escala); muito fraco`,
  roomUnheard: 'ainda não ouvido',
  room: (roomDb) => `${roomDb}\u00a0dB na frequência do diapasão`,
};

export const forkFinding: LaterWords['forkFinding'] = {
  none: 'bata nele para medir a frequência real',
  measured: (frequencyHz, uncertaintyHz, offHz, offPercent) =>
    `${frequencyHz} ± ${uncertaintyHz}\u00a0Hz, a ${offHz}\u00a0Hz (${offPercent}\u00a0%) do valor gravado`,
  withDecay: (measured, decayTimeS) => `${measured}; cai a 1/e em ${decayTimeS}\u00a0s`,
};
