import type { FirstWords } from '../catalogue.ts';

export const endsShort: FirstWords['endsShort'] = { closed: 'fechada', open: 'aberta' };

export const endsLong: FirstWords['endsLong'] = {
  closed: 'fechada em uma extremidade',
  open: 'aberta nas duas extremidades',
};
