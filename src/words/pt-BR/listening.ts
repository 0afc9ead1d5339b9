import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

/** "1 vez", "2 vezes". */
const times = (count: number): string => counted(count, 'vez', 'vezes');

export const listening: FirstWords['listening'] = {
  between: (fromS, toS, said) => `Entre ${fromS} e ${toS}\u00a0s: ${said}`,
  slower: 'Deslize mais devagar: a largura de uma mão em quatro segundos.',
  noFork: (toleranceHz, nominalHz) =>
    `Não se ouviu nenhum tom estável a menos de ${toleranceHz}\u00a0Hz de ${nominalHz}\u00a0Hz: confira a frequência gravada no diapasão, bata mais forte ou aproxime o diapasão do microfone.`,
  otherFork: (toleranceHz, nominalHz, otherHz) =>
    `Não se ouviu nenhum tom estável a menos de ${toleranceHz}\u00a0Hz de ${nominalHz}\u00a0Hz, mas um de cerca de ${otherHz}\u00a0Hz: confira a frequência gravada no diapasão e a escolhida nesta página. Se for o diapasão certo, ele está longe do valor gravado: com peso, lascado ou solto.`,
  offStamp: (measuredHz, offsetHz, isAbove) =>
    `O diapasão soa em ${measuredHz}\u00a0Hz, ${offsetHz}\u00a0Hz ${isAbove ? 'acima' : 'abaixo'} do valor gravado: use a frequência medida e veja se o diapasão está lascado.`,
  beating: (beatHz, isAbove) =>
    `Soa outro diapasão de frequência quase igual, ${beatHz}\u00a0Hz ${isAbove ? 'acima' : 'abaixo'} do seu: há ${beatHz} batimentos por segundo. Peça que o abafem ou espere até que ele pare de soar.`,
  forkTurned: (turns, fromS) =>
    `O tom sumiu e voltou invertido ${times(turns)} a partir de ${fromS}\u00a0s, como quando se gira o diapasão em torno da haste: mantenha o mesmo ramo voltado para a boca.`,
  tooFast: (halfPowerS, slower) =>
    `As ressonâncias passaram em ${halfPowerS}\u00a0s, rápido demais: a coluna não teve tempo de chegar ao volume máximo. ${slower}`,
  tooFastAt: (timeS, slower) =>
    `Em ${timeS}\u00a0s uma ressonância passou rápido demais: a coluna não teve tempo de chegar ao volume máximo, e talvez falte a marca. ${slower}`,
  clipping: (count) =>
    `A entrada ficou alta demais ${times(count)}: afaste o microfone ou diminua o ganho dele.`,
  overdriven: (percent, count) =>
    `O som foi cortado ${times(count)} em ${percent}\u00a0% do fundo de escala, antes de chegar ao gravador: afaste o microfone ou diminua o ganho dele.`,
  tooFaint: (percent) =>
    `O momento mais forte só chega a ${percent}\u00a0% do fundo de escala: aumente o ganho do microfone ou aproxime-o da boca da coluna.`,
  gainPumping:
    'A sala fica mais silenciosa quando o diapasão está forte: um ganho automático muda o volume, e os níveis não podem ser comparados. Desligue o ganho automático, a supressão de ruído e o cancelamento de eco do microfone.',
  tooShort:
    'A gravação tem menos de um segundo: curta demais para achar nela um diapasão. Grave um deslizamento inteiro.',
  silent: 'Não chega nenhum som: o microfone está mudo ou foi escolhido o errado.',
  gap: (losses, timeS) =>
    `Perdeu-se som ${times(losses)}, primeiro em ${timeS}\u00a0s: nenhuma ressonância é marcada ali. Feche outros programas e deslize ali de novo.`,
  dropouts: (count) =>
    `O som foi cortado e voltou ${times(count)}: ali os níveis são baixos demais. Feche outros programas ou use um microfone com fio.`,
  dropoutsFrom: (count, timeS) =>
    `O som foi cortado e voltou ${times(count)}, primeiro em ${timeS}\u00a0s: ali os níveis são baixos demais. Feche outros programas ou use um microfone com fio.`,
  narrowBand: (edgeKhz) =>
    `Não há nada acima de ${edgeKhz}\u00a0kHz: típico de fala longe do microfone, de um fone em modo de chamada ou da gravação de um telefone. A frequência do diapasão fica abaixo disso e é ouvida. Se os níveis parecerem estranhos, faça o teste de ganho ou escolha o microfone do próprio aparelho.`,
  highBandMissing: (edgeKhz) =>
    `Não há nada acima de ${edgeKhz}\u00a0kHz: típico de uma sala silenciosa, de supressão de ruído ou de um arquivo muito comprimido. A frequência do diapasão fica abaixo disso e é ouvida. Se os níveis parecerem estranhos, faça o teste de ganho; grave em WAV se puder.`,
  floorFell: (fallDb) =>
    `O silêncio entre os sons caiu ${fallDb}\u00a0dB abaixo do ruído inicial da sala: ou a sala ficou quieta, ou entrou uma supressão de ruído. Com um microfone, faça o teste de ganho antes de confiar em um nível.`,
  offset: (percent) =>
    `O som tem uma componente contínua de ${percent}\u00a0% do fundo de escala: um defeito da placa de som ou do conector. Mesmo assim os níveis na frequência do diapasão valem; tente outra entrada se o som for cortado.`,
  hum: (mainsHz, levelDb) =>
    `O zumbido da rede elétrica em ${mainsHz}\u00a0Hz está forte (${levelDb}\u00a0dB): tire o carregador da tomada ou afaste-se de fontes e lâmpadas.`,
  cutOff: 'Falta o fim deste arquivo: ele foi cortado. O que há é usado.',
};

export const unheardFrequency: FirstWords['unheardFrequency'] = {
  sampleRate: {
    what: (sampleRateHz, lowestHz, highestHz) =>
      `Este som tem taxa de amostragem de ${sampleRateHz}\u00a0Hz; esta página pode usar de ${lowestHz} a ${highestHz}\u00a0Hz.`,
    advice: (usualRates) => `Grave em ${usualRates}\u00a0Hz.`,
  },
  frequency: {
    what: (frequencyHz, sampleRateHz, lowestHz, highestHz) =>
      `Uma frequência de ${frequencyHz}\u00a0Hz não pode ser ouvida na taxa de amostragem deste som, ${sampleRateHz}\u00a0Hz: só de ${lowestHz} a ${highestHz}\u00a0Hz.`,
    advice: (usualRates) =>
      `Grave em ${usualRates}\u00a0Hz (o microfone de um fone costuma dar menos) ou escolha outra frequência. Mesmo assim você pode digitar comprimentos.`,
  },
};
