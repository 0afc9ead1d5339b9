import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { SignalWatch } from '../../../src/capture/signal/signalWatch.ts';
import type { SignalFindings } from '../../../src/capture/signal/signalWatch.ts';
import { LevelRoomCorrelation } from '../../../src/room/levelRoomCorrelation.ts';
import { judgeGain } from '../../../src/session/hearing/gainCheck.ts';
import type { GainAnswer } from '../../../src/session/hearing/gainCheck.ts';
import { Listening } from '../../../src/session/hearing/listening.ts';
import type { LevelPoint, Resonance } from '../../../src/session/hearing/listeningTypes.ts';
import { bandLimited } from '../../support/bandLimited.ts';
import { Random } from '../detector/random.ts';
import { VOICES_OPTION, voicesOrEnd } from '../detector/voices/chooseVoices.ts';
import { recordScenes } from './recordScenes.ts';
import type { RecordedScene } from './recordScenes.ts';
import { makeScene, SCENE_RATE_HZ } from './scene.ts';
import type { SceneKind } from './scene.ts';

const USAGE = `Usage: npm run bench:capture -- [--scenes COUNT] [--cache FOLDER] [--at-once 1..8] [--list]
       [--voices generated|recorded|synthesised]
Scenes are played to a real Chromium as its microphone and recorded with its processing on and off; the cache
(by default in the system's folder for temporary files, 4 MB a scene) keeps the recordings for the next run.`;

/** Seeds of the reporting scenes; those that limits were set on lie below. */
const FIRST_SEED = 1001;

/** A flag counts within this of a passage, s; a recording begins late by at most so much, s. */
const NEAR_S = 0.35;
const LATEST_S = 2;

const { values } = parseArgs({
  options: {
    scenes: { type: 'string', default: '112' },
    cache: { type: 'string', default: join(tmpdir(), 'capture-bench') },
    'at-once': { type: 'string', default: '4' },
    voices: VOICES_OPTION,
    list: { type: 'boolean', default: false },
    help: { type: 'boolean', default: false },
  },
});
const scenes = Number(values.scenes);
const atOnce = Number(values['at-once']);
if (values.help || !(scenes >= 2 && scenes <= 1000) || !(atOnce >= 1 && atOnce <= 8)) {
  console.error(USAGE);
  process.exit(2);
}

const voices = voicesOrEnd(values.voices);
const orders = Array.from({ length: scenes }, (_, i): { kind: SceneKind; seed: number } => ({
  kind: i % 2 === 0 ? 'fixed' : 'slide',
  seed: FIRST_SEED + i,
}));
const recorded = await recordScenes(orders, values.cache, atOnce, voices);
const judged = recorded.map((one) => ({ ...one, ...judge(one) }));

printProcessing();
printGain();
printFaults();
printFlags();

interface Judgement {
  readonly findings: SignalFindings;
  readonly gain: GainAnswer | null;
  readonly againstRoom: number | null;
  readonly flags: readonly Resonance[];
}

function judge({ kind, samples, sampleRateHz, forkHz }: RecordedScene): Judgement {
  const findings = findingsOf(samples, sampleRateHz);
  const listening = new Listening({ sampleRateHz, fork: { nominalHz: forkHz, toleranceHz: 2 } });
  const points: LevelPoint[] = [];
  const flags: Resonance[] = [];
  for (let at = 0; at < samples.length; at += 2048) {
    const block = { samples: samples.subarray(at, at + 2048), startFrame: at, discontinuity: false };
    const update = listening.push(block);
    points.push(...update.points);
    flags.push(...update.resonances);
  }
  const last = listening.finish();
  points.push(...last.points);
  flags.push(...last.resonances);
  return {
    findings,
    gain: kind === 'fixed' ? judgeGain(points) : null,
    againstRoom: new LevelRoomCorrelation(listening.series).correlation(),
    flags,
  };
}

function findingsOf(samples: Float32Array, sampleRateHz: number): SignalFindings {
  const watch = new SignalWatch(sampleRateHz);
  watch.push(samples);
  watch.finish();
  return watch.findings;
}

function printProcessing(): void {
  const share = (processing: RecordedScene['processing'], isSo: (one: Judgement) => boolean): string =>
    shareOf(judged.filter((one) => one.processing === processing).map(isSo));
  console.log(
    `Processed or raw, ${scenes} scenes, each recorded with Chromium's defaults and with everything off. Voices: ${voices.kind}.`,
  );
  console.log('                               recognised      raw wrongly accused');
  const line = (name: string, isSo: (one: Judgement) => boolean): void =>
    console.log(
      `${name.padEnd(28)} ${share('defaults', isSo).padStart(14)} ${share('off', isSo).padStart(18)}`,
    );
  line('nothing above 16 kHz', ({ findings }) => findings.edge !== null);
  line('gain check: rewritten', ({ gain }) => gain?.verdict === 'rewritten');
  line('level against room < -0.3', ({ againstRoom }) => (againstRoom ?? 0) < -0.3);
  line('floor fell (not an accusation)', ({ findings }) => findings.floorFallDb !== null);
  line(
    'ACCUSED by the page',
    ({ findings, gain }) => findings.edge !== null || gain?.verdict === 'rewritten',
  );
  if (!values.list) return;
  for (const one of judged) {
    const accused = one.findings.edge !== null || one.gain?.verdict === 'rewritten';
    if (accused === (one.processing === 'defaults')) continue;
    console.log(
      `  wrong: ${one.kind} ${one.seed} ${one.processing}`,
      JSON.stringify([one.findings.edge, one.gain]),
    );
  }
}

function printGain(): void {
  console.log('\nGain check alone (fixed column, one strike, talk):');
  for (const processing of ['defaults', 'off'] as const) {
    const answers = judged.flatMap((one) =>
      one.processing === processing && one.gain !== null ? [one.gain] : [],
    );
    const count = (verdict: GainAnswer['verdict']): number =>
      answers.filter((answer) => answer.verdict === verdict).length;
    const known = answers.flatMap(({ departureDb }) => (departureDb === null ? [] : [departureDb]));
    known.sort((a, b) => a - b);
    const at = (part: number): string => (known[Math.round(part * (known.length - 1))] ?? NaN).toFixed(2);
    console.log(
      `  ${processing === 'off' ? 'raw      ' : 'processed'}: rewritten ${count('rewritten')}, steady ${count('steady')}, can't tell ${count('cannot-tell')} of ${answers.length}; departure ${at(0.05)} / ${at(0.5)} / ${at(0.95)} dB (5, 50, 95 %)`,
    );
  }
}

/** Faults that a program can make on raw scenes as well as a headset, a preamplifier or a busy machine can. */
function printFaults(): void {
  console.log('\nFaults made on the raw scenes themselves (never through the browser):');
  console.log('                               recognised      raw wrongly accused');
  const raw: { samples: Float32Array; random: Random }[] = orders.map(({ kind, seed }) => ({
    samples: makeScene(kind, seed, voices).samples,
    random: new Random(seed + 7),
  }));
  const plain = raw.map(({ samples }) => findingsOf(samples, SCENE_RATE_HZ));
  const line = (
    name: string,
    make: (one: (typeof raw)[number]) => Float32Array,
    isSo: (f: SignalFindings) => boolean,
  ): void =>
    console.log(
      `${name.padEnd(28)} ${shareOf(raw.map((one) => isSo(findingsOf(make(one), SCENE_RATE_HZ)))).padStart(14)} ${shareOf(plain.map(isSo)).padStart(18)}`,
    );
  line(
    'headset, band to 4 kHz',
    ({ samples, random }) => headset(samples, random.uniform(3300, 3900)),
    ({ edge }) => edge?.edgeHz === 4000,
  );
  line(
    'headset, band to 8 kHz',
    ({ samples, random }) => headset(samples, random.uniform(6900, 7700)),
    ({ edge }) => edge?.edgeHz === 8000,
  );
  line('clipped', clipped, ({ clips }) => clips > 0);
  line(
    'cut below full scale',
    ({ samples, random }) => cut(samples, random.uniform(0.15, 0.8)),
    ({ flats }) => flats > 0,
  );
  line('gaps of zeros', gapped, ({ dropouts }) => dropouts > 0);
}

function headset(samples: Float32Array, edgeHz: number): Float32Array {
  return bandLimited(samples, SCENE_RATE_HZ, edgeHz).map((sample) => Math.round(sample * 32_768) / 32_768);
}

/** Turned up until the loudest hundredth of a per cent stands at full scale. */
function clipped({ samples, random }: { samples: Float32Array; random: Random }): Float32Array {
  const sizes = samples.map(Math.abs).sort();
  const limit = sizes[Math.floor(random.uniform(0.99, 0.9999) * sizes.length)] ?? 1;
  return samples.map((sample) => Math.max(-1, Math.min(32_767 / 32_768, sample / limit)));
}

/** The same before a converter that isn't full: crests at a part of full scale. */
function cut(samples: Float32Array, level: number): Float32Array {
  const sizes = samples.map(Math.abs).sort();
  const limit = sizes[Math.floor(0.995 * sizes.length)] ?? 1;
  return samples.map(
    (sample) => Math.round((Math.max(-limit, Math.min(limit, sample)) / limit) * level * 32_768) / 32_768,
  );
}

/** One to six gaps of 3 to 60 ms. */
function gapped({ samples, random }: { samples: Float32Array; random: Random }): Float32Array {
  const holed = samples.slice();
  for (let left = random.integer(1, 6); left > 0; left -= 1) {
    const at = Math.round(random.uniform(0.5, 11) * SCENE_RATE_HZ);
    holed.fill(0, at, at + Math.round(random.uniform(0.003, 0.06) * SCENE_RATE_HZ));
  }
  return holed;
}

function shareOf(flags: readonly boolean[]): string {
  const count = flags.filter((flag) => flag).length;
  return `${count}/${flags.length} = ${((100 * count) / flags.length).toFixed(1)} %`;
}

/** What is flagged of slides through Chromium, where nothing that it does to the sound withholds a flag. */
function printFlags(): void {
  console.log('\nFlags on slides, by what Chromium was asked for:');
  console.log('             passages   flagged   gated away   flags elsewhere');
  for (const processing of ['defaults', 'off'] as const) {
    let [passages, found, gated, elsewhere] = [0, 0, 0, 0];
    for (const { kind, seed, flags, ...one } of judged) {
      if (kind !== 'slide' || one.processing !== processing) continue;
      const scene = makeScene(kind, seed, voices);
      const lateS = shiftS(scene.samples, one.samples, one.sampleRateHz);
      const at = scene.passagesS.map((passageS) => passageS + lateS);
      const isNear = (flag: Resonance, atS: number): boolean => Math.abs(flag.timeS - atS) < NEAR_S;
      const kept = flags.filter(({ isGated }) => isGated !== true);
      passages += at.length;
      found += at.filter((atS) => kept.some((flag) => isNear(flag, atS))).length;
      gated += flags.length - kept.length;
      elsewhere += kept.filter((flag) => !at.some((atS) => isNear(flag, atS))).length;
    }
    const cells = [passages, found, gated, elsewhere].map((count, i) =>
      String(count).padStart([9, 10, 13, 18][i]),
    );
    console.log(`${processing.padEnd(12)}${cells.join('')}`);
  }
}

/** How much later the recording has what the scene has, s, by their envelopes of 10 ms. */
function shiftS(scene: Float32Array, recording: Float32Array, sampleRateHz: number): number {
  const stepS = 0.01;
  const own = envelope(scene, SCENE_RATE_HZ * stepS);
  const heard = envelope(recording, sampleRateHz * stepS);
  let best = { shift: 0, sum: -Infinity };
  for (let shift = 0; shift < LATEST_S / stepS; shift += 1) {
    let sum = 0;
    for (let i = 0; i < own.length && i + shift < heard.length; i += 1) sum += own[i] * heard[i + shift];
    if (sum > best.sum) best = { shift, sum };
  }
  return best.shift * stepS;
}

/** Mean sizes of so many samples each, their mean over all taken off. */
function envelope(samples: Float32Array, step: number): Float64Array {
  const sizes = Float64Array.from({ length: Math.floor(samples.length / step) }, (_, i) => {
    let sum = 0;
    for (let k = Math.round(i * step); k < Math.round((i + 1) * step); k += 1) sum += Math.abs(samples[k]);
    return sum / step;
  });
  const mean = sizes.reduce((sum, size) => sum + size, 0) / sizes.length;
  return sizes.map((size) => size - mean);
}
