import type { LaterWords } from '../../catalogue.ts';

export const temperaturePlot: LaterWords['temperaturePlot'] = {
  title: 'Velocidad del sonido frente a la temperatura',
  x: 'temperatura del aire, °C',
  y: 'velocidad del sonido, m/s',
  place: (name, mps, celsius) => `${name}: ${mps}\u00a0m/s a ${celsius}\u00a0°C`,
  places: (list) => `${list}.`,
  none: 'Todavía no hay ningún lugar con velocidad y temperatura.',
  nameless: 'Hay demasiados puntos para ponerles nombre en la imagen.',
  band: 'La banda es la velocidad prevista, de aire seco a aire saturado.',
};
