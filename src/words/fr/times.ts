import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const age: FirstWords['age'] = {
  justNow: 'à l’instant',
  seconds: (seconds) => `il y a ${seconds}\u00a0s`,
  minutes: (minutes) => `il y a ${counted(minutes, 'minute', 'minutes')}`,
  at: (time) => `à ${time}`,
};
