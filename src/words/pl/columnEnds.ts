import type { FirstWords } from '../catalogue.ts';

export const endsShort: FirstWords['endsShort'] = { closed: 'zamknięty', open: 'otwarty' };

export const endsLong: FirstWords['endsLong'] = {
  closed: 'jednostronnie zamknięty',
  open: 'obustronnie otwarty',
};
