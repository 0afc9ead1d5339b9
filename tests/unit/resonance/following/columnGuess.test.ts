import { describe, expect, it } from 'vitest';
import { columnGuess, guessesOf } from '../../../../src/resonance/following/columnGuess.ts';

const TUBE = { frequencyHz: 512, ends: 'closed', diameterM: 0.035 } as const;

describe('what a resonance of a tube may be', () => {
  // Δl ≈ [2αL + (ka)²/2]/k, full width at half power, computed for a = 17.5 mm at 512 Hz: 2.7, 5.4 and 8.2 mm.
  it.each([
    [1, 2.7],
    [2, 5.4],
    [3, 8.2],
  ])('order %i of a tube of 35 mm at 512 Hz is %f mm wide at half power', (order, widthMm) => {
    expect(2000 * (columnGuess(TUBE, order).halfWidthM ?? NaN)).toBeCloseTo(widthMm, 0);
    expect(Math.abs((2000 * (columnGuess(TUBE, order).halfWidthM ?? NaN)) / widthMm - 1)).toBeLessThan(0.05);
  });

  it('rings up within some tens of milliseconds, 2Q/ω with Q the sounding length over the full width', () => {
    // (0.158 + 0.0107 m) / 2.7 mm = 62; 2 · 62 / (2π · 512 Hz) = 39 ms.
    expect(columnGuess(TUBE, 1).ringUpS).toBeCloseTo(0.039, 2);
  });

  it('is refused where the tube is too wide for the wave: ka above 1.5', () => {
    // k a = 2π · 3000 Hz / 343 m/s · 50 mm = 2.7.
    expect(() => guessesOf({ frequencyHz: 3000, ends: 'open', diameterM: 0.1 })).toThrow(RangeError);
  });
});
