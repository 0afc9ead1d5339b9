import type { LaterWords } from '../../catalogue.ts';

export const compare: LaterWords['compare'] = {
  region: 'Comparar',
  heading: 'A diferença é real?',
  lead: 'Erros comuns aos dois resultados (a mesma régua, o mesmo diapasão) se cancelam. Só os outros contam.',
  by: 'Comparar',
  ways: {
    place: 'locais (e suas temperaturas)',
    fork: 'diapasões',
    ends: 'colunas fechadas e abertas',
  },
  theoryHidden: 'Esta aula esconde a velocidade prevista.',
  noMark: 'Nenhuma marca tem comprimento ainda. Marque primeiro uma ressonância em Medir.',
  onlyOne: {
    place: (name) =>
      `Por enquanto só há “${name}” para comparar. Adicione um local em Montagem, escolha-o acima da coluna e marque uma ressonância nele.`,
    fork: (name) =>
      `Por enquanto só há “${name}” para comparar. Adicione um diapasão em Montagem, escolha-o acima da coluna e marque uma ressonância com ele.`,
    ends: (name) =>
      `Por enquanto só há “${name}” para comparar. Escolha o outro tipo de coluna acima da figura e marque uma ressonância nele.`,
  },
  manyPairs: (groups) =>
    `São ${groups} e formam ${(groups * (groups - 1)) / 2} pares. Escolha um para comparar com cada um dos outros.`,
  against: 'Comparar com os outros',
};

export const temperatures: LaterWords['temperatures'] = {
  heading: 'Velocidade em função da temperatura',
  lead: 'Um ponto para cada local. A faixa é a velocidade prevista, do ar seco ao ar saturado.',
  columns: { place: 'Local', speed: 'Velocidade', theory: 'Diferença em relação à prevista' },
  noSpeed: '—',
  noTemperature: 'temperatura não anotada',
};

export const ends: LaterWords['ends'] = {
  heading: 'Correção de extremidade em função do diâmetro',
  lead: 'Um ponto para cada tubo. Meça cada tubo em um experimento próprio; a correção de extremidade precisa de ressonâncias de duas ordens.',
};

export const turned: LaterWords['turned'] = {
  heading: 'Trocar a incógnita',
  lead: 'As mesmas marcas, com outra grandeza como incógnita.',
  fork: 'Velocidade conhecida, diapasão desconhecido',
  temperature: 'Diapasão conhecido, temperatura desconhecida',
  gas: 'Diapasão e temperatura conhecidos, gás desconhecido',
  ends: 'Correção de extremidade como fração do diâmetro',
  pending: '…',
};
