import type { LaterWords } from '../../catalogue.ts';
import { dayAndTime } from '../../dates.ts';
import { counted, plural } from '../grammar.ts';

export const report: LaterWords['report'] = {
  title: 'Velocidade do som em uma coluna de ar',
  fileTitle: 'Relatório coluna de ar',
  dates: (createdAt, changedAt) =>
    `Início: ${dayAndTime(createdAt)}; última mudança: ${dayAndTime(changedAt)} (UTC)`,
  names: 'Nomes',
  classAndDate: 'Turma e data',
  date: 'Data',
  group: (group) => `Grupo: ${group}`,
  className: (name) => `Turma: ${name}`,
  questions: 'Perguntas',
  task: 'Tarefa',
  note: 'Anotações',
  notWorked: (places) =>
    `Os gráficos, os cálculos e o balanço de mais ${counted(places, 'local', 'locais')} não são impressos. “Cálculos” na página mostra os do local escolhido.`,
  cautions: 'Cuidados',
  cautionList: [
    'Bata o diapasão em borracha ou na sola do sapato, nunca em vidro ou em uma borda dura.',
    'Mantenha um diapasão vibrando longe dos dentes e do vidro.',
    'Um tubo de vidro quebra: prenda-o com suavidade. Mantenha a água longe de aparelhos elétricos.',
    'Os tons começam baixos. Antes de tudo valem as regras do seu laboratório.',
  ],
  discussion: 'Discussão',
};

export const resultPart: LaterWords['resultPart'] = {
  heading: 'Resultado: velocidade do som em ar livre',
  own: 'c = ( ________ ± ________ ) m/s',
  speed: (speed) =>
    speed === null
      ? 'Ainda não é possível dar uma velocidade.'
      : `c = (${speed.value} ± ${speed.uncertainty}) m/s`,
  none: 'Ainda não há nenhuma marca com comprimento.',
  notPrinted: (places) =>
    `Mais ${counted(places, 'local está', 'locais estão')} na tabela “Resultado” do Arquivo.`,
};

export const placePart: LaterWords['placePart'] = {
  plots: (place) => (place === null ? 'Gráficos' : `Gráficos, ${place}`),
  working: (place) => (place === null ? 'Cálculos' : `Cálculos, ${place}`),
  budget: (place) => (place === null ? 'Balanço de incertezas' : `Balanço de incertezas, ${place}`),
  budgetTable: 'Linhas do balanço',
};

export const warningsPart: LaterWords['warningsPart'] = {
  heading: 'Avisos',
  none: 'Nenhum.',
  ofPlace: (place, warning) => `${place}: ${warning}`,
  notPrinted: (warnings) => `Mais ${counted(warnings, 'aviso não é impresso', 'avisos não são impressos')}.`,
};

export const apparatusPart: LaterWords['apparatusPart'] = {
  heading: 'Montagem',
  fork: 'Diapasão',
  forksLeft: 'Outros diapasões',
  tube: 'Tubo',
  rule: 'Régua',
  air: (place) => `Ar, ${place}`,
  placesLeft: 'Outros locais',
  left: (count) => `${count}, não impressos; estão na tabela “Marcas” do Arquivo`,
};

export const apparatusFacts: LaterWords['apparatusFacts'] = {
  stamped: (hz, uncertaintyHz) => `gravado ${hz}\u00a0Hz ± ${uncertaintyHz}\u00a0Hz (incerteza-padrão)`,
  measured: (stampedHz, measuredHz, uncertaintyHz) =>
    `gravado ${stampedHz}\u00a0Hz, medido ${measuredHz} ± ${uncertaintyHz}\u00a0Hz (incerteza-padrão); vale a frequência medida`,
  noDiameter: 'diâmetro interno não medido',
  diameter: (mm) => `diâmetro interno ${mm}\u00a0mm`,
  otherDiameter: (mm) => `${mm}\u00a0mm na outra extremidade aberta`,
  reading: (mm) => `uma leitura ± ${mm}\u00a0mm (incerteza-padrão, incluindo achar a ressonância)`,
  readingNotStated: (taken) => `incerteza de leitura não informada: ${taken}`,
  zeroOffset: (mm) => `desvio do zero ${mm}\u00a0mm`,
  temperature: (celsius, uncertainty) => `${celsius} ± ${uncertainty}\u00a0°C (incerteza-padrão)`,
  noTemperature: 'temperatura não lida',
  humidity: (percent) => `umidade ${percent}\u00a0%`,
  noHumidity: 'umidade não lida',
  pressure: (hPa) => `${hPa}\u00a0hPa`,
  noPressure: 'pressão não lida',
  co2: (ppm) => `${ppm}\u00a0ppm de dióxido de carbono`,
};

export const methodPart: LaterWords['methodPart'] = {
  heading: 'Método',
  opening:
    'Um diapasão vibrando é segurado na boca de uma coluna de ar, e o comprimento da coluna é mudado até ela ressoar: o som cresce na frequência do diapasão.',
  heard: (heard, marks, where) =>
    `De ${counted(marks, 'marca', 'marcas')}, ${heard} ${plural(heard, 'foi encontrada', 'foram encontradas')} ouvindo só a frequência do diapasão, ${where}, e comparando com o ruído da sala na mesma faixa estreita; depois o comprimento foi lido na régua.`,
  sources: {
    microphone: 'com o microfone',
    recording: 'em uma gravação',
    practice: 'na coluna de treino simulada',
  },
  byHand: (byHand, marks) =>
    `De ${counted(marks, 'marca', 'marcas')}, ${byHand} ${plural(byHand, 'foi adicionada', 'foram adicionadas')} à mão.`,
  bracketed: (marks) =>
    `Onde uma marca tem dois comprimentos (${marks}), a ressonância fica entre eles e vale o meio.`,
  theory:
    'Uma coluna fechada em uma extremidade ressoa quando seu comprimento é um número ímpar de quartos de comprimento de onda; uma aberta nas duas, quando é um número inteiro de meios comprimentos de onda, menos a correção de extremidade em cada ponta aberta. A velocidade é o comprimento de onda vezes a frequência. Um só ajuste ponderado usa todas as marcas, cada uma com sua incerteza. Quando se conhece o diâmetro do tubo, corrige-se o efeito da parede, que freia a onda.',
};

export const marksPart: LaterWords['marksPart'] = {
  heading: 'Marcas',
  none: 'Nenhuma ainda.',
  table: 'Tabela de marcas',
  mark: 'Marca',
  column: 'Diapasão e coluna',
  length: 'Comprimento, cm',
  order: 'Ordem',
  residual: 'Desvio do ajuste, mm',
  remarks: 'Observações',
  nothing: '—',
  number: (number, isAgain) => (isAgain ? `${number} de novo` : `${number}`),
  between: (oneCm, otherCm) => `${oneCm} a ${otherCm}`,
  repeats: (mark) => `outra passagem pela ressonância da marca ${mark}`,
  leftOut: 'excluída do ajuste',
  outlier: (cause) => `valor discrepante: ${cause}`,
  below: (shown, all) =>
    shown === all
      ? 'Comprimentos como a régua os mostra.'
      : `Comprimentos como a régua os mostra. De ${all} marcas, as primeiras ${shown} são impressas; as tabelas do Arquivo têm todas.`,
};

export const comparisonPart: LaterWords['comparisonPart'] = {
  heading: 'Comparação com a teoria',
  headingHidden: 'Comparação',
  hidden: 'Esta aula esconde a velocidade prevista.',
  theory:
    'A velocidade prevista é a do som no ar com a temperatura, a umidade e a pressão anotadas (Cramer 1993); em outro gás é √(γRT/M).',
  place: (place, difference) =>
    difference === null
      ? `${place}: a temperatura do ar não foi anotada, então não dá para prever a velocidade.`
      : `${place}: velocidade medida menos prevista: ${difference}.`,
  pairsLeft: (pairs) =>
    `Mais ${counted(pairs, 'par de locais não é impresso', 'pares de locais não são impressos')}. “Comparar” na página mostra a diferença entre dois quaisquer.`,
};
