import type { LaterWords } from '../../catalogue.ts';

export const readingHelp: LaterWords['readingHelp'] = {
  legend:
    'En las gráficas, un punto es una marca y la barra que lo cruza, su incertidumbre. La recta es el ajuste. Una cruz es un valor atípico, que no cuenta en el ajuste.',
  termsHeading: 'Qué significan las letras',
  terms: {
    k: 'el factor de cobertura. La incertidumbre típica multiplicada por k da un intervalo que contiene el valor verdadero en 95 de cada 100 medidas como esta.',
    ν: 'los grados de libertad: lo bien que se conoce la propia incertidumbre. Cuantos menos hay, mayor es k.',
    Eₙ: 'la diferencia de dos valores, dividida por su incertidumbre expandida conjunta. Entre −1 y 1 los dos concuerdan.',
  },
  sourcesHeading: 'Fuentes',
  sources: {
    speed: (references) => `Velocidad del sonido en el aire: ${references}.`,
    end: (references) => `Corrección de extremo: ${references}.`,
    wall: (references) => `Frenado por la pared: ${references}.`,
    uncertainty: (references) => `Incertidumbre: ${references}.`,
  },
};
