import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const age: FirstWords['age'] = {
  justNow: 'przed chwilą',
  seconds: (seconds) => `${seconds}\u00a0s temu`,
  minutes: (minutes) => `${counted(minutes, 'minutę', 'minuty', 'minut')} temu`,
  at: (time) => `o ${time}`,
};
