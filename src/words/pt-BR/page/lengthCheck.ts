import type { FirstWords } from '../../catalogue.ts';
import { counted } from '../grammar.ts';

export const lengthAnswer: FirstWords['lengthAnswer'] = {
  listening: 'Ouvindo',
  how: 'Bata no diapasão. Segure-o dois segundos na boca, dois longe, e assim por diante, três vezes.',
  verdicts: {
    resonant: 'Ressoa',
    'not-resonant': 'Não ressoa',
    'cannot-tell': 'Ainda não dá para dizer',
  },
  fewChanges: (comparisons) =>
    `O diapasão veio à boca ou saiu dela ${counted(comparisons, 'vez', 'vezes')} até agora; são necessárias pelo menos três.`,
  hindrances: {
    'no-fork': 'Nenhum diapasão foi ouvido ainda. Bata nele e segure-o na boca.',
    'lost-sound': 'Nesse meio-tempo perdeu-se som: feche outros programas e comece de novo.',
    noise:
      'A sala está barulhenta demais, perto do diapasão, para comparar. Bata mais forte, segure o diapasão mais perto ou espere até ficar mais quieto.',
    unsteady:
      'O nível muda também de outros modos. Deixe a coluna como está e segure o diapasão parado em cada uma das duas posições.',
  },
  rise: (riseDb, uncertaintyDb, comparisons) =>
    `Na boca o diapasão fica ${riseDb} ± ${uncertaintyDb}\u00a0dB mais forte (95\u00a0%), comparado ${counted(comparisons, 'vez', 'vezes')}.`,
};
