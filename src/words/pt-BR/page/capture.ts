import type { FirstWords } from '../../catalogue.ts';

export const capture: FirstWords['capture'] = {
  ended: 'Escuta encerrada',
  notListening: 'Sem escuta.',
  held: 'Escuta em pausa',
  paused: 'Em pausa.',
  again: 'Começar de novo',
  ownTab: 'Abrir em aba própria',
  help: 'Ajuda com o microfone',
};

export const processingFlag: FirstWords['processingFlag'] = {
  on: 'ligado',
  off: 'desligado',
  unknown: 'desconhecido',
};

export const trustPart: FirstWords['trustPart'] = {
  name: 'Dá para confiar no nível?',
  doubtful: 'O nível está em dúvida.',
  unproven: 'Ainda não verificado.',
  withheld: (flags) =>
    `Ouvidas, mas sem marca: ${flags}. O som foi cortado na passagem, como quando uma supressão de ruído tira o tom: talvez não fosse ressonância.`,
  flag: (seconds, riseDb) => `em ${seconds}\u00a0s, aumento ${riseDb}\u00a0dB`,
  maybes:
    'Talvez uma ressonância. Passe por ela mais uma vez: se for ouvida de novo, vira marca. Ou mantenha-a, se você também a ouviu.',
  maybe: (seconds, percent, reason) => `○ em ${seconds}\u00a0s, ${percent}\u00a0% de certeza: ${reason}`,
  keep: 'Manter',
  keepNamed: (seconds) => `Manter a ressonância em ${seconds}\u00a0s`,
  letIn: 'Marcar mesmo assim',
  letInNamed: (flag) => `Marcar a ressonância ${flag}`,
  letAllIn: 'Marcar todas',
  toCheck: 'Ir para o teste de ganho',
};
