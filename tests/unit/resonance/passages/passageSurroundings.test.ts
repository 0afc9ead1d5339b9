import { describe, expect, it } from 'vitest';
import { levelsAround, onsetBefore } from '../../../../src/resonance/passages/passageSurroundings.ts';
import { viewOf } from '../../../../src/resonance/toneView.ts';
import type { ToneView } from '../../../../src/resonance/toneView.ts';
import { ToneSeries } from '../../../../src/tone/toneSeries.ts';

const RATE_HZ = 100;
const PEAK_S = 5;
const LN_PER_DB = Math.LN10 / 10;

/** A tone of this level, dB, no noise, 10 s long. */
function toneOf(levelDb: (timeS: number) => number): ToneView {
  const amplitude = Array.from({ length: 10 * RATE_HZ }, (_, k) => 10 ** (levelDb(k / RATE_HZ) / 20));
  const series = new ToneSeries(RATE_HZ, 50);
  series.pushValues(
    amplitude,
    amplitude.map(() => 0),
    amplitude.length,
  );
  return viewOf(series, 0, series.length, 0);
}

describe('the levels around a peak', () => {
  const around = (levelDb: (timeS: number) => number, lastIndex = 999) =>
    levelsAround(toneOf(levelDb), { index: PEAK_S * RATE_HZ, power: 10 ** 1.2 }, 10, lastIndex);

  it('tell how far it stands above the middle one, the peak itself left out', () => {
    const { peakOverUsual, unsteadiness } = around((timeS) => (Math.abs(timeS - PEAK_S) < 0.2 ? 12 : 0));
    expect(peakOverUsual).toBeCloseTo(12 * LN_PER_DB, 6);
    expect(unsteadiness).toBeCloseTo(0, 6);
  });

  it('tell how unsteady they are: the quartiles of a tone that is 6 dB louder in every other second', () => {
    const { unsteadiness } = around((timeS) => (Math.floor(timeS) % 2 === 0 ? 6 : 0));
    expect(unsteadiness).toBeCloseTo(6 * LN_PER_DB, 6);
  });

  it('say nothing of what comes after the last value that may be used', () => {
    const lastIndex = PEAK_S * RATE_HZ + 50;
    const quiet = around(() => 0, lastIndex);
    expect(around((timeS) => (timeS * RATE_HZ > lastIndex ? 30 : 0), lastIndex)).toEqual(quiet);
  });
});

describe('the onset before a peak', () => {
  const before = (levelDb: (timeS: number) => number) => onsetBefore(toneOf(levelDb), PEAK_S * RATE_HZ);

  it('is a strike: how high it jumps, and how long ago', () => {
    const { onset, sinceOnset } = before((timeS) => (timeS < PEAK_S - 0.7 ? -20 : 0));
    expect(onset).toBeCloseTo(20 * LN_PER_DB, 6);
    expect(Math.abs(Math.exp(sinceOnset) - 0.7)).toBeLessThan(0.05);
  });

  it('is hardly anything before a resonance: the power 1/(1 + x²) rises by 1 / half width a second at most', () => {
    const halfWidthS = 0.3;
    const { onset } = before((timeS) => -10 * Math.log10(1 + ((timeS - PEAK_S) / halfWidthS) ** 2));
    // Between the nearer stretches lie 0.1 s.
    expect(onset).toBeLessThan(0.1 / halfWidthS + 0.01);
    expect(onset).toBeGreaterThan(0.2);
  });

  it('is none in a steady tone, and less for a knock of 60 ms than for a strike as high', () => {
    expect(before(() => 0).onset).toBeCloseTo(0, 9);
    const knock = before((timeS) => (Math.abs(timeS - 4.3) < 0.03 ? 20 : 0)).onset;
    // The two stretches after it are 70 ms long and share one value: of 7 knocked values the one holds 4 at most.
    expect(knock).toBeLessThan(2 * Math.log((4 * 10 + 3) / 7));
  });
});
