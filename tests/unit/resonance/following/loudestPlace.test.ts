import { describe, expect, it } from 'vitest';
import { loudestPlace, phasorAt } from '../../../../src/resonance/following/loudestPlace.ts';

/** |1 + m e^{iθ}/(1 + ix)| written out with real numbers, apart from the code under test. */
function loudness(m: number, angleRad: number, x: number): number {
  const size = m / Math.sqrt(1 + x * x);
  const phase = angleRad - Math.atan(x);
  return Math.sqrt(1 + 2 * size * Math.cos(phase) + size * size);
}

/** The loudest place of a scan, ever finer. */
function scanned(m: number, angleRad: number): number {
  let best = 0;
  for (let reach = 200, round = 0; round < 14; round += 1, reach /= 8) {
    const middle = best;
    for (let i = -400; i <= 400; i += 1) {
      const x = middle + (reach * i) / 400;
      if (loudness(m, angleRad, x) > loudness(m, angleRad, best)) best = x;
    }
  }
  return best;
}

const share = (m: number, angleRad: number) => ({ re: m * Math.cos(angleRad), im: m * Math.sin(angleRad) });

describe('loudestPlace', () => {
  it('is where a scan of the level finds it, for any size and angle of the column’s part', () => {
    for (const m of [0.2, 0.7, 1.5, 3, 10]) {
      for (let angleRad = -2.9; angleRad <= 2.9; angleRad += 0.29) {
        const place = loudestPlace(share(m, angleRad));
        const x = scanned(m, angleRad);
        // A scan of squares finds a flat top to about the square root of a double's precision.
        expect(Math.abs((place?.halfWidths ?? NaN) - x)).toBeLessThan(1e-6 * (1 + x * x));
        expect(place?.size).toBeCloseTo(loudness(m, angleRad, x), 10);
      }
    }
  });

  // Greatest and root mean square of the offset over all angles, for a loudest place so many dB above the direct
  // sound. The table is that of an independent numerical study (scan over x and over θ); it is right to its last digit,
  // 0.01 half widths: its scan went in steps.
  it.each([
    [6, 0.58, 0.39],
    [8, 0.44, 0.3],
    [10, 0.33, 0.23],
    [14, 0.2, 0.14],
    [20, 0.1, 0.07],
  ])('lies at a rise of %d dB up to %d, rms %d half widths off', (riseDb, most, rms) => {
    const size = 10 ** (riseDb / 20);
    const offsets = Array.from({ length: 120 }, (_, i) => {
      const angleRad = (i * Math.PI) / 60;
      // The m that is heard so loud at its loudest, by halving.
      let low = 0;
      let high = 100;
      for (let round = 0; round < 45; round += 1) {
        const m = (low + high) / 2;
        if (scannedCoarsely(m, angleRad) < size) low = m;
        else high = m;
      }
      const place = loudestPlace(share(low, angleRad));
      expect(place?.size).toBeCloseTo(size, 3);
      return place?.halfWidths ?? NaN;
    });
    expect(Math.abs(Math.max(...offsets) - most)).toBeLessThan(0.01);
    expect(Math.abs(Math.min(...offsets) + most)).toBeLessThan(0.01);
    const square = offsets.reduce((sum, x) => sum + x * x, 0) / offsets.length;
    expect(Math.abs(Math.sqrt(square) - rms)).toBeLessThan(0.01);
  });

  it('is the resonance itself where both sounds are in step', () => {
    expect(loudestPlace({ re: 1.5, im: 0 })).toEqual({ halfWidths: 0, size: 2.5 });
  });

  it('is nowhere where the column only takes away, or is silent', () => {
    expect(loudestPlace({ re: -0.5, im: 0 })).toBeNull();
    expect(loudestPlace({ re: 0, im: 0 })).toBeNull();
  });
});

/** The greatest loudness of a scan, to 1e-4. */
function scannedCoarsely(m: number, angleRad: number): number {
  let most = 0;
  for (let x = -2; x <= 2; x += 0.01) most = Math.max(most, loudness(m, angleRad, x));
  return most;
}

describe('phasorAt', () => {
  it('has the loudness that the law of cosines gives', () => {
    for (const x of [-6, -0.3, 0, 1, 4]) {
      const { re, im } = phasorAt(share(1.5, 1), x);
      expect(Math.hypot(re, im)).toBeCloseTo(loudness(1.5, 1, x), 12);
    }
  });
});
