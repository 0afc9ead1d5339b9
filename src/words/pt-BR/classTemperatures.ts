import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const classTemperatures: LaterWords['classTemperatures'] = {
  title: 'Velocidade e temperatura, grupo a grupo',
  x: 'temperatura do ar, °C',
  y: 'velocidade do som medida, m/s',
  shown: (groups) =>
    `${counted(groups, 'grupo', 'grupos')}, cada um com a temperatura e a velocidade que mediu e o intervalo de 95\u00a0%.`,
  outlying: 'Uma cruz é um grupo discrepante.',
  nameless: 'Só os grupos discrepantes têm o nome aqui.',
  band: 'A faixa é a velocidade prevista, do ar seco ao ar saturado.',
};
