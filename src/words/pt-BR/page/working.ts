import type { LaterWords } from '../../catalogue.ts';
import { fixed } from '../../numbers.ts';
import { plural } from '../grammar.ts';

export const working: LaterWords['working'] = {
  heading: 'Cálculos',
  empty: 'Cada passo aparece aqui com seus números assim que uma marca tem comprimento.',
  lead: 'Para você poder refazer cada passo à mão.',
  letters: {
    L: 'comprimento lido na régua, menos o desvio do zero',
    n: 'ordem da ressonância',
    f: 'frequência do diapasão',
    λ: 'comprimento de onda',
    e: 'correção de extremidade',
    ℓ: 'comprimento da coluna de ar, com a correção de extremidade',
    v: 'velocidade do som no tubo',
    w: 'parte da velocidade que as paredes tiram',
    c: 'velocidade do som no ar livre',
    'χ²': 'soma dos quadrados dos desvios, cada um dividido por sua incerteza',
    a: 'parte da meia largura que a posição pode se afastar da ressonância',
    b: 'meia largura da ressonância',
    q: 'aumento sobre o diapasão sozinho, como razão de amplitudes',
    u: 'incerteza-padrão',
    U: 'incerteza expandida, k·u',
    t: 'temperatura do ar',
    h: 'umidade relativa',
    p: 'pressão do ar',
    γ: 'razão dos dois calores específicos do gás',
    R: 'constante dos gases',
    T: 'temperatura absoluta',
    M: 'massa molar do gás',
    Δ: 'diferença das duas velocidades',
  },
};

export const budget: LaterWords['budget'] = {
  region: 'Balanço de incertezas',
  heading: 'De onde vem a incerteza',
  table: 'Linhas do balanço',
};

export const fit: LaterWords['fit'] = {
  heading: 'Ajuste',
  lead: 'A inclinação é a velocidade no tubo; a reta começa abaixo de zero, em uma correção de extremidade (duas, se a coluna for aberta).',
};

export const nextMarks: LaterWords['nextMarks'] = {
  heading: 'O que medir agora',
  lead: 'As marcas que mais reduziriam a incerteza, com os diapasões que você tem.',
  none: 'Ponha primeiro uma marca em uma ressonância, com o comprimento dela.',
};

export const circle: LaterWords['circle'] = {
  heading: 'Por que a posição mais sonora não é a ressonância',
  lead: 'O microfone ouve dois sons da mesma frequência: o do diapasão e o da coluna. A fase do som da coluna gira quando o comprimento passa pela ressonância, e assim a soma percorre um círculo. A ressonância fica no ponto do círculo oposto ao som do diapasão; a posição mais sonora é o ponto mais longe do zero.',
  mark: 'Ressonância de',
  own: (name) => `Este é o círculo como foi ouvido: ${name}.`,
  example:
    'Um exemplo, ainda não o seu: o som da coluna é 1,5 vezes o do diapasão e está 60° à frente dele. Deslize além de uma ressonância enquanto esta página ouve: a marca dela traz o seu próprio círculo.',
  tooLong: {
    inHalfWidths: (halfWidths, louderDb) =>
      `A posição mais sonora fica a ${fixed(halfWidths, 2)} ${plural(halfWidths, 'meia largura', 'meias larguras')} da ressonância e é ${louderDb}\u00a0dB mais forte: uma coluna lida ali é longa demais.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `A posição mais sonora fica a ${fixed(halfWidths, 2)} ${plural(halfWidths, 'meia largura', 'meias larguras')} (${mm}\u00a0mm) da ressonância e é ${louderDb}\u00a0dB mais forte: uma coluna lida ali é longa demais.`,
  },
  tooShort: {
    inHalfWidths: (halfWidths, louderDb) =>
      `A posição mais sonora fica a ${fixed(halfWidths, 2)} ${plural(halfWidths, 'meia largura', 'meias larguras')} da ressonância e é ${louderDb}\u00a0dB mais forte: uma coluna lida ali é curta demais.`,
    inMillimetres: (halfWidths, mm, louderDb) =>
      `A posição mais sonora fica a ${fixed(halfWidths, 2)} ${plural(halfWidths, 'meia largura', 'meias larguras')} (${mm}\u00a0mm) da ressonância e é ${louderDb}\u00a0dB mais forte: uma coluna lida ali é curta demais.`,
  },
  alike: 'Aqui a posição mais sonora e a ressonância são a mesma: os dois sons estão em fase.',
  nowhere: 'Aqui o som da coluna só enfraquece o do diapasão: nenhuma posição é a mais sonora.',
  noMillimetres: 'Também em milímetros, quando o diâmetro do tubo e a ordem da ressonância forem conhecidos.',
  stays:
    'Enquanto o diapasão, a mão e o microfone ficarem como estão, isso vai para o mesmo lado em cada ressonância: repetir não compensa. Ler quando esta página mostra “Aqui” evita isso.',
};
