import type { FirstWords } from '../catalogue.ts';

export const endsShort: FirstWords['endsShort'] = { closed: 'fermée', open: 'ouverte' };

export const endsLong: FirstWords['endsLong'] = {
  closed: 'fermée à une extrémité',
  open: 'ouverte aux deux extrémités',
};
