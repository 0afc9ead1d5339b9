import type { LaterWords } from '../../catalogue.ts';

export const endPlot: LaterWords['endPlot'] = {
  title: 'Correção de extremidade em função do diâmetro',
  x: 'diâmetro interno do tubo, mm',
  y: 'correção de extremidade, mm',
  line: (slope, uncertainty) =>
    `Na reta ajustada aos tubos, a correção aumenta (${slope} ± ${uncertainty}) vezes o aumento do diâmetro (95\u00a0%).`,
  tube: (diameterMm, endMm) => `${diameterMm}\u00a0mm: ${endMm}\u00a0mm`,
  tubes: (list) => `${list}.`,
  noTube: 'Ainda não há tubo com correção de extremidade medida.',
  anotherTube:
    'Com um tubo de outro diâmetro se obtém a reta. Comece para ele um experimento novo, em Arquivo.',
  theory: (slope) => `A linha tracejada é a teoria para uma borda fina, ${slope} vezes o diâmetro.`,
};
