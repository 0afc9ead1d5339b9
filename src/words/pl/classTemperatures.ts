import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const classTemperatures: LaterWords['classTemperatures'] = {
  title: 'Prędkość i temperatura, grupa po grupie',
  x: 'temperatura powietrza, °C',
  y: 'zmierzona prędkość dźwięku, m/s',
  shown: (groups) =>
    `${counted(groups, 'grupa', 'grupy', 'grup')}: temperatura i prędkość zmierzone przez każdą grupę oraz przedział 95\u00a0%.`,
  outlying: 'Krzyżyk to grupa z wynikiem odstającym.',
  nameless: 'Nazwy mają tu tylko grupy z wynikiem odstającym.',
  band: 'Pas to prędkość przewidywana, od powietrza suchego do nasyconego parą wodną.',
};
