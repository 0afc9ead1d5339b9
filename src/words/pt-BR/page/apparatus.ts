import type { LaterWords } from '../../catalogue.ts';
import { fixed, hertz } from '../../numbers.ts';

export const tube: LaterWords['tube'] = {
  heading: 'Tubo e régua',
  diameter: 'Diâmetro interno',
  diameterHint: 'para a correção de extremidade e o efeito da parede',
  otherDiameter: 'Diâmetro na outra extremidade',
  otherDiameterHint: 'de um tubo que desliza dentro de outro, aberto nas duas; vazio: o mesmo',
  travel: 'Coluna mais longa',
  travelHint: 'maior comprimento que dá para ajustar',
  stopper: 'O que fecha a coluna',
  stoppers: {
    piston: 'um pistão',
    dipped: 'água, o tubo se move',
    filled: 'água, o nível se move',
  },
  reading: 'Incerteza de leitura',
  readingHint: (taken) =>
    `incerteza-padrão de um comprimento, incluindo achar a ressonância. Se vazio: ${taken}.`,
  zero: 'Desvio do zero',
  zeroHint: 'o que a régua mostra quando a coluna tem comprimento zero; subtraído de cada leitura',
  caution:
    'Um tubo de vidro quebra: prenda-o com suavidade e mantenha a água longe do notebook. Antes de tudo valem as regras do seu laboratório.',
};

export const mouthChoice: LaterWords['mouthChoice'] = {
  legend: 'Boca do tubo',
  lead: 'A coluna age como se fosse mais longa que o tubo; quanto, depende da boca (tracejado nas figuras). Este valor conta junto com seus comprimentos, que o corrigem se forem mais precisos.',
  notDescribed: 'Não descrita',
  anyOf: 'Pode ser qualquer uma destas.',
  ratio: (ratio, uncertainty) => `Correção de extremidade: ${ratio} ± ${uncertainty} raio.`,
  names: {
    'thin-rim': 'Borda fina',
    'thick-rim': 'Borda grossa',
    flange: 'Flange',
    obstructed: 'Algo perto',
    ideal: 'Ideal',
  },
  shapes: {
    'thin-rim': 'Um tubo simples; a parede é mais fina que um décimo do raio.',
    'thick-rim': 'Uma parede de um décimo até metade do raio.',
    flange: 'Uma placa em volta da boca, ou o tubo termina em uma parede.',
    obstructed: 'Uma mão, um suporte ou um diapasão grosso a menos de um diâmetro.',
    ideal: 'Como nos exercícios: sem correção de extremidade.',
  },
};

export const forks: LaterWords['forks'] = {
  heading: 'Diapasões',
  lead: 'Frequência gravada e sua incerteza-padrão até o diapasão ser medido.',
  pitch: (number) => `Diapasão ${number}`,
  uncertainty: (number) => `± diapasão ${number}`,
  remove: 'Remover',
  removeNamed: (number) => `Remover o diapasão ${number}`,
  notMeasured: 'Ainda não medido (veja Verificar).',
  measured: (frequencyHz, standardUncertaintyHz) =>
    `Medido ${fixed(frequencyHz, 2)} ± ${fixed(standardUncertaintyHz, 2)}\u00a0Hz; o ajuste usa este valor.`,
  useStamp: 'Usar o valor gravado',
  add: 'Adicionar um diapasão',
  choose: 'escolha a frequência…',
  offered: (frequencyHz) => `${hertz(frequencyHz)}\u00a0Hz`,
  others: 'Outra frequência: adicione a mais próxima e mude o número.',
  caution:
    'Bata o diapasão em borracha ou na sola do sapato, nunca em vidro ou em uma borda dura. Mantenha um diapasão vibrando longe dos dentes e do vidro.',
};

export const places: LaterWords['places'] = {
  heading: 'Locais e ar',
  lead: 'O que termômetro, higrômetro e barômetro mostram ali. Deixe vazio o que você não leu.',
  place: (number) => `Local ${number}`,
  name: 'Nome',
  remove: 'Remover',
  removeNamed: (number) => `Remover o local ${number}`,
  temperature: 'Temperatura do ar',
  temperatureUncertainty: 'Incerteza da temperatura',
  temperatureUncertaintyHint: 'do ar no tubo: mãos e respiração o aquecem',
  filling: 'No tubo',
  humidity: 'Umidade',
  pressure: 'Pressão',
  co2: 'Dióxido de carbono',
  add: 'Adicionar um local',
};
