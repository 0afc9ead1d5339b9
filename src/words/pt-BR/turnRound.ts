import type { LaterWords } from '../catalogue.ts';

export const turnRound: LaterWords['turnRound'] = {
  noFork: 'Anote a temperatura do ar e marque pelo menos uma ressonância do diapasão escolhido acima.',
  fork: (hertz, uncertaintyHz) =>
    `O diapasão escolhido acima tem ${hertz} ± ${uncertaintyHz}\u00a0Hz (95\u00a0%), se o som tiver a velocidade prevista para a temperatura anotada.`,
  noTemperature: (lowestC, highestC) =>
    `Ainda não há velocidade, ou ela não é a do ar entre ${lowestC} e ${highestC}\u00a0°C.`,
  temperature: (celsius, uncertaintyC) =>
    `Se o gás for ar, sua temperatura é ${celsius} ± ${uncertaintyC}\u00a0°C (95\u00a0%).`,
  noGas: 'Anote a temperatura e marque pelo menos uma ressonância.',
  nearestGas: (gas) => `Nenhum gás da lista tem esta velocidade. O mais próximo: ${gas}.`,
  fittingGases: (gases) => `A velocidade é compatível com: ${gases}. Os outros gases da lista não servem.`,
  gas: (gas, mps) => `${gas} (${mps}\u00a0m/s)`,
  noDiameter: 'Anote o diâmetro do tubo e marque duas ressonâncias.',
  endFromTheory:
    'Por enquanto a correção de extremidade vem da teoria. Marque ressonâncias de duas ordens para medi-la.',
  endRatio: (part, uncertainty, thinRim, usual) =>
    `A correção de extremidade é (${part} ± ${uncertainty}) vezes o diâmetro (95\u00a0%). A teoria dá ${thinRim} para uma borda fina (Levine & Schwinger 1948); o valor prático usual é ${usual}.`,
};
