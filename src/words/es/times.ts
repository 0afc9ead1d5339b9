import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const age: FirstWords['age'] = {
  justNow: 'ahora mismo',
  seconds: (seconds) => `hace ${seconds}\u00a0s`,
  minutes: (minutes) => `hace ${counted(minutes, 'minuto', 'minutos')}`,
  // One o'clock is the only hour in the singular.
  at: (time) => (/^0?1\D/.test(time) ? `a la ${time}` : `a las ${time}`),
};
