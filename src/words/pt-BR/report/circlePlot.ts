import type { LaterWords } from '../../catalogue.ts';

export const circlePlot: LaterWords['circlePlot'] = {
  title: (name) => `O que o microfone ouve: ${name}`,
  example: 'um exemplo',
  x: 'em fase com o som do próprio diapasão (que vale 1)',
  y: 'um quarto de período à frente',
  silence: 'zero',
  direct: 'só o diapasão',
  resonance: 'ressonância',
  loudest: 'mais sonora',
  tooShort: 'curta demais',
  tooLong: 'longa demais',
  way: 'Um círculo que sai do som do próprio diapasão (anel), passa pela ressonância, do lado oposto (losango), e volta: de 6 meias larguras abaixo do comprimento da ressonância até 6 acima. Cruzes marcam o zero e uma meia largura para cada lado.',
  ahead: (times, degrees) =>
    `Na ressonância, o som da coluna é ${times} vezes o do diapasão e está ${degrees}° à frente dele.`,
  behind: (times, degrees) =>
    `Na ressonância, o som da coluna é ${times} vezes o do diapasão e está ${degrees}° atrasado em relação a ele.`,
  loudestTooLong: (halfWidths) =>
    `A linha tracejada vai do zero à posição mais sonora (disco): ali a coluna é longa demais (em meias larguras: ${halfWidths}).`,
  loudestTooShort: (halfWidths) =>
    `A linha tracejada vai do zero à posição mais sonora (disco): ali a coluna é curta demais (em meias larguras: ${halfWidths}).`,
  loudestAlike: 'A linha tracejada vai do zero à posição mais sonora (disco), que é a própria ressonância.',
};
