import { parseArgs } from 'node:util';
import type { SoundListener, SoundSource } from '../../src/capture/soundSource.ts';
import { Session } from '../../src/session/session.ts';
import { followingTools } from '../../src/session/hearing/followingTools.ts';
import { Listening } from '../../src/session/hearing/listening.ts';
import { slideRecording } from '../support/slideRecording.ts';
import { freeHold } from '../unit/notebook/memoryStore.ts';
import { pinkNoise } from './detector/noises.ts';
import { Random } from './detector/random.ts';
import { talk } from './detector/talk.ts';
import { VOICES_OPTION, voicesOrEnd } from './detector/voices/chooseVoices.ts';

/**
 * Hours of listening, as fast as the machine can: a programme of strikes, slides, talk and quiet goes round and round,
 * with faults in between. Prints memory, flags and their times, every ten minutes of sound.
 * Run with `npm run soak` (Node needs --expose-gc).
 */
const { values } = parseArgs({
  options: { hours: { type: 'string', default: '2' }, voices: VOICES_OPTION },
});
const hours = Number(values.hours);
const gc = (globalThis as { gc?: () => void }).gc;
if (!(hours > 0 && hours <= 24) || gc === undefined) {
  console.error(
    'Usage: node --expose-gc --import tsx/esm tests/bench/soak.ts [--hours 0..24] [--voices generated|recorded|synthesised]',
  );
  process.exit(2);
}
const voices = voicesOrEnd(values.voices);
console.log(`Voices: ${voices.kind}.`);

const RATE_HZ = 48_000;
const BLOCK = 2048;
const REPORT_S = 600;
const WARM_UP_S = 1200;
/** Limits of the requirement: memory growth, and how far times may wander. */
const MOST_GROWTH_MB = 5;
const MOST_DRIFT_S = 0.05;
/** A flag is right within this of a passage, s. */
const NEAR_S = 0.5;

/** One round: four slides with their true passages, each followed by half a minute of room and talk. */
function makeProgramme(): { samples: Float32Array; passagesS: number[] } {
  const parts: Float32Array[] = [];
  const passagesS: number[] = [];
  let at = 0;
  const add = (samples: Float32Array): void => {
    parts.push(samples);
    at += samples.length;
  };
  for (const seed of [3, 5, 7, 9]) {
    const slide = slideRecording({ forkHz: 512, closed: true, seed, talkDb: -6, voices });
    passagesS.push(...slide.passages.map((passage) => at / RATE_HZ + passage.timeS));
    add(slide.samples);
    const random = new Random(seed);
    const rest = pinkNoise(random.branch('room'), 30 * RATE_HZ, RATE_HZ).map((value) => 0.001 * value);
    talk(random.branch('talk'), rest.length, RATE_HZ, 2, voices).forEach((value, i) => {
      rest[i] = (rest[i] ?? 0) + 0.01 * value;
    });
    add(rest);
  }
  const samples = new Float32Array(at);
  parts.reduce((to, part) => (samples.set(part, to), to + part.length), 0);
  return { samples, passagesS };
}

/** A microphone that a loop plays. */
class LoopSource implements SoundSource {
  readonly kind = 'microphone';
  listener: SoundListener | null = null;

  start(listener: SoundListener): Promise<void> {
    this.listener = listener;
    this.run();
    return Promise.resolve();
  }

  stop(): void {
    this.listener = null;
  }

  run(): void {
    const off = { echoCancellation: 'off', noiseSuppression: 'off', autoGainControl: 'off' } as const;
    const settings = { deviceLabel: null, channelCount: 1, ...off };
    this.listener?.onState({ kind: 'running', sampleRateHz: RATE_HZ, settings });
  }

  pause(): void {
    this.listener?.onState({ kind: 'interrupted', hold: 'muted' });
  }
}

interface Stretch {
  readonly truthS: number[];
  readonly flagsS: number[];
}

function score({ truthS, flagsS }: Stretch): {
  found: number;
  of: number;
  elsewhere: number;
  offsetS: number;
} {
  const offsets = truthS.flatMap((timeS) => {
    const near = flagsS.map((flagS) => flagS - timeS).filter((offS) => Math.abs(offS) < NEAR_S);
    return near.length === 0
      ? []
      : [near.reduce((best, offS) => (Math.abs(offS) < Math.abs(best) ? offS : best))];
  });
  const elsewhere = flagsS.filter((flagS) =>
    truthS.every((timeS) => Math.abs(flagS - timeS) >= NEAR_S),
  ).length;
  offsets.sort((a, b) => a - b);
  return { found: offsets.length, of: truthS.length, elsewhere, offsetS: offsets[offsets.length >> 1] ?? 0 };
}

const programme = makeProgramme();
let ids = 0;
const session = new Session({
  now: () => '2026-03-02T09:00:00.000Z',
  newId: () => `id-${(ids += 1)}`,
  openStore: () => Promise.reject(new Error('no storage here')),
  createHold: () => freeHold,
  tabMemory: { get: () => null, set: () => undefined },
  createListening: ({ tube, ...order }) => new Listening({ ...order, ...followingTools(tube) }),
  reasonOf: () => '',
  writeMended: () => '',
  solve: () => ({ places: [] }),
  draftPlace: { get: () => null, set: () => undefined },
  onFault: (error) => {
    throw error;
  },
});
const source = new LoopSource();
await session.hearing.start(source);

const stretches: Stretch[] = [];
/** Mean of each report's stretch: what is kept goes up and down as one listening relieves another. */
const memoryMb: number[] = [];
let samplesMb: number[] = [];
const beganMs = performance.now();
let frame = 0;
let lost = false;
let faults = 0;
let marksSeen = 0;
/** Truth that a fault cut is neither to be found nor to be missed. */
const cutS: number[] = [];
const totalFrames = hours * 3600 * RATE_HZ;
const length = programme.samples.length;
while (frame < totalFrames) {
  const at = frame % length;
  const samples = programme.samples.slice(at, Math.min(length, at + BLOCK));
  source.listener?.onBlock({ samples, startFrame: frame, discontinuity: lost });
  lost = false;
  const beforeS = frame / RATE_HZ;
  frame += samples.length;
  const nowS = frame / RATE_HZ;
  // About every two minutes a fault: lost frames, or a pause of some seconds. Odd times, so that all parts are hit.
  if (Math.floor(nowS / 127) > Math.floor(beforeS / 127)) {
    faults += 1;
    const lostS = faults % 2 === 0 ? 0.25 : 4;
    if (faults % 2 === 1) source.pause();
    frame += Math.round(lostS * RATE_HZ);
    lost = true;
    cutS.push(nowS, nowS + lostS);
    if (faults % 2 === 1) source.run();
  }
  if (Math.floor(frame / RATE_HZ / 60) > Math.floor(beforeS / 60)) samplesMb.push(usedMb());
  if (Math.floor(frame / RATE_HZ / REPORT_S) > Math.floor(beforeS / REPORT_S)) report(frame / RATE_HZ);
}
source.listener?.onState({ kind: 'interrupted', hold: 'suspended' });
process.exitCode = verdict() ? 0 : 1;

function report(nowS: number): void {
  memoryMb.push(samplesMb.reduce((sum, mb) => sum + mb, 0) / Math.max(1, samplesMb.length));
  samplesMb = [];
  const fromS = nowS - REPORT_S;
  const rounds = Math.ceil(nowS / (length / RATE_HZ));
  const truthS = Array.from({ length: rounds }, (_, round) => (round * length) / RATE_HZ)
    .flatMap((startS) => programme.passagesS.map((timeS) => startS + timeS))
    // A flag comes up to two seconds late; a fault within a second voids the passage.
    .filter((timeS) => timeS > fromS && timeS < nowS - 3 && cutS.every((s) => Math.abs(s - timeS) > 2));
  const marks = session.experiment.marks;
  const flagsS = marks
    .slice(marksSeen)
    .map((mark) => mark.evidence?.timeS ?? -1)
    .filter((timeS) => cutS.every((s) => Math.abs(s - timeS) > 2));
  marksSeen = marks.length;
  const stretch = { truthS, flagsS };
  stretches.push(stretch);
  const { found, of, elsewhere, offsetS } = score(stretch);
  const speed = nowS / ((performance.now() - beganMs) / 1000);
  console.log(
    `${(nowS / 60).toFixed(0).padStart(4)} min  ${memoryMb.at(-1)?.toFixed(2)} MB  flags ${found} of ${of}, elsewhere ${elsewhere}, median offset ${(1000 * offsetS).toFixed(0)} ms  (${speed.toFixed(0)} x real time)`,
  );
}

function usedMb(): number {
  gc?.();
  const { heapUsed, arrayBuffers } = process.memoryUsage();
  return (heapUsed + arrayBuffers) / 2 ** 20;
}

function verdict(): boolean {
  const [first, last] = [stretches[0], stretches.at(-1)].map((one) =>
    score(one ?? { truthS: [], flagsS: [] }),
  );
  const warm = memoryMb[Math.min(memoryMb.length - 1, WARM_UP_S / REPORT_S - 1)] ?? 0;
  const growthMb = (memoryMb.at(-1) ?? 0) - warm;
  const driftS = (last?.offsetS ?? 0) - (first?.offsetS ?? 0);
  const share = (one = { found: 0, of: 1 }): number => one.found / Math.max(1, one.of);
  console.log(
    `${hours} h, ${faults} faults, ${session.experiment.marks.length} marks: mean memory of ten minutes grew by ${growthMb.toFixed(2)} MB after ${WARM_UP_S / 60} min (limit ${MOST_GROWTH_MB}), times drifted by ${(1000 * driftS).toFixed(0)} ms (limit ${1000 * MOST_DRIFT_S}), flags found ${(100 * share(first)).toFixed(0)} % first, ${(100 * share(last)).toFixed(0)} % last.`,
  );
  return growthMb <= MOST_GROWTH_MB && Math.abs(driftS) <= MOST_DRIFT_S && share(last) >= share(first) - 0.1;
}
