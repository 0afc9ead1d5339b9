import FFT from 'fft.js';
import { PitchDetector } from 'pitchy';
import { FrequencyEstimator } from '../../../src/tone/frequencyEstimator.ts';
import { toneSeriesOf } from '../../support/hear.ts';
import { toneInNoise } from '../../support/tones.ts';
import { Random } from '../detector/random.ts';
import { median } from './sideBySide.ts';

const SAMPLE_RATE_HZ = 8000;
const FORK_HZ = 512;
const AMPLITUDE = 0.1;
const DECAY_S = 10;
const DURATION_S = 2;
const PAD_S = 0.1;
const TRIALS = 60;
/** Noise bandwidth of the narrow stream, in which signal-to-noise is counted, Hz. */
const BAND_HZ = 44.4;
const FRAME = 2048;
const LONG = 16_384;

export interface FrequencyRow {
  /** At the tone's beginning, in 44 Hz around it, dB. */
  readonly signalToNoiseDb: number;
  /** Root of the Cramér–Rao bound, mHz. */
  readonly boundMilliHz: number;
  /** Root mean square error over the root of the bound. */
  readonly timesBound: number;
  /** Median errors, mHz. */
  readonly ownMilliHz: number;
  readonly mcLeodMilliHz: number;
  readonly peakMilliHz: number;
}

/** Error of the fork's frequency on noisy dying tones, beside a McLeod pitch detector and an interpolated spectrum's peak. */
export function benchFrequency(): FrequencyRow[] {
  return [0, 10, 20, 30, 40].map(row);
}

function row(signalToNoiseDb: number): FrequencyRow {
  const noiseRms = AMPLITUDE * Math.sqrt(SAMPLE_RATE_HZ / (4 * BAND_HZ * 10 ** (signalToNoiseDb / 10)));
  const random = new Random(100 + signalToNoiseDb);
  const own: number[] = [];
  const mcLeod: number[] = [];
  const peak: number[] = [];
  for (let trial = 0; trial < TRIALS; trial += 1) {
    const offsetHz = random.uniform(-0.5, 0.5);
    const samples = toneInNoise(
      {
        sampleRateHz: SAMPLE_RATE_HZ,
        durationS: DURATION_S + 2 * PAD_S,
        frequencyHz: FORK_HZ + offsetHz,
        amplitude: AMPLITUDE * Math.exp(PAD_S / DECAY_S),
        noiseRms,
        phaseRad: random.uniform(0, 2 * Math.PI),
        decayTimeS: DECAY_S,
      },
      1000 * trial + signalToNoiseDb,
    );
    const heard = samples.subarray(PAD_S * SAMPLE_RATE_HZ, (PAD_S + DURATION_S) * SAMPLE_RATE_HZ);
    own.push(ownHz(samples, noiseRms) - offsetHz);
    mcLeod.push(mcLeodHz(heard) - FORK_HZ - offsetHz);
    peak.push(peakHz(heard) - FORK_HZ - offsetHz);
  }
  const bound = boundHz(noiseRms);
  const rms = Math.sqrt(own.reduce((sum, error) => sum + error * error, 0) / TRIALS);
  const milli = (errors: readonly number[]): number => 1000 * median(errors.map(Math.abs));
  return {
    signalToNoiseDb,
    boundMilliHz: 1000 * bound,
    timesBound: rms / bound,
    ownMilliHz: milli(own),
    mcLeodMilliHz: milli(mcLeod),
    peakMilliHz: milli(peak),
  };
}

function ownHz(samples: Float32Array, noiseRms: number): number {
  const series = toneSeriesOf(samples, SAMPLE_RATE_HZ, FORK_HZ);
  const from = Math.round(PAD_S * series.rateHz);
  const to = from + Math.round(DURATION_S * series.rateHz);
  const noise = (4 * noiseRms ** 2 * series.bandwidthHz) / SAMPLE_RATE_HZ;
  return new FrequencyEstimator(1.5).estimate(series.segment(from, to), noise)?.offsetHz ?? NaN;
}

/** Median over the sound's frames. @see McLeod & Wyvill 2005, A smarter way to find pitch, ICMC */
function mcLeodHz(samples: Float32Array): number {
  const detector = PitchDetector.forFloat32Array(FRAME);
  const found: number[] = [];
  for (let i = 0; i + FRAME <= samples.length; i += FRAME / 2) {
    found.push(detector.findPitch(samples.subarray(i, i + FRAME), SAMPLE_RATE_HZ)[0]);
  }
  return median(found);
}

/** Highest bin of one Hann-windowed spectrum of the whole sound, with a parabola through three logarithms. */
function peakHz(samples: Float32Array): number {
  const fft = new FFT(LONG);
  const frame = Array.from({ length: LONG }, (_, i) => {
    const x = samples[i];
    return x === undefined ? 0 : x * (0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / samples.length));
  });
  const out = fft.createComplexArray() as number[];
  fft.realTransform(out, frame);
  const at = (bin: number): number => Math.log(out[2 * bin] ** 2 + out[2 * bin + 1] ** 2 + 1e-30);
  let best = 1;
  for (let bin = 1; bin < LONG / 2 - 1; bin += 1) if (at(bin) > at(best)) best = bin;
  const shift = (0.5 * (at(best - 1) - at(best + 1))) / (at(best - 1) - 2 * at(best) + at(best + 1));
  return ((best + shift) * SAMPLE_RATE_HZ) / LONG;
}

/** Rife & Boorstyn 1974, IEEE Trans. Inf. Theory 20, 591, for a tone that dies with a known time constant. */
function boundHz(noiseRms: number): number {
  let [w0, w1, w2] = [0, 0, 0];
  for (let i = 0; i < DURATION_S * SAMPLE_RATE_HZ; i += 1) {
    const t = i / SAMPLE_RATE_HZ;
    const w = Math.exp((-2 * t) / DECAY_S);
    w0 += w;
    w1 += w * t;
    w2 += w * t * t;
  }
  const eta = AMPLITUDE ** 2 / (2 * noiseRms ** 2);
  return Math.sqrt(1 / ((2 * Math.PI) ** 2 * eta * (w2 - (w1 * w1) / w0)));
}
