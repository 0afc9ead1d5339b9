import { describe, expect, it } from 'vitest';
import type { Sounding } from '../../../src/session/hearing/listeningTypes.ts';
import { passOf } from '../../../src/ui/measure/passOf.ts';
import { ageWords } from '../../../src/words/times.ts';
import { flagAt } from '../../support/nothingHeard.ts';

const sounding = (index: number): Sounding => ({
  index,
  startS: 10 * index,
  endS: null,
  decayTimeS: null,
  frequencyHz: null,
  frequencyStandardUncertaintyHz: null,
});

describe('what tells two marks of one run apart', () => {
  const resonances = [
    flagAt(12, { soundingIndex: 4 }),
    flagAt(44, { soundingIndex: 7 }),
    flagAt(46, { soundingIndex: 7 }),
  ];
  const trace = { resonances, soundings: [4, 7].map(sounding) };

  it('is the ringing of the fork and the pass in it', () => {
    expect(resonances.map(({ timeS }) => passOf(trace, timeS))).toEqual([
      { strike: 1, pass: 1 },
      { strike: 2, pass: 1 },
      { strike: 2, pass: 2 },
    ]);
  });

  it('is not known of another run, nor outside of any ringing', () => {
    expect(passOf(trace, 13)).toBeNull();
    expect(passOf({ ...trace, resonances: [flagAt(12, { soundingIndex: null })] }, 12)).toBeNull();
  });

  it('and how long ago it was: in tens of seconds, minutes, and from an hour on by the clock', () => {
    const made = '2030-03-01T10:00:00.000Z';
    const after = (s: number) => ageWords(made, Date.parse(made) + 1000 * s);
    expect([3, 47, 60, 150, 3599].map(after)).toEqual([
      'just now',
      '40 s ago',
      '1 minute ago',
      '2 minutes ago',
      '59 minutes ago',
    ]);
    expect(after(3600)).toMatch(/^at .*\d/);
  });
});
