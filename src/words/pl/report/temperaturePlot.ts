import type { LaterWords } from '../../catalogue.ts';

export const temperaturePlot: LaterWords['temperaturePlot'] = {
  title: 'Zależność prędkości dźwięku od temperatury',
  x: 'temperatura powietrza, °C',
  y: 'prędkość dźwięku, m/s',
  place: (name, mps, celsius) => `${name}: ${mps}\u00a0m/s przy ${celsius}\u00a0°C`,
  places: (list) => `${list}.`,
  none: 'Żadne miejsce nie ma jeszcze prędkości i temperatury.',
  nameless: 'Punktów jest za dużo, żeby je podpisać na wykresie.',
  band: 'Pas to prędkość przewidywana, od powietrza suchego do nasyconego parą wodną.',
};
