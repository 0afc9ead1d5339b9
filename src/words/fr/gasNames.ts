import type { FirstWords } from '../catalogue.ts';

export const gasNames: FirstWords['gasNames'] = {
  'dry-air': 'air sec',
  helium: 'hélium',
  argon: 'argon',
  nitrogen: 'diazote',
  oxygen: 'dioxygène',
  'carbon-dioxide': 'dioxyde de carbone',
  'sulfur-hexafluoride': 'hexafluorure de soufre',
};

export const fillingNames: FirstWords['fillingNames'] = { ...gasNames, air: 'air' };
