import type { LaterWords } from '../../catalogue.ts';

export const readingHelp: LaterWords['readingHelp'] = {
  legend:
    'Nos gráficos, um ponto é uma marca e a barra que o atravessa é sua incerteza. A reta é o ajuste. Uma cruz é um valor discrepante, que o ajuste não conta.',
  termsHeading: 'O que as letras significam',
  terms: {
    k: 'o fator de abrangência. A incerteza-padrão vezes k dá um intervalo que contém o valor verdadeiro em 95 de 100 medições assim.',
    ν: 'os graus de liberdade: quão bem se conhece a própria incerteza. Quanto menores, maior é k.',
    Eₙ: 'a diferença de dois valores dividida por sua incerteza expandida conjunta. Entre −1 e 1 os dois concordam.',
  },
  sourcesHeading: 'Fontes',
  sources: {
    speed: (references) => `Velocidade do som no ar: ${references}.`,
    end: (references) => `Correção de extremidade: ${references}.`,
    wall: (references) => `Efeito da parede: ${references}.`,
    uncertainty: (references) => `Incerteza: ${references}.`,
  },
};
