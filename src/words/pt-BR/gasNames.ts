import type { FirstWords } from '../catalogue.ts';

export const gasNames: FirstWords['gasNames'] = {
  'dry-air': 'ar seco',
  helium: 'hélio',
  argon: 'argônio',
  nitrogen: 'nitrogênio',
  oxygen: 'oxigênio',
  'carbon-dioxide': 'dióxido de carbono',
  'sulfur-hexafluoride': 'hexafluoreto de enxofre',
};

export const fillingNames: FirstWords['fillingNames'] = { ...gasNames, air: 'ar' };
