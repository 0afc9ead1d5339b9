import type { LaterWords } from '../catalogue.ts';
import { plural } from './grammar.ts';

export const solverWarning: LaterWords['solverWarning'] = {
  noMarks:
    'Nenhuma marca tem ainda um comprimento utilizável. Ponha uma marca em uma ressonância e leia o comprimento dela.',
  noOrders: 'Nenhuma escolha de ordens serve para estas marcas.',
  contradiction:
    'Com estas ordens, uma coluna mais longa teria uma onda mais curta. Confira os comprimentos e as ordens fixadas.',
  outlier: (mark, cause) => `${mark} não se encaixa e não conta no ajuste. ${cause}`,
  inconsistent: (marks) =>
    `As marcas se contradizem, e não dá para saber qual destas está errada: ${marks}. Repita-as.`,
  bracketWide: (mark) =>
    `Os dois comprimentos estão afastados demais para localizar bem a ressonância: ${mark}.`,
  nothingFits:
    'A maioria destes comprimentos não se encaixa em nenhuma ressonância de uma mesma velocidade e correção de extremidade. Confira a unidade dos comprimentos, o diapasão e as extremidades antes de usar o resultado.',
  nothingFitsDiameter:
    'A maioria destes comprimentos não se encaixa em nenhuma ressonância de uma mesma velocidade e correção de extremidade. Confira a unidade dos comprimentos e a do diâmetro, o diapasão e as extremidades antes de usar o resultado.',
  columnType: {
    closed:
      'Estes comprimentos não se encaixam em uma coluna aberta nas duas extremidades, mas se encaixariam em uma fechada em uma extremidade. Confira quais extremidades estavam abertas.',
    open: 'Estes comprimentos não se encaixam em uma coluna fechada em uma extremidade, mas se encaixariam em uma aberta nas duas. Confira quais extremidades estavam abertas.',
  },
  lengthUnit: (unit) =>
    `Estes comprimentos não se encaixam como estão, mas se encaixariam se estivessem em ${unit}. Confira a unidade.`,
  orderAmbiguous: (marks) =>
    `Mais de uma escolha de ordens serve: ${marks}. Ponha uma marca em uma ressonância vizinha, ou fixe a ordem.`,
  orderOf: (mark, order, percent, rival) =>
    `${mark}: ordem ${order} (${percent}\u00a0%)${rival === null ? '' : `, senão ${rival}`}`,
  orderDoubtful: (marks) =>
    `A ordem fixada não combina com ar neste tubo: ${marks}. Deixe a ordem em “auto”, ou confira o diapasão.`,
  skippedOrders: (gaps) => `Falta uma marca aqui: ${gaps}. Alguma ressonância passou despercebida?`,
  gap: {
    closed: (orders, hertz) => `ordem ${orders} (${hertz}\u00a0Hz, fechada)`,
    open: (orders, hertz) => `ordem ${orders} (${hertz}\u00a0Hz, aberta)`,
  },
  otherExplanation: (others, percentAsNoted) =>
    `Estes números também podem significar outra coisa: ${others}; como anotado ${percentAsNoted}\u00a0%. Confira o diapasão, a unidade e o gás, ou ponha uma marca na primeira ressonância.`,
  odds: (explanation, percent) => `${explanation} (${percent}\u00a0%)`,
  otherUnit: (unit) => `comprimentos em ${unit}`,
  otherFork: (hertz) => `um diapasão de ${hertz}\u00a0Hz`,
  otherGas: (gas) => `${gas} no tubo`,
  exactRepeats: (copies) =>
    `${plural(copies, 'Uma marca é', `${copies} marcas são`)} em tudo ${plural(copies, 'igual', 'iguais')} a outra e não ${plural(copies, 'conta', 'contam')} de novo. Colou duas vezes? ${plural(copies, 'Exclua-a', 'Exclua-as')} do ajuste. Leu duas vezes? Diga quando na tabela, em made_at.`,
  forksAlike: (forks) =>
    `${forks} contam como um só diapasão, escrito de dois jeitos. Se são dois diapasões, meça a frequência deles e informe fork_uncertainty_hz.`,
  hertz: (hertz) => `${hertz}\u00a0Hz`,
  tubeTooWide: (millimetres, hertz, ka) =>
    `Um tubo de ${millimetres}\u00a0mm é largo demais para ${hertz}\u00a0Hz: o som nele não é mais uma onda plana (ka = ${ka}), e a correção de extremidade prevista não vale. Use um tubo mais estreito ou um diapasão mais grave.`,
  allUnchecked:
    'Nada nestas marcas poderia revelar um erro de leitura: dois comprimentos sempre se encaixam. Uma terceira ressonância o mostraria.',
  unchecked: (marks) =>
    `Nada aqui poderia revelar um erro de leitura: ${marks}. Ponha uma marca em mais uma ressonância, ou leia de novo.`,
  speedOfAir: {
    cold: (celsius) =>
      `Esta é a velocidade do som em ar a ${celsius}\u00a0°C. A sala estava tão fria? Se não, confira a frequência do diapasão, a unidade dos comprimentos e o gás.`,
    warm: (celsius) =>
      `Esta é a velocidade do som em ar a ${celsius}\u00a0°C. A sala estava tão quente? Se não, confira a frequência do diapasão, a unidade dos comprimentos e o gás.`,
  },
  speedOfNoAir: {
    cold: 'Não existe ar tão frio quanto esta velocidade exigiria. Confira a frequência do diapasão, a unidade dos comprimentos e o gás.',
    warm: 'Não existe ar tão quente quanto esta velocidade exigiria. Confira a frequência do diapasão, a unidade dos comprimentos e o gás.',
  },
  scatter: (factor) =>
    `Os comprimentos se espalham ${factor} vezes o que foi informado ou suposto; a incerteza do resultado é aumentada.`,
  endImplausible: (millimetres) =>
    `A correção de extremidade dá ${millimetres}\u00a0mm. Confira o zero da régua e as extremidades.`,
  endImplausibleInRadii: (millimetres, radii, usualRadii) =>
    `A correção de extremidade dá ${millimetres}\u00a0mm, ${radii} vezes o raio; o comum é cerca de ${usualRadii} vezes. Confira o zero da régua, o diâmetro e as extremidades.`,
  speedImplausible: (mps, lowest, highest) =>
    `${mps}\u00a0m/s está fora de ${lowest} a ${highest}\u00a0m/s para o ar. Confira a frequência do diapasão e as ordens.`,
  aboveTheory: (mps) =>
    `O resultado está ${mps}\u00a0m/s acima da velocidade prevista, mais do que as duas incertezas permitem. Confira o que há na boca, os comprimentos e o zero da régua, depois o termômetro e a frequência do diapasão.`,
  belowTheory: (mps) =>
    `O resultado está ${mps}\u00a0m/s abaixo da velocidade prevista, mais do que as duas incertezas permitem. Confira o que há na boca, os comprimentos e o zero da régua, depois o termômetro e a frequência do diapasão.`,
  agreeingFork: (hertz) => `Um diapasão de ${hertz}\u00a0Hz concordaria: era esse?`,
  implausible: 'A velocidade e a correção de extremidade juntas são incomuns para ar em um tubo.',
  tooFewMarks:
    'Uma só marca não separa a correção de extremidade do comprimento de onda. Ponha uma marca em uma segunda ressonância.',
  endFromTheory:
    'As marcas sozinhas não dão bem a correção de extremidade. Usa-se o que se sabe da boca do tubo, com sua incerteza.',
  endUnknown: (expected, giveOrTake) =>
    `As marcas não dão a correção de extremidade, e nenhum diâmetro foi informado. Supõe-se ${expected}\u00a0mm, como em tubos comuns, mais ou menos ${giveOrTake}\u00a0mm.`,
  noDiameter: (lowestPercent, highestPercent) =>
    `Nenhum diâmetro foi informado, então não se sabe quanto a parede freia a onda (${lowestPercent} a ${highestPercent}\u00a0%). Nada é corrigido; a incerteza inclui isso.`,
  someDiametersMissing: 'Onde nenhum diâmetro foi informado, vale a média dos outros.',
  someTemperaturesMissing: 'Onde nenhuma temperatura do ar foi informada, vale a média das outras.',
  noTemperature:
    'Nenhuma temperatura do ar foi informada, então não dá para comparar a velocidade com a prevista.',
  ifAir: (celsius, giveOrTake) =>
    `Se o gás é ar, esta velocidade corresponde a ${celsius}\u00a0°C, mais ou menos ${giveOrTake}\u00a0°C.`,
  airBeyondFormula:
    'Este ar está fora de 0 a 30\u00a0°C e de 750 a 1020\u00a0hPa, onde a fórmula da velocidade prevista foi verificada; a incerteza dessa velocidade é aumentada.',
};

export const unusableMark: LaterWords['unusableMark'] = {
  outOfRange: {
    frequencyHz: (mark, lowest, highest, value) =>
      `${mark} não é usada: a frequência deve ficar entre ${lowest} e ${highest}\u00a0Hz, e é ${value}\u00a0Hz.`,
    frequencyStandardUncertaintyHz: (mark, lowest, highest, value) =>
      `${mark} não é usada: a incerteza da frequência deve ficar entre ${lowest} e ${highest}\u00a0Hz, e é ${value}\u00a0Hz.`,
    lengthM: (mark, lowest, highest, value) =>
      `${mark} não é usada: o comprimento deve ficar entre ${lowest} e ${highest}\u00a0m, e é ${value}\u00a0m.`,
    otherLengthM: (mark, lowest, highest, value) =>
      `${mark} não é usada: o outro comprimento deve ficar entre ${lowest} e ${highest}\u00a0m, e é ${value}\u00a0m.`,
    lengthStandardUncertaintyM: (mark, lowest, highest, value) =>
      `${mark} não é usada: a incerteza do comprimento deve ficar entre ${lowest} e ${highest}\u00a0m, e é ${value}\u00a0m.`,
    radiusM: (mark, lowest, highest, value) =>
      `${mark} não é usada: o raio do tubo deve ficar entre ${lowest} e ${highest}\u00a0m, e é ${value}\u00a0m.`,
    otherRadiusM: (mark, lowest, highest, value) =>
      `${mark} não é usada: o outro raio do tubo deve ficar entre ${lowest} e ${highest}\u00a0m, e é ${value}\u00a0m.`,
    temperatureC: (mark, lowest, highest, value) =>
      `${mark} não é usada: a temperatura do ar deve ficar entre ${lowest} e ${highest}\u00a0°C, e é ${value}\u00a0°C.`,
    humidityPct: (mark, lowest, highest, value) =>
      `${mark} não é usada: a umidade do ar deve ficar entre ${lowest} e ${highest}\u00a0%, e é ${value}\u00a0%.`,
    pressurePa: (mark, lowest, highest, value) =>
      `${mark} não é usada: a pressão do ar deve ficar entre ${lowest} e ${highest} Pa, e é ${value} Pa.`,
  },
  anotherGas: (mark, gas, firstGas) =>
    `${mark} não é usada: foi feita em ${gas}, e a primeira em ${firstGas}. Calcule cada gás em separado.`,
  orderNotWhole: (mark, order) =>
    `${mark} não é usada: a ordem deve ser um número inteiro maior que 0, e é ${order}.`,
  air: (mark) =>
    `${mark} não é usada: a temperatura, a umidade e a pressão do ar não podem estar todas certas.`,
};
