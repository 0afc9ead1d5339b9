import { describe, expect, it } from 'vitest';
import { decayTimeS } from '../../../src/resonance/decayTime.ts';
import { seriesSoundings } from '../../../src/resonance/seriesSoundings.ts';
import { combineFrequencies, soundingFrequency } from '../../../src/resonance/soundingFrequency.ts';
import { findSoundings } from '../../../src/resonance/soundings.ts';
import { findStrikes } from '../../../src/resonance/strikes.ts';
import { MovingView, viewOf } from '../../../src/resonance/toneView.ts';
import { FrequencyEstimator } from '../../../src/tone/frequencyEstimator.ts';
import { addStrikes, toneInNoise } from '../../support/tones.ts';
import type { StruckTone } from '../../support/tones.ts';
import { toneSeriesOf } from '../../support/hear.ts';

const SAMPLE_RATE_HZ = 8000;
const FORK_HZ = 426.6;
const NOISE_RMS = 0.001;

function heard(strikes: readonly StruckTone[], durationS: number, noiseRms = NOISE_RMS) {
  const samples = toneInNoise(
    { sampleRateHz: SAMPLE_RATE_HZ, durationS, frequencyHz: FORK_HZ, amplitude: 0, noiseRms },
    17,
  );
  addStrikes(samples, SAMPLE_RATE_HZ, FORK_HZ, strikes);
  const series = toneSeriesOf(samples, SAMPLE_RATE_HZ, FORK_HZ);
  const view = viewOf(series, 0, series.length, 0);
  return { series, view, soundings: findSoundings(view) };
}

/** Start and end in s. */
const times = (spans: readonly { from: number; to: number }[], rateHz: number): number[][] =>
  spans.map(({ from, to }) => [from / rateHz, to / rateHz]);

describe('soundings', () => {
  it('go from strike to damping', () => {
    const { view, soundings } = heard(
      [
        { strikeS: 1, amplitude: 0.03, decayTimeS: 10, dampedS: 5 },
        { strikeS: 7, amplitude: 0.02, decayTimeS: 10, dampedS: 9 },
      ],
      12,
    );
    const found = times(soundings, view.rateHz);
    expect(found).toHaveLength(2);
    // The narrow stream smears 30 ms, and damping takes 45.
    [1, 5, 7, 9].forEach((timeS, i) => expect(Math.abs((found.flat()[i] ?? NaN) - timeS)).toBeLessThan(0.06));
    expect(soundings.every((sounding) => sounding.ended)).toBe(true);
  });

  it('end where the fork has died out into the noise', () => {
    const { view, soundings } = heard([{ strikeS: 1, amplitude: 0.03, decayTimeS: 1.5 }], 20);
    expect(soundings).toHaveLength(1);
    // By hand: noise in the 0.2 s average is 4 s² 4.5 / fs = 2.3e-9 mean square; four times that is reached by A² e^(−2t/τ)
    // with A² = 9e-4 after t = τ / 2 · ln (9e-4 / 9.2e-9) = 8.6 s.
    const endS = (soundings[0]?.to ?? NaN) / view.rateHz;
    expect(Math.abs(endS - 9.6)).toBeLessThan(1);
    expect(soundings[0]?.ended).toBe(true);
  });

  it('are split where a fork is struck again while it sounds', () => {
    const { view, soundings } = heard(
      [
        { strikeS: 1, amplitude: 0.02, decayTimeS: 6 },
        { strikeS: 6, amplitude: 0.025, decayTimeS: 6 },
        { strikeS: 11, amplitude: 0.02, decayTimeS: 6 },
      ],
      15,
    );
    const starts = times(soundings, view.rateHz).map(([from]) => from ?? NaN);
    expect(starts).toHaveLength(3);
    [1, 6, 11].forEach((timeS, i) => expect(Math.abs((starts[i] ?? NaN) - timeS)).toBeLessThan(0.12));
    expect(soundings.map((sounding) => sounding.ended)).toEqual([true, true, false]);
  });

  it('are not split by a fork that is brought to the mouth in a quarter of a second, nor by a knock', () => {
    const { series } = heard([{ strikeS: 1, amplitude: 0.02, decayTimeS: 20 }], 14);
    const rate = series.rateHz;
    for (let k = 0; k < series.length; k += 1) {
      const t = k / rate;
      const near = Math.max(0, Math.min(1, (t - 4) / 0.25)) - Math.max(0, Math.min(1, (t - 8) / 0.25));
      const knock = Math.abs(t - 11) < 0.03 ? 5 : 1;
      series.re[k] = series.re[k] * (1 + 4 * near) * knock;
      series.im[k] = series.im[k] * (1 + 4 * near) * knock;
    }
    const view = viewOf(series, 0, series.length, 0);
    expect(findSoundings(view)).toHaveLength(1);
    expect(findStrikes(view, 150, view.length)).toEqual([]);
  });

  it('of a long series are those of one search over all of it', () => {
    const forks: StruckTone[] = [
      { strikeS: 2, amplitude: 0.03, decayTimeS: 10, dampedS: 8 },
      // Across the first window’s end,
      { strikeS: 110, amplitude: 0.03, decayTimeS: 12, dampedS: 131 },
      // struck again and again without a rest for more than two windows,
      ...Array.from({ length: 18 }, (_, i) => ({
        strikeS: 140 + 17 * i,
        amplitude: 0.02 + 0.004 * (i % 3),
        decayTimeS: 9,
      })),
      // and a tone that goes on for longer than a window, struck once.
      { strikeS: 450, amplitude: 0.03, decayTimeS: 100, dampedS: 640 },
      { strikeS: 650, amplitude: 0.03, decayTimeS: 8 },
    ];
    const { series, soundings } = heard(forks, 670);
    expect(soundings).toHaveLength(22);
    const found = seriesSoundings(new MovingView(series), 0);
    expect(found.map(({ ended }) => ended)).toEqual(soundings.map(({ ended }) => ended));
    const edges = (spans: typeof found): number[] => spans.flatMap(({ from, to }) => [from, to]);
    edges(found).forEach((edge, i) => expect(edge).toBe(edges(soundings)[i]));
  });

  it('are none in noise and in silence', () => {
    expect(heard([], 30).soundings).toEqual([]);
    expect(heard([], 5, 0).soundings).toEqual([]);
  });
});

describe('decay time', () => {
  it.each([5, 12, 30])('of a clean fork is right within 0.5 %%: %d s', (decayS) => {
    const { series, soundings } = heard(
      [{ strikeS: 1, amplitude: 0.03, decayTimeS: decayS, dampedS: 13 }],
      15,
    );
    const span = soundings[0];
    if (span === undefined) throw new Error('no sounding');
    expect(Math.abs((decayTimeS(series.segment(span.from, span.to)) ?? NaN) / decayS - 1)).toBeLessThan(
      0.005,
    );
  });

  it('is null for a sounding of a second', () => {
    const { series, soundings } = heard([{ strikeS: 1, amplitude: 0.03, decayTimeS: 5, dampedS: 2 }], 4);
    const span = soundings[0];
    if (span === undefined) throw new Error('no sounding');
    expect(decayTimeS(series.segment(span.from, span.to))).toBeNull();
  });
});

describe('frequency of a sounding', () => {
  it('comes from its first 60 s, however long a tone goes on: an hour must not cost the square of its length', () => {
    const { series } = heard([{ strikeS: 0, amplitude: 0.03, decayTimeS: 200 }], 90);
    const long = { from: 0, to: series.length, ended: false };
    // The first 0.15 s and the last 0.1 s of a sounding don't count.
    const minute = { ...long, to: Math.round(60.25 * series.rateHz) };
    const frequencyOf = (span: typeof long) =>
      soundingFrequency(series, span, new FrequencyEstimator(2), 1e-8);
    const frequency = frequencyOf(long);
    expect(Math.abs(frequency?.offsetHz ?? NaN)).toBeLessThan(1e-3);
    expect(frequency).toEqual(frequencyOf(minute));
    expect(frequency).not.toEqual(frequencyOf({ ...long, to: Math.round(50 * series.rateHz) }));
  });
});

describe('frequencies of several soundings together', () => {
  it('weigh by their uncertainties, and scatter beyond these widens the result', () => {
    const agree = combineFrequencies([
      { offsetHz: 0.1, standardUncertaintyHz: 0.01 },
      { offsetHz: 0.1, standardUncertaintyHz: 0.01 },
    ]);
    // 0.01 / √2.
    expect(agree?.standardUncertaintyHz).toBeCloseTo(0.00707, 5);
    const differ = combineFrequencies([
      { offsetHz: 0, standardUncertaintyHz: 0.01 },
      { offsetHz: 0.1, standardUncertaintyHz: 0.01 },
    ]);
    // χ² = 2 · 5² = 50 with one degree of freedom: √50 times wider.
    expect(differ?.offsetHz).toBeCloseTo(0.05, 9);
    expect(differ?.standardUncertaintyHz).toBeCloseTo(0.00707 * Math.sqrt(50), 4);
    expect(combineFrequencies([])).toBeNull();
  });
});
