import type { LaterWords } from '../catalogue.ts';
import { counted, plural } from './grammar.ts';

export const classTemperatures: LaterWords['classTemperatures'] = {
  title: 'Vitesse et température, groupe par groupe',
  x: 'température de l’air, °C',
  y: 'vitesse du son mesurée, m/s',
  shown: (groups) =>
    `${counted(groups, 'groupe', 'groupes')} avec la température et la vitesse ${plural(groups, 'qu’il a mesurées', 'que chacun a mesurées')}, et l’intervalle à 95\u00a0%.`,
  outlying: 'Une croix est un groupe aberrant.',
  nameless: 'Seuls les groupes aberrants sont nommés ici.',
  band: 'La bande montre la vitesse prévue, de l’air sec à l’air saturé.',
};
