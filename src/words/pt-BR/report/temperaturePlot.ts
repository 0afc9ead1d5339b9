import type { LaterWords } from '../../catalogue.ts';

export const temperaturePlot: LaterWords['temperaturePlot'] = {
  title: 'Velocidade do som em função da temperatura',
  x: 'temperatura do ar, °C',
  y: 'velocidade do som, m/s',
  place: (name, mps, celsius) => `${name}: ${mps}\u00a0m/s a ${celsius}\u00a0°C`,
  places: (list) => `${list}.`,
  none: 'Nenhum local tem ainda velocidade e temperatura.',
  nameless: 'Há pontos demais para pôr os nomes na figura.',
  band: 'A faixa é a velocidade prevista, do ar seco ao ar saturado.',
};
