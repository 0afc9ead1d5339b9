import { describe, expect, it } from 'vitest';
import { sweepRange } from '../../../src/session/hearing/sweepRange.ts';
import { exampleExperiment } from '../notebook/exampleExperiment.ts';

const closed = exampleExperiment();
const open = { ...closed, present: { ...closed.present, ends: 'open' as const } };

/** Resonances by hand: closed (2n − 1)·v/4(L + e), open n·v/2(L + 2e), with e = 0.01 m and v = 343 m/s. */
const closedHz = (order: number, lengthM: number) => ((2 * order - 1) * 343) / (4 * (lengthM + 0.01));
const openHz = (order: number, lengthM: number) => (order * 343) / (2 * (lengthM + 0.02));

describe('the range that is proposed for a sweep', () => {
  it.each([0.1, 0.15, 0.3, 0.6, 0.9, 1.8])(
    'holds two resonances of a column of %s m, above 140 Hz',
    (lengthM) => {
      for (const [experiment, hzOf] of [
        [closed, closedHz],
        [open, openHz],
      ] as const) {
        const range = sweepRange(experiment, lengthM);
        if (range === null) throw new Error('there is a column');
        const inside = Array.from({ length: 30 }, (_, index) => hzOf(index + 1, lengthM)).filter(
          (hz) => hz > range.fromHz && hz < range.toHz,
        );
        expect(inside.length).toBeGreaterThanOrEqual(2);
        expect(range.fromHz).toBeGreaterThanOrEqual(120);
      }
    },
  );

  it('is none where the rule’s zero offset leaves no column', () => {
    expect(sweepRange({ ...closed, rule: { ...closed.rule, zeroOffsetM: 0.2 } }, 0.1)).toBeNull();
  });
});
