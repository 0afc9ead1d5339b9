import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const age: FirstWords['age'] = {
  justNow: 'ahora mismo',
  seconds: (seconds) => `hace ${seconds} s`,
  minutes: (minutes) => `hace ${counted(minutes, 'minuto', 'minutos')}`,
  at: (time) => `hora: ${time}`,
};
