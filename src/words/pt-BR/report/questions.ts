import type { LaterWords } from '../../catalogue.ts';
import { ordinal } from '../grammar.ts';

export const questions: LaterWords['questions'] = {
  outlier: (cm, apartMm) =>
    `A marca em ${cm}\u00a0cm está a ${apartMm}\u00a0mm das outras. O que pode ter acontecido e como você descobriria?`,
  outlierHidden: (cm) =>
    `A marca em ${cm}\u00a0cm está afastada das outras. O que pode ter acontecido e como você descobriria?`,
  largestPart: (source) =>
    `A principal fonte da incerteza é esta: ${source}. O que você mudaria para reduzi-la à metade?`,
  largestPartHidden: 'De onde vem a maior parte da incerteza? O que você mudaria para reduzi-la à metade?',
  sources: {
    reading: 'a leitura dos comprimentos',
    fork: 'a frequência do diapasão',
    loudest: 'a posição mais sonora, que fica ao lado da ressonância',
    zero: 'o zero da régua',
    scale: 'as divisões da régua',
    end: 'a correção de extremidade',
    wall: 'a parede do tubo, que freia a onda',
  },
  endMeasured: (endMm, diameterMm) =>
    `Sua correção de extremidade é de ${endMm}\u00a0mm em um tubo de ${diameterMm}\u00a0mm. Quanto seria em um tubo com o dobro da largura, e como você testaria isso?`,
  endMeasuredHidden:
    'A coluna age como se fosse mais longa. Como seus comprimentos mostram isso? Como a velocidade muda se você não levar isso em conta?',
  oneOrder: (forkHz) =>
    `Todas as marcas são de uma só ressonância. O que uma segunda ressonância do diapasão de ${forkHz}\u00a0Hz pode dizer que esta não diz?`,
  noTemperature: (speedMps) =>
    `Nenhuma temperatura foi anotada. Com que temperatura do ar a velocidade seria ${speedMps}\u00a0m/s? Isso é provável na sua sala?`,
  noTemperatureHidden:
    'Nenhuma temperatura foi anotada. Que temperatura do ar corresponderia à sua velocidade? Isso é provável na sua sala?',
  apartFromTheory: (differenceMps) =>
    `A velocidade medida menos a prevista é ${differenceMps}\u00a0m/s, mais do que as incertezas explicam. Que erro, sozinho, causaria exatamente essa diferença?`,
  apartFromTheoryHidden:
    'Compare sua velocidade com a prevista. Que erro, sozinho, causaria exatamente essa diferença?',
  nearTheory: (differenceMps) =>
    `A velocidade medida menos a prevista é ${differenceMps}\u00a0m/s, dentro das incertezas. Isso prova a teoria? Qual é a menor diferença que você poderia ter encontrado?`,
  nearTheoryHidden:
    'Compare sua velocidade com a prevista. Qual é a menor diferença que você poderia ter encontrado?',
  twoPlaces: (oneMps, otherMps) =>
    `Você encontrou ${oneMps} e ${otherMps}\u00a0m/s em dois locais. Que erros são iguais nos dois, e o que isso significa para a diferença?`,
  twoPlacesHidden:
    'Você mediu em dois locais. Que erros são iguais nos dois, e o que isso significa para a diferença das velocidades?',
  nextResonance: (order, forkHz) =>
    `Em que comprimento você procuraria a ${ordinal(order)} ressonância do diapasão de ${forkHz}\u00a0Hz? Diga também com quanta certeza.`,
};
