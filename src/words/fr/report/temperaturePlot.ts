import type { LaterWords } from '../../catalogue.ts';

export const temperaturePlot: LaterWords['temperaturePlot'] = {
  title: 'Vitesse du son en fonction de la température',
  x: 'température de l’air, °C',
  y: 'vitesse du son, m/s',
  place: (name, mps, celsius) => `${name}\u00a0: ${mps}\u00a0m/s à ${celsius}\u00a0°C`,
  places: (list) => `${list}.`,
  none: 'Aucun lieu n’a encore à la fois une vitesse et une température.',
  nameless: 'Il y a trop de points pour les nommer dans l’image.',
  band: 'La bande montre la vitesse prévue, de l’air sec à l’air saturé.',
};
