import type { LaterWords } from '../../catalogue.ts';

export const temperaturePlot: LaterWords['temperaturePlot'] = {
  title: 'Zależność prędkości dźwięku od temperatury',
  x: 'temperatura powietrza, °C',
  y: 'prędkość dźwięku, m/s',
  place: (name, mps, celsius) => `${name}: ${mps} m/s przy ${celsius} °C`,
  places: (list) => `${list}.`,
  none: 'Żadne miejsce nie ma jeszcze prędkości i temperatury.',
  nameless: 'Punktów jest za dużo, żeby je podpisać na wykresie.',
  band: 'Pas to prędkość przewidywana, od powietrza suchego do nasyconego parą wodną.',
};
