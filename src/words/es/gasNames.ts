import type { FirstWords } from '../catalogue.ts';

export const gasNames: FirstWords['gasNames'] = {
  'dry-air': 'aire seco',
  helium: 'helio',
  argon: 'argón',
  nitrogen: 'nitrógeno',
  oxygen: 'oxígeno',
  'carbon-dioxide': 'dióxido de carbono',
  'sulfur-hexafluoride': 'hexafluoruro de azufre',
};

export const fillingNames: FirstWords['fillingNames'] = { ...gasNames, air: 'aire' };
