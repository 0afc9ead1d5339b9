import type { LaterWords } from '../catalogue.ts';

export const workingWhy: LaterWords['workingWhy'] = {
  difference: {
    closed: (farCm, nearCm) =>
      `Cada coluna age como se fosse mais longa que o tubo, sempre pela mesma correção e. Na diferença ${farCm}\u00a0cm − ${nearCm}\u00a0cm ela some: a boca não afeta λ. (Comprimentos de ressonância: OpenStax University Physics 1, seção 17.4.)`,
    open: (farCm, nearCm) =>
      `Cada coluna age como se fosse mais longa que o tubo, sempre pela mesma correção 2e. Na diferença ${farCm}\u00a0cm − ${nearCm}\u00a0cm ela some: as bocas não afetam λ. (Comprimentos de ressonância: OpenStax University Physics 1, seção 17.4.)`,
  },
  noEnd:
    'É muito difícil que seja zero ou menos: um dos dois comprimentos foi lido errado, ou a ordem dele é outra.',
  beyondRim: (endMm) =>
    `O ar logo fora da boca também oscila, então a onda se reflete ${endMm}\u00a0mm além da borda deste tubo.`,
  beyondRimOfRadius: (endMm, radii) =>
    `O ar logo fora da boca também oscila, então a onda se reflete ${endMm}\u00a0mm além da borda deste tubo, ${radii} vezes o raio dele.`,
  endKnown: (known) =>
    `Com um só comprimento não dá para separar a correção e de λ; ela vem do que se sabe desta boca: ${known}.`,
  theoryOfEnds: (thinRadii, flangedRadii) =>
    `A teoria dá ${thinRadii} vezes o raio para uma borda fina (Levine & Schwinger 1948) e ${flangedRadii} vezes com um flange (Nomura 1960).`,
  ideal: 'A boca foi indicada como ideal: a correção e fica em zero.',
  endOfMouth: (endMm) =>
    `As marcas sozinhas não dão a correção e; o que se sabe da boca dá: e = ${endMm}\u00a0mm.`,
  endOfBoth: (marksMm, marksUncertaintyMm, endMm) =>
    `As marcas sozinhas dizem e = ${marksMm} ± ${marksUncertaintyMm}\u00a0mm. O que se sabe da boca é mais um valor ao lado delas, e cada um conta conforme sua incerteza. Resultado: e = ${endMm}\u00a0mm.`,
  mouthSources: '(Bocas: Levine & Schwinger 1948; Nomura 1960; Dalmont, Nederveen & Joly 2001.)',
  walls: (layerMm, hertz, radiusMm, percent) =>
    `Junto à parede o ar gruda e cede calor, em uma camada de ${layerMm}\u00a0mm a ${hertz}\u00a0Hz. Em um tubo de ${radiusMm}\u00a0mm de raio isso tira ${percent}\u00a0% da velocidade; em um mais estreito, mais. (Zwikker & Kosten 1949, cap. II; Keefe 1984.)`,
  loudest: (mm) =>
    `O microfone ouve tanto a coluna como o diapasão. A soma é mais forte onde os dois estão mais perto de ficar em fase, um pouco ao lado de onde a coluna vibra mais: aqui com uma incerteza-padrão de ${mm}\u00a0mm. (Largura de uma ressonância: Fletcher & Rossing 1998, cap. 8.)`,
  squares: (sumMps) =>
    `Erros independentes raramente vão todos no mesmo sentido, então somam-se os quadrados: a soma não é ${sumMps}\u00a0m/s, como seria sem os quadrados. (JCGM 100:2008, 5.1.2.)`,
  coverage: (degrees, factor, normalFactor) =>
    `u cobre cerca de dois em cada três casos. Para cobrir 95 em 100, ν = ${degrees} pede k = ${factor}; seria ${normalFactor} se u fosse conhecida exatamente. (JCGM 100:2008, G.3 e G.4.)`,
  warmth: (mpsPerDegree) =>
    `Moléculas quentes são mais rápidas, e são elas que levam o som: c cresce com a raiz quadrada da temperatura absoluta, aqui ${mpsPerDegree}\u00a0m/s por grau. (OpenStax University Physics 1, seção 17.2.)`,
  noEndCorrection: 'sem correção de extremidade, como nos exercícios',
  inRadii: (value, uncertainty) => `${value} ± ${uncertainty} vezes o raio`,
};
