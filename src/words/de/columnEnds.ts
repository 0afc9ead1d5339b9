import type { FirstWords } from '../catalogue.ts';

export const endsShort: FirstWords['endsShort'] = { closed: 'geschlossen', open: 'offen' };

export const endsLong: FirstWords['endsLong'] = {
  closed: 'einseitig geschlossen',
  open: 'beidseitig offen',
};
