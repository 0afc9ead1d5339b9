import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const budgetColumns: LaterWords['budgetColumns'] = {
  quantity: 'Grandeza',
  uncertainty: 'Incerteza-padrão',
  evaluation: 'Tipo',
  distribution: 'Distribuição',
  sensitivity: 'Sensibilidade',
  contribution: 'Contribuição à velocidade',
  degrees: 'Graus de liberdade',
  share: 'Parte',
};

export const budgetLine: LaterWords['budgetLine'] = {
  reading: 'Comprimentos: ler e achar a ressonância',
  readingWidened: 'Comprimentos: ler e achar a ressonância, corrigidos pela dispersão deles',
  fork: (hertz) => `Frequência do diapasão de ${hertz}\u00a0Hz`,
  loudest: 'Posição mais sonora, ao lado da ressonância',
  zero: 'Zero da régua',
  scale: 'Divisões da régua',
  endOfMouth: 'Correção de extremidade conhecida pela boca, dividida pelo raio',
  endOfTubes: 'Correção de extremidade comum dos tubos',
  wall: 'Efeito da parede',
  wallLeft: 'Efeito da parede, não corrigido',
  distributions: {
    normal: 'normal',
    rectangular: 'retangular',
    arcsine: 'arco-seno',
  },
  types:
    'Tipo A: da dispersão dos comprimentos. Tipo B: do que se sabe por outro meio, como um valor gravado no diapasão ou um instrumento. Sensibilidade: quantos m/s a velocidade muda para uma unidade da grandeza. (JCGM 100:2008, 4.2, 4.3 e 5.1)',
  perMillimetre: (mps) => `${mps}\u00a0m/s por mm`,
  perHertz: (mps) => `${mps}\u00a0m/s por Hz`,
  correlation: 'Correlação da velocidade e da correção de extremidade',
  degrees: 'Graus de liberdade efetivos',
  degreesBy: (degrees) => `ν = ${degrees}, segundo Welch e Satterthwaite`,
  repeatability: 'Repetibilidade de uma leitura',
  repeatabilityFrom: (millimetres, degrees) =>
    `s = ${millimetres}\u00a0mm, Tipo A, com ${counted(degrees, 'grau', 'graus')} de liberdade`,
};
