import type { FirstWords } from '../../catalogue.ts';

export const stageLine: FirstWords['stageLine'] = {
  waiting: 'Esperando o som…',
  tooFast: 'Rápido demais: uma ressonância passou.',
  roomNoise: 'Medindo o ruído da sala: fique em silêncio.',
  listenFirst: 'Toque em Ouvir. Assim as duas mãos ficam livres para o diapasão e o tubo.',
  openRecording: 'Abra uma gravação do diapasão na boca da coluna.',
  over: 'A gravação terminou.',
  overTypeLengths: 'A gravação terminou. Digite os comprimentos das marcas.',
  strike: 'Ouvindo. Bata no diapasão e segure-o na boca.',
  slide: 'O diapasão é ouvido: deslize devagar.',
  perhaps: 'Talvez uma ressonância: passe por ela de novo.',
  marked: 'Ressonância marcada. Volte para ler, ou continue deslizando.',
};
