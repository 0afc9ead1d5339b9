import FFT from 'fft.js';
import Meyda from 'meyda';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import type { SampleBlock } from '../../../src/capture/soundSource.ts';
import { followingTools } from '../../../src/session/hearing/followingTools.ts';
import type { FollowingTools } from '../../../src/session/hearing/listeningOptions.ts';
import { Listening } from '../../../src/session/hearing/listening.ts';
import { collectorWork } from './collector.ts';
import type { CollectorWork } from './collector.ts';
import { timeSideBySide } from './sideBySide.ts';

const SAMPLE_RATE_HZ = 48_000;
const DURATION_S = 20;
const BLOCK = 2048;
const HOP = 1024;
const SPECTRUM = 4096;
const FORK_HZ = 512;
const TUBE = { frequencyHz: FORK_HZ, ends: 'closed', diameterM: 0.035 } as const;
const ROUNDS = 7;
/** Listens in a round of the collector's, 100 s of sound, and rounds: the more, the likelier is one that nothing disturbed. */
const LISTENS = 5;
const COLLECTOR_ROUNDS = 21;

export interface SignalPathRow {
  readonly name: string;
  /** Seconds of sound worked through in one second. */
  readonly realTimeFactor: number;
  /** Its time over that of the live path. */
  readonly timesLivePath: number;
}

export interface SignalPathResult {
  readonly rows: readonly SignalPathRow[];
  /** On the live path, a column followed. */
  readonly collector: CollectorWork;
}

/** Practice column amid talk: a fork struck, a slide past two resonances. */
function sound(): Float32Array {
  const column = new PracticeColumn({}, 7, SAMPLE_RATE_HZ);
  column.setNoise('talk');
  column.setSlideSpeed(0.03);
  column.strike();
  column.slideTo(0.6);
  return column.render(DURATION_S * SAMPLE_RATE_HZ);
}

function blocksOf(samples: Float32Array): SampleBlock[] {
  return Array.from({ length: Math.ceil(samples.length / BLOCK) }, (_, i) => ({
    samples: samples.subarray(i * BLOCK, (i + 1) * BLOCK),
    startFrame: i * BLOCK,
    discontinuity: false,
  }));
}

function listen(blocks: readonly SampleBlock[], tools: FollowingTools): void {
  const listening = newListening(tools);
  for (const block of blocks) listening.push(block);
}

const newListening = (tools: FollowingTools): Listening =>
  new Listening({ sampleRateHz: SAMPLE_RATE_HZ, fork: { nominalHz: FORK_HZ, toleranceHz: 2.5 }, ...tools });

function meydaFrames(samples: Float32Array): void {
  Meyda.bufferSize = HOP;
  Meyda.sampleRate = SAMPLE_RATE_HZ;
  for (let i = 0; i + HOP <= samples.length; i += HOP) {
    Meyda.extract(['rms', 'powerSpectrum'], samples.subarray(i, i + HOP));
  }
}

function spectra(samples: Float32Array): void {
  const fft = new FFT(SPECTRUM);
  const frame = new Float64Array(SPECTRUM);
  const out = new Float64Array(2 * SPECTRUM);
  for (let i = 0; i + SPECTRUM <= samples.length; i += HOP) {
    for (let k = 0; k < SPECTRUM; k += 1) frame[k] = samples[i + k];
    fft.realTransform(out, frame);
  }
}

/** @see Goertzel 1958, Am. Math. Mon. 65, 34 */
function goertzel(samples: Float32Array): number {
  const c = 2 * Math.cos((2 * Math.PI * FORK_HZ) / SAMPLE_RATE_HZ);
  let total = 0;
  for (let start = 0; start + HOP <= samples.length; start += HOP) {
    let [s1, s2] = [0, 0];
    for (let i = start; i < start + HOP; i += 1) {
      const s = samples[i] + c * s1 - s2;
      s2 = s1;
      s1 = s;
    }
    total += s1 * s1 + s2 * s2 - c * s1 * s2;
  }
  return total;
}

/** What one second of 48 kHz sound costs the live path, beside simpler tools on the same sound. */
export async function benchSignalPath(): Promise<SignalPathResult> {
  const samples = sound();
  const blocks = blocksOf(samples);
  const following = followingTools(() => TUBE);
  const contestants = [
    { name: 'the live path', run: () => listen(blocks, {}) },
    { name: 'the live path, a column followed', run: () => listen(blocks, following) },
    { name: 'Meyda rms + powerSpectrum, hop 1024', run: () => meydaFrames(samples) },
    { name: 'fft.js 4096-point spectrum, hop 1024', run: () => spectra(samples) },
    { name: 'Goertzel, sample by sample', run: () => void goertzel(samples) },
  ];
  const times = timeSideBySide(contestants, ROUNDS);
  const own = times[0] ?? NaN;
  const collector = await collectorWork(() => {
    for (let i = 0; i < LISTENS; i += 1) listen(blocks, following);
  }, COLLECTOR_ROUNDS);
  return {
    rows: contestants.map(({ name }, i) => ({
      name,
      realTimeFactor: (1000 * DURATION_S) / (times[i] ?? NaN),
      timesLivePath: (times[i] ?? NaN) / own,
    })),
    collector,
  };
}
