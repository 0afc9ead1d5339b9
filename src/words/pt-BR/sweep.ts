import type { LaterWords } from '../catalogue.ts';
import { counted, ordinal, plural } from './grammar.ts';

export const sweep: LaterWords['sweep'] = {
  order: (order) => ordinal(order),
  noOrder: 'nenhuma',
  outlier: 'discrepante',
  basis: (resonances, factor, endMm) =>
    `95\u00a0%, k = ${factor}, de ${counted(resonances, 'ressonância', 'ressonâncias')}. A correção de extremidade de ${endMm}\u00a0mm é prevista: com um só comprimento não dá para medi-la.`,
  wallsCorrected: 'O efeito da parede, que freia a onda, está corrigido.',
  noDiameter:
    'Anote o diâmetro do tubo: sem ele, a correção de extremidade é só uma estimativa, e o efeito da parede, que freia a onda, não é corrigido.',
  lost: (seconds) => `Perderam-se ${seconds}\u00a0s de som.`,
  lostMoment: 'O som falhou por um momento.',
  noneNear: 'Não havia ressonância por perto.',
  nearLost: (resonances, hertz) =>
    `${plural(resonances, 'Não se usa a ressonância', 'Não se usam as ressonâncias')} perto de ${hertz}\u00a0Hz. Feche outros programas e faça a varredura de novo.`,
  note: (cm, list, speed) => `Varredura em ${cm}\u00a0cm: ${list}; velocidade ${speed}.`,
  found: (order, frequency) => `${ordinal(order)} ${frequency}`,
  remarks: {
    practice: 'Simulada na coluna de treino.',
    unproven: 'O nível não foi verificado.',
    doubtful: 'O nível está em dúvida.',
  },
  endsBelowStart: 'A varredura deve terminar em uma frequência maior que a do início.',
  beyondTheory: (mm, highestHz, toHz) =>
    `No treino, um tubo de ${mm}\u00a0mm pode ser varrido até ${highestHz}\u00a0Hz, não até ${toHz}\u00a0Hz: acima disso não há teoria para a extremidade aberta. Termine a varredura antes ou use um tubo mais estreito.`,
};
