import FFT from 'fft.js';
import Meyda from 'meyda';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import type { SampleBlock } from '../../../src/capture/soundSource.ts';
import { Listening } from '../../../src/session/listening.ts';
import type { ListeningUpdate } from '../../../src/session/listeningTypes.ts';
import { allocatedBytes, heapBytes } from './allocation.ts';
import { median, timeSideBySide } from './sideBySide.ts';

const SAMPLE_RATE_HZ = 48_000;
const DURATION_S = 20;
const BLOCK = 2048;
const HOP = 1024;
const SPECTRUM = 4096;
const FORK_HZ = 512;
const ROUNDS = 7;
/** Twenty minutes before litter is measured: till then code that runs a few times a second isn't compiled and boxes numbers. */
const WARM_LISTENS = 60;
/** What is handed on is told by what holding it takes: of so much sound that the heap's own changes don't show. */
const HELD_ROUNDS = 60;
const NO_UPDATE: ListeningUpdate = {
  points: [],
  resonances: [],
  soundings: [],
  warnings: [],
  guidance: null,
};

export interface SignalPathRow {
  readonly name: string;
  /** Seconds of sound worked through in one second. */
  readonly realTimeFactor: number;
  /** Its time over that of the live path. */
  readonly timesLivePath: number;
}

export interface SignalPathResult {
  readonly rows: readonly SignalPathRow[];
  /** By the live path for itself: what it hands on (points, guidance, soundings, resonances) is not counted. */
  readonly allocatedBytesPerS: number;
  /** In what it hands on. */
  readonly handedOnBytesPerS: number;
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

function blocksOf(samples: Float32Array, startFrame = 0): SampleBlock[] {
  return Array.from({ length: Math.ceil(samples.length / BLOCK) }, (_, i) => ({
    samples: samples.subarray(i * BLOCK, (i + 1) * BLOCK),
    startFrame: startFrame + i * BLOCK,
    discontinuity: false,
  }));
}

/** @param updates  as many places as blocks: what each gave */
function listen(
  blocks: readonly SampleBlock[],
  listening = newListening(),
  updates: ListeningUpdate[] = [],
): void {
  for (let i = 0; i < blocks.length; i += 1) updates[i] = listening.push(blocks[i]);
}

/** Bytes a second of sound that a listening allocates after some minutes: for itself, and in what it hands on. */
async function allocatedPerS(samples: Float32Array): Promise<{ ownBytes: number; handedOnBytes: number }> {
  const listening = newListening();
  let frame = 0;
  const next = (): SampleBlock[] => {
    frame += samples.length;
    return blocksOf(samples, frame - samples.length);
  };
  for (let i = 0; i < WARM_LISTENS; i += 1) listen(next(), listening);
  const all: number[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    const blocks = next();
    const updates = Array.from(blocks, () => NO_UPDATE);
    const measuring = await allocatedBytes(() => undefined);
    all.push((await allocatedBytes(() => listen(blocks, listening, updates))) - measuring);
  }
  const handedOn: ListeningUpdate[][] = [];
  for (let round = 0; round < HELD_ROUNDS; round += 1) {
    const blocks = next();
    const updates = Array.from(blocks, () => NO_UPDATE);
    listen(blocks, listening, updates);
    handedOn.push(updates);
  }
  // What was handed on is still held: let go of it, and see what that frees beside the lists themselves.
  const lists = handedOn.map(({ length }) => Array.from({ length }, () => NO_UPDATE));
  const held = await heapBytes();
  for (const [i, list] of lists.entries()) handedOn[i] = list;
  const handedOnBytes = (held - (await heapBytes())) / HELD_ROUNDS / DURATION_S;
  return { ownBytes: median(all) / DURATION_S - handedOnBytes, handedOnBytes };
}

const newListening = (): Listening =>
  new Listening({ sampleRateHz: SAMPLE_RATE_HZ, fork: { nominalHz: FORK_HZ, toleranceHz: 2.5 } });

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
  const contestants = [
    { name: 'the whole live path', run: () => listen(blocks) },
    { name: 'Meyda rms + powerSpectrum, hop 1024', run: () => meydaFrames(samples) },
    { name: 'fft.js 4096-point spectrum, hop 1024', run: () => spectra(samples) },
    { name: 'Goertzel, sample by sample', run: () => void goertzel(samples) },
  ];
  const times = timeSideBySide(contestants, ROUNDS);
  const own = times[0] ?? NaN;
  const { ownBytes, handedOnBytes } = await allocatedPerS(samples);
  return {
    rows: contestants.map(({ name }, i) => ({
      name,
      realTimeFactor: (1000 * DURATION_S) / (times[i] ?? NaN),
      timesLivePath: (times[i] ?? NaN) / own,
    })),
    allocatedBytesPerS: ownBytes,
    handedOnBytesPerS: handedOnBytes,
  };
}
