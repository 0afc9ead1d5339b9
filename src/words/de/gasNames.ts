import type { FirstWords } from '../catalogue.ts';

export const gasNames: FirstWords['gasNames'] = {
  'dry-air': 'trockene Luft',
  helium: 'Helium',
  argon: 'Argon',
  nitrogen: 'Stickstoff',
  oxygen: 'Sauerstoff',
  'carbon-dioxide': 'Kohlendioxid',
  'sulfur-hexafluoride': 'Schwefelhexafluorid',
};

export const fillingNames: FirstWords['fillingNames'] = { ...gasNames, air: 'Luft' };
