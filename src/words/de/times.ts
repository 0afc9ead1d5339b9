import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const age: FirstWords['age'] = {
  justNow: 'gerade eben',
  seconds: (seconds) => `vor ${seconds}\u00a0s`,
  minutes: (minutes) => `vor ${counted(minutes, 'Minute', 'Minuten')}`,
  at: (time) => `um ${time}`,
};
