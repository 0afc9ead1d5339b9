import { counted } from './grammar.ts';

/** How long ago something was. */
export const age = {
  justNow: 'just now',
  seconds: (seconds: number) => `${seconds} s ago`,
  minutes: (minutes: number) => `${counted(minutes, 'minute')} ago`,
  /** @param time  of the day, as the browser's owner writes it */
  at: (time: string) => `at ${time}`,
};
