import type { FirstWords } from '../../catalogue.ts';
import { plural } from '../grammar.ts';

export const source: FirstWords['source'] = {
  legend: 'Som de',
  names: { practice: 'Coluna de treino', microphone: 'Microfone', recording: 'Gravação' },
  listen: 'Ouvir',
  stop: 'Parar',
  open: 'Abrir uma gravação',
  file: 'Gravação a abrir',
  progress: 'Ouvindo a gravação',
  rate: (kilohertz, processing) => `${kilohertz}\u00a0kHz, ${processing}`,
  processing: {
    on: 'alterado pelo navegador',
    unknown: 'talvez alterado pelo navegador',
    off: 'não alterado pelo navegador',
  },
};

export const now: FirstWords['now'] = {
  legend: 'Medindo agora',
  fork: 'Diapasão',
  hertz: (frequency) => `${frequency}\u00a0Hz`,
  addFork: 'Adicionar diapasão…',
  alsoChange: (marks) =>
    plural(marks, 'Mudar também a marca feita até agora', `Mudar também as ${marks} marcas feitas até agora`),
  column: 'Coluna',
  place: 'Local',
};

export const drawn: FirstWords['drawn'] = {
  wave: 'Onda',
  waveNamed: 'Onda desenhada',
  waves: { pressure: 'pressão', displacement: 'deslocamento', none: 'nada' },
  expected: 'Comprimentos esperados',
};

export const readout: FirstWords['readout'] = {
  none: '–',
  unit: 'dB acima do ruído',
  noneSpoken: 'Aumento sobre o ruído da sala: nenhum tom ouvido',
  levelSpoken: (riseDb) => `Aumento sobre o ruído da sala: ${riseDb} decibéis`,
  check: (sign, verdict) => `Este comprimento: ${sign} ${verdict}`,
};

export const wayBack: FirstWords['wayBack'] = {
  idle: 'De volta à ressonância',
  here: 'Aqui.',
  holdStill: 'Fique parado e leia a régua.',
  atMaximum: 'Na posição mais sonora.',
  toGo: 'mm restantes',
  hereLarge: 'Aqui',
  nothingToGo: 'leia a régua',
  moves: {
    piston: { tooLong: 'empurre', tooShort: 'puxe' },
    dipped: { tooLong: 'abaixe o tubo', tooShort: 'levante o tubo' },
    filled: { tooLong: 'suba a água', tooShort: 'abaixe a água' },
  },
  off: (side, move) => `${side}: ${move}`,
  heardAgo: (seconds) => `(há ${seconds}\u00a0s)`,
  lost: 'Não dá para saber onde está a ressonância. Passe por ela mais uma vez e depois volte dos dois lados.',
  byLevel: 'De volta à posição mais sonora: passe por ela vindo dos dois lados.',
  tooShort: 'curta demais',
  tooLong: 'longa demais',
  spoken: {
    here: 'Aqui. Fique parado.',
    atMaximum: 'Na posição mais sonora.',
    tooLong: (move) => `Longa demais: ${move}.`,
    tooLongBy: (mm, move) => `Longa demais em ${mm}\u00a0mm: ${move}.`,
    tooShort: (move) => `Curta demais: ${move}.`,
    tooShortBy: (mm, move) => `Curta demais em ${mm}\u00a0mm: ${move}.`,
    lost: 'Não dá para saber onde está a ressonância. Passe por ela mais uma vez.',
    close: 'Perto da posição mais sonora.',
    away: 'Longe da posição mais sonora.',
  },
};

export const task: FirstWords['task'] = { task: 'Tarefa:' };
