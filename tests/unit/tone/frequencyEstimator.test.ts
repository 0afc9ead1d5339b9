import { describe, expect, it } from 'vitest';
import { smoothedPower } from '../../../src/resonance/tonePower.ts';
import { viewOf } from '../../../src/resonance/toneView.ts';
import { FrequencyEstimator } from '../../../src/tone/frequencyEstimator.ts';
import { Random } from '../../bench/detector/random.ts';
import { toneSeriesOf } from '../../support/hear.ts';
import { toneInNoise } from '../../support/tones.ts';

const SAMPLE_RATE_HZ = 8000;
const AMPLITUDE = 0.1;
const PAD_S = 0.1;
const TRIALS = 200;

/** White noise that leaves the tone so many dB above it in the narrow stream's band (44.4 Hz). */
const noiseFor = (snrDb: number): number =>
  AMPLITUDE * Math.sqrt(SAMPLE_RATE_HZ / (4 * 44.4 * 10 ** (snrDb / 10)));

/**
 * Cramér–Rao bound of the frequency of a real tone, A, phase and frequency unknown (Rife & Boorstyn 1974, IEEE Trans.
 * Inf. Theory 20, 591): var f ≥ 12 fs² / [(2π)² η N (N² − 1)], η = A² / 2σ². For a tone that dies with a known time
 * constant the sums over equal weights become sums over e^{−2t/τ}: var f ≥ 1 / [(2π)² η Σ w (t − t̄)²].
 */
function frequencyBound(
  durationS: number,
  noiseRms: number,
  decayTimeS: number,
  { amplitude, sampleRateHz } = { amplitude: AMPLITUDE, sampleRateHz: SAMPLE_RATE_HZ },
): number {
  const eta = amplitude ** 2 / (2 * noiseRms ** 2);
  const count = Math.round(durationS * sampleRateHz);
  if (decayTimeS === Infinity) {
    return (12 * sampleRateHz ** 2) / ((2 * Math.PI) ** 2 * eta * count * (count ** 2 - 1));
  }
  let [w0, w1, w2] = [0, 0, 0];
  for (let i = 0; i < count; i += 1) {
    const t = i / sampleRateHz;
    const w = Math.exp((-2 * t) / decayTimeS);
    w0 += w;
    w1 += w * t;
    w2 += w * t * t;
  }
  return 1 / ((2 * Math.PI) ** 2 * eta * (w2 - (w1 * w1) / w0));
}

describe('Cramér–Rao bounds (Rife & Boorstyn 1974)', () => {
  // Evaluated with another numerical library from the formula in the paper.
  it.each([
    [Infinity, 10.07],
    [10, 10.32],
    [2, 11.42],
  ])('at A = σ = 0.01, 48 kHz, 0.5 s, decay time %d s is %d mHz', (decayTimeS, boundMHz) => {
    const variance = frequencyBound(0.5, 0.01, decayTimeS, { amplitude: 0.01, sampleRateHz: 48_000 });
    expect(1000 * Math.sqrt(variance)).toBeCloseTo(boundMHz, 2);
  });

  it.each([
    [0.5, 20, Infinity],
    [0.5, 20, 2],
    [2, 10, Infinity],
    [2, 20, Infinity],
    [2, 20, 10],
    [2, 30, 5],
    [2, 20, 2],
    [4, 20, 10],
  ])(
    'frequency over %d s at %d dB in band, decay time %d s: variance within 1.5 times the bound, no bias, honest uncertainty',
    (durationS, snrDb, decayTimeS) => {
      const random = new Random(Math.round(1000 * durationS) + snrDb);
      const noiseRms = noiseFor(snrDb);
      const bound = frequencyBound(durationS, noiseRms, decayTimeS);
      let [sum, squares, stated] = [0, 0, 0];
      for (let trial = 0; trial < TRIALS; trial += 1) {
        const offsetHz = random.uniform(-0.5, 0.5);
        const samples = toneInNoise(
          {
            sampleRateHz: SAMPLE_RATE_HZ,
            durationS: durationS + 2 * PAD_S,
            frequencyHz: 512 + offsetHz,
            // The window begins PAD_S late: there the amplitude is AMPLITUDE.
            amplitude: AMPLITUDE * Math.exp(PAD_S / decayTimeS),
            noiseRms,
            phaseRad: random.uniform(0, 2 * Math.PI),
            decayTimeS,
          },
          1000 * trial + snrDb,
        );
        const series = toneSeriesOf(samples, SAMPLE_RATE_HZ, 512);
        const from = Math.round(PAD_S * series.rateHz);
        const to = from + Math.round(durationS * series.rateHz);
        const noise = (4 * noiseRms ** 2 * series.bandwidthHz) / SAMPLE_RATE_HZ;
        const estimate = new FrequencyEstimator(1.5).estimate(series.segment(from, to), noise);
        if (estimate === null) throw new Error('no estimate');
        sum += estimate.offsetHz - offsetHz;
        squares += (estimate.offsetHz - offsetHz) ** 2;
        stated += estimate.standardUncertaintyHz ** 2;
      }
      const variance = squares / TRIALS;
      expect(variance / bound).toBeLessThan(1.5);
      // Below the bound by more than chance (200 trials: 10 %; the filter's reach adds 5 % of duration) would mean a
      // mistaken bound.
      expect(variance / bound).toBeGreaterThan(0.6);
      expect(Math.abs(sum / TRIALS)).toBeLessThan(3.5 * Math.sqrt(variance / TRIALS));
      expect(Math.sqrt(stated / squares)).toBeGreaterThan(0.75);
      expect(Math.sqrt(stated / squares)).toBeLessThan(1.35);
    },
  );

  it.each([Infinity, 10, 2])(
    'amplitude from 0.2 s at 20 dB in band, decay time %d s: variance within 1.2 times 2 σ²/N',
    (decayTimeS) => {
      const noiseRms = noiseFor(20);
      const half = 10;
      let [squares, bound, truth] = [0, 0, 0];
      for (let trial = 0; trial < TRIALS; trial += 1) {
        const samples = toneInNoise(
          {
            sampleRateHz: SAMPLE_RATE_HZ,
            durationS: 0.6,
            frequencyHz: 512,
            amplitude: AMPLITUDE,
            noiseRms,
            phaseRad: trial,
            decayTimeS,
          },
          7000 + trial,
        );
        const series = toneSeriesOf(samples, SAMPLE_RATE_HZ, 512);
        const view = viewOf(series, 0, series.length, 0);
        const middle = Math.round(0.3 * view.rateHz);
        const estimate = Math.sqrt(Math.max(0, smoothedPower(view, middle, half)));
        // The mean of a dying amplitude over the window, by hand.
        truth = 0;
        for (let k = middle - half; k <= middle + half; k += 1) {
          truth += (AMPLITUDE * Math.exp(-k / view.rateHz / decayTimeS)) / (2 * half + 1);
        }
        squares += (estimate - truth) ** 2;
        bound = (2 * noiseRms ** 2) / (((2 * half + 1) / view.rateHz) * SAMPLE_RATE_HZ);
      }
      expect(truth).toBeGreaterThan(0.08);
      expect(squares / TRIALS / bound).toBeLessThan(1.2);
      expect(squares / TRIALS / bound).toBeGreaterThan(0.7);
    },
  );
});

describe('frequency of a fork that goes to and fro', () => {
  it('is the fork’s, not a modulation sideband of its coming and going, though the phase turns by 160° at each', () => {
    const rateHz = 100;
    const length = 1200;
    const offsetHz = 0.21;
    const re = new Float64Array(length);
    const im = new Float64Array(length);
    const random = new Random(4);
    for (let k = 0; k < length; k += 1) {
      const isNear = Math.floor(k / 130) % 2 === 1;
      const angle = (2 * Math.PI * offsetHz * k) / rateHz + (isNear ? (160 * Math.PI) / 180 : 0);
      const size = isNear ? 3 : 1;
      re[k] = size * Math.cos(angle) + 0.05 * random.gauss();
      im[k] = size * Math.sin(angle) + 0.05 * random.gauss();
    }
    const estimate = new FrequencyEstimator(1.5).estimate({ re, im, from: 0, to: length, rateHz }, 0.005);
    expect(Math.abs((estimate?.offsetHz ?? NaN) - offsetHz)).toBeLessThan(0.03);
  });

  it('is null for too short a stretch and for nothing but zeros', () => {
    const zeros = new Float64Array(400);
    const estimator = new FrequencyEstimator(1.5);
    const silence = { re: zeros, im: zeros, from: 0, to: 400, rateHz: 100 };
    expect(estimator.estimate(silence, 1e-6)).toBeNull();
    const ones = zeros.map(() => 1);
    expect(estimator.estimate({ ...silence, re: ones, to: 29 }, 1e-6)).toBeNull();
  });
});
