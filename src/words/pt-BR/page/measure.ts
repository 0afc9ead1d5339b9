import type { FirstWords } from '../../catalogue.ts';
import { ordinal, plural } from '../grammar.ts';

export const marks: FirstWords['marks'] = {
  heading: 'Marcas',
  undo: (step) => (step === null ? 'Desfazer' : `Desfazer: ${step}`),
  redo: 'Refazer',
  newMark: 'Nova marca',
  newLength: 'Comprimento de uma nova marca',
  add: 'Adicionar marca',
  waiting: (count) =>
    count === 1
      ? '1 marca está sem comprimento. Digite-o e aperte Enter.'
      : `${count} marcas estão sem comprimento. Digite um e aperte Enter para ir ao próximo.`,
  none: 'Ainda não há marcas. Cada ressonância encontrada cria uma. Você também pode apertar M, ou digitar um comprimento acima do tubo.',
  deleted: (count) => `Marcas apagadas (${count})`,
  bringBack: 'Recuperar',
  atLength: (centimetres) => `em ${centimetres}\u00a0cm`,
  bringBackAtLength: (centimetres) => `Recuperar a marca em ${centimetres}\u00a0cm`,
  withoutLength: 'sem comprimento',
  bringBackWithoutLength: 'Recuperar a marca sem comprimento',
};

export const markRow: FirstWords['markRow'] = {
  mark: (number) => `Marca ${number}`,
  length: (number) => `Comprimento da marca ${number}`,
  waits: 'digite o comprimento',
  overTube: 'Digite-o acima do tubo',
  choose: 'Mudar',
  chooseNamed: (number) => `Mudar a marca ${number}`,
  fork: (number) => `Diapasão da marca ${number}`,
  column: (number) => `Coluna da marca ${number}`,
  place: (number) => `Local da marca ${number}`,
  alsoChange: (count) =>
    plural(
      count,
      'Mudar também a outra marca do mesmo tipo',
      `Mudar também as outras ${count} marcas do mesmo tipo`,
    ),
  unsure: (percent) =>
    `Só ${percent}\u00a0% de certeza de que é uma ressonância: deslize por ela de novo antes de confiar nela.`,
  pass: (strike, pass) => `batida ${strike}, ${ordinal(pass)} passagem`,
  untested: (missing) =>
    missing === 1
      ? 'mais uma ressonância permitiria testá-la'
      : 'mais duas ressonâncias permitiriam testá-la',
  notSolved: 'ainda sem solução',
  leftOut: 'excluída',
  outlier: (cause) => `Valor discrepante: ${cause}`,
  order: (number) => `Ordem da marca ${number}`,
  autoOrder: 'ordem: auto',
  ordinal: (order) => ordinal(order),
  locatedBy: (number) => `Como o comprimento da marca ${number} foi encontrado`,
  atCentre: 'no centro',
  atLoudest: 'na posição mais sonora',
  leaveOut: 'Excluir',
  leaveOutNamed: (number) => `Excluir a marca ${number} do ajuste`,
  delete: 'Apagar',
  deleteNamed: (number) => `Apagar a marca ${number}`,
  again: (evidence) => `Repetição: ${evidence}`,
  separate: 'Separar',
  separateNamed: (number) => `Separar a repetição da marca ${number}`,
  sameAsOther: 'Igual a…',
  sameAsNamed: (number) => `Marca com a mesma ressonância da marca ${number}`,
  same: (number) => `Igual à ${number}`,
  sameNamed: (number, other) => `A marca ${number} é a mesma ressonância da marca ${other}`,
};

export const result: FirstWords['result'] = {
  region: 'Velocidade do som',
  heading: 'Detalhes do resultado',
  spoken: (speed) => `Velocidade do som: ${speed}.`,
  none: '—',
  unit: 'm/s',
};

export const doubts: FirstWords['doubts'] = { heading: 'Avisos' };
