import type { FirstWords } from '../catalogue.ts';
import { counted } from './grammar.ts';

export const age: FirstWords['age'] = {
  justNow: 'agora mesmo',
  seconds: (seconds) => `há ${seconds}\u00a0s`,
  minutes: (minutes) => `há ${counted(minutes, 'minuto', 'minutos')}`,
  at: (time) => `às ${time}`,
};
