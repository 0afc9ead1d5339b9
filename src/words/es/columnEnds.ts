import type { FirstWords } from '../catalogue.ts';

export const endsShort: FirstWords['endsShort'] = { closed: 'cerrada', open: 'abierta' };

export const endsLong: FirstWords['endsLong'] = {
  closed: 'cerrada por un extremo',
  open: 'abierta por los dos extremos',
};
