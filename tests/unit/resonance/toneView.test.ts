import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rangeSum } from '../../../src/numeric/prefixSum.ts';
import { MovingView, viewOf } from '../../../src/resonance/toneView.ts';
import { toneSeriesOf } from '../../support/hear.ts';
import { toneInNoise } from '../../support/tones.ts';

const series = toneSeriesOf(
  toneInNoise({ sampleRateHz: 8000, durationS: 12, frequencyHz: 512.3, amplitude: 0.1, noiseRms: 0.02 }, 3),
  8000,
  512,
);

describe('a view that moves', () => {
  it('shows what a view of its own would, wherever it was before', () => {
    const step = fc.record({
      from: fc.nat(series.length - 1),
      length: fc.integer({ min: 1, max: 600 }),
      offsetHz: fc.constantFrom(0.3, 0.3, 0.3, 0.25),
    });
    fc.assert(
      fc.property(fc.array(step, { minLength: 2, maxLength: 8 }), (steps) => {
        const moving = new MovingView(series);
        for (const { from, length, offsetHz } of steps) {
          const to = Math.min(series.length, from + length);
          moving.show(from, to, offsetHz);
          const own = viewOf(series, from, to, offsetHz);
          expect([moving.firstIndex, moving.length]).toEqual([from, to - from]);
          for (const values of ['re', 'im', 'noiseDensity', 'farDensity'] as const) {
            expect(moving[values].slice(0, to - from)).toEqual(own[values].slice(0, to - from));
            const sum = (view: MovingView): number =>
              rangeSum(view.sums[values], (to - from) >> 1, to - from);
            expect(sum(moving)).toBe(sum(own as MovingView));
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it('stops the fork’s phase: the turn of 0.3 Hz is taken off', () => {
    // By hand: 0.3 Hz turns the phase by 0.3 · 2π · 5 s = 9.4 rad; what is left is noise, 4 · 0.02² · 5 Hz / 8 kHz = 1e−6 mean
    // square in a mean over 0.2 s against 0.1²: 0.01 rad.
    const view = viewOf(series, 300, 900, 0.3);
    const phase = (from: number): number =>
      Math.atan2(rangeSum(view.sums.im, from, from + 20), rangeSum(view.sums.re, from, from + 20));
    expect(Math.abs(phase(0) - phase(500))).toBeLessThan(0.05);
  });
});
