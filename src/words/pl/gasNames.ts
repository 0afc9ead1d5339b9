import type { FirstWords } from '../catalogue.ts';

export const gasNames: FirstWords['gasNames'] = {
  'dry-air': 'suche powietrze',
  helium: 'hel',
  argon: 'argon',
  nitrogen: 'azot',
  oxygen: 'tlen',
  'carbon-dioxide': 'dwutlenek węgla',
  'sulfur-hexafluoride': 'sześciofluorek siarki',
};

export const fillingNames: FirstWords['fillingNames'] = { ...gasNames, air: 'powietrze' };
