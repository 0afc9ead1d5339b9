import type { LaterWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const classTemperatures: LaterWords['classTemperatures'] = {
  title: 'Velocidad y temperatura, grupo por grupo',
  x: 'temperatura del aire, °C',
  y: 'velocidad del sonido medida, m/s',
  shown: (groups) =>
    `${counted(groups, 'grupo', 'grupos')} con la temperatura y la velocidad que midió cada uno y el intervalo del 95\u00a0%.`,
  outlying: 'Una cruz es un grupo con un valor atípico.',
  nameless: 'Aquí solo llevan nombre los grupos con un valor atípico.',
  band: 'La banda es la velocidad prevista, de aire seco a aire saturado.',
};
