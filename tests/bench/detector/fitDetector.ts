import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { samePassage, strongestPower } from '../../../src/resonance/passages/candidates.ts';
import type { Candidate } from '../../../src/resonance/passages/candidates.ts';
import { EARLY_THRESHOLD, judgementOf } from '../../../src/resonance/passages/lookAheads.ts';
import { offlineCandidates } from '../../../src/resonance/passages/offlineCandidates.ts';
import { detectOffline } from '../../../src/resonance/passages/offlineDetector.ts';
import { OnlineDetector } from '../../../src/resonance/passages/onlineDetector.ts';
import { CLASSIFIER_INPUTS, classifierInputs } from '../../../src/resonance/passages/passageProbability.ts';
import type { PassageClassifier } from '../../../src/resonance/passages/passageProbability.ts';
import { perceptronOutput } from '../../../src/resonance/passages/perceptron.ts';
import type { Perceptron } from '../../../src/resonance/passages/perceptron.ts';
import { MovingView, viewOf } from '../../../src/resonance/toneView.ts';
import type { ToneView } from '../../../src/resonance/toneView.ts';
import { defaultToleranceHz } from '../../../src/session/hearing/forkTolerance.ts';
import { VALUES_PER_FRAME } from '../../../src/tone/sideBandNoise.ts';
import type { SideBandFrame, SideBandNoise } from '../../../src/tone/sideBandNoise.ts';
import { ToneSeries } from '../../../src/tone/toneSeries.ts';
import { ToneStream } from '../../../src/tone/toneStream.ts';
import { recordingSet } from './recordingSet.ts';
import { addScores, means, NO_SCORE, score } from './score.ts';
import type { Flag, Score } from './score.ts';
import { simulate } from './simulate.ts';
import type { Truth } from './simulate.ts';
import { trainPerceptron } from './trainPerceptron.ts';
import type { Passage } from './truth.ts';
import { VOICES_OPTION, voicesOrEnd } from './voices/chooseVoices.ts';
import { weightsFile } from './weightsFile.ts';

/**
 * Trains the two classifiers on simulated recordings of the tuning set and writes them to
 * src/resonance/passages/perceptronWeights.ts. A passage is known by its time alone; which of the candidates there stands
 * for it, the training finds itself: the most probable one under the network of the round before. Four of five seeds are
 * trained on; the fifth sets the threshold.
 */
interface Item {
  readonly inputs: readonly number[];
  readonly timeS: number;
  readonly decidedS: number | null;
  readonly passage: Passage | null;
  /** Which of the online detector's judgements it comes from, see `judgementOf`; null: the offline detector's. */
  readonly judgement: number | null;
  /** With the peak as an index into the whole recording. */
  readonly features: Candidate['features'];
}

interface Recording {
  readonly truth: Truth;
  /** The whole recording, for telling whether two items are one passage. */
  readonly view: ToneView;
  readonly kept: boolean;
  readonly offline: Item[];
  readonly online: Item[];
}

const { values: args } = parseArgs({
  options: {
    each: { type: 'string', default: '92' },
    /** Folder for the tone series, so that training again needs no new simulation. */
    cache: { type: 'string' },
    voices: VOICES_OPTION,
    dry: { type: 'boolean', default: false },
  },
});

const voices = voicesOrEnd(args.voices);
console.log(`Voices: ${voices.kind}.`);

/** Flags nothing: for looking at candidates only. */
const SILENT: PassageClassifier = {
  mean: Array.from({ length: CLASSIFIER_INPUTS }, () => 0),
  scale: Array.from({ length: CLASSIFIER_INPUTS }, () => 1),
  hidden: [],
  output: [-9],
  threshold: 1,
};

interface SeriesFile {
  readonly truth: Truth;
  readonly rateHz: number;
  readonly bandwidthHz: number;
  readonly sideBands: readonly SideBandFrame[];
}

/** The tone stage's output for one recording, from the cache where it is there. */
function seriesOf(
  condition: string,
  seed: number,
  make: () => ReturnType<typeof simulate>,
): [Truth, ToneSeries] {
  const stem = args.cache === undefined ? null : join(args.cache, `${voices.kind}-${condition}-${seed}`);
  if (stem !== null && existsSync(`${stem}.json`)) {
    const file = JSON.parse(readFileSync(`${stem}.json`, 'utf8')) as SeriesFile;
    const bytes = readFileSync(`${stem}.bin`);
    const values = new Float32Array(bytes.buffer, bytes.byteOffset, bytes.length / 4);
    const series = new ToneSeries(file.rateHz, file.bandwidthHz);
    const n = values.length / 2;
    series.pushValues(values.subarray(0, n), values.subarray(n), n);
    for (const frame of file.sideBands) series.sideBands.push(frame);
    return [file.truth, series];
  }
  const { samples, sampleRateHz, truth } = make();
  const stream = new ToneStream(sampleRateHz, truth.nominalHz);
  const { series } = stream;
  stream.push(samples);
  stream.finish();
  if (stem !== null) {
    mkdirSync(args.cache as string, { recursive: true });
    const n = series.length;
    const { sideBands } = series;
    const values = new Float32Array(2 * n);
    values.set(series.re.subarray(0, n));
    values.set(series.im.subarray(0, n), n);
    writeFileSync(`${stem}.bin`, values);
    const file: SeriesFile = {
      truth,
      rateHz: series.rateHz,
      bandwidthHz: series.bandwidthHz,
      sideBands: Array.from({ length: sideBands.length }, (_, i) => frameOf(sideBands, i)),
    };
    writeFileSync(`${stem}.json`, JSON.stringify(file));
  }
  return [truth, series];
}

const frameOf = ({ near, far, floor }: SideBandNoise, i: number): SideBandFrame => ({
  near: near[i],
  far: far[i],
  floor: floor[i],
});

function load(): Recording[] {
  return recordingSet('tune', Number(args.each)).map(({ scenario, seed }) => {
    const [truth, whole] = seriesOf(scenario.condition, seed, () => simulate(scenario, seed, voices));
    const rangeHz = defaultToleranceHz(truth.nominalHz);
    const online: Item[] = [];
    // Replayed in steps: values and the side-band frames that would be there by then.
    const growing = new ToneSeries(whole.rateHz, whole.bandwidthHz);
    const detector = new OnlineDetector(growing, rangeHz, SILENT);
    let frames = 0;
    for (let i = 0; i < whole.length; i += 1) {
      growing.pushValues(whole.re.subarray(i, i + 1), whole.im.subarray(i, i + 1), 1);
      for (; frames < whole.sideBands.length; frames += 1) {
        if (frames * VALUES_PER_FRAME > i - 10) break;
        growing.sideBands.push(frameOf(whole.sideBands, frames));
      }
      detector.advance((candidates, view, strongest) => {
        const decidedS = (view.firstIndex + view.length) / view.rateHz;
        for (const candidate of candidates) online.push(item(candidate, view, strongest, truth, decidedS));
      });
    }
    const { offsetHz } = detectOffline(whole, rangeHz, [], SILENT);
    const view = viewOf(whole, 0, whole.length, offsetHz);
    const candidates = [...offlineCandidates(new MovingView(whole), offsetHz)];
    const strongest = strongestPower(candidates, 0);
    return {
      truth,
      view,
      kept: seed % 5 === 0,
      online,
      offline: candidates.map((candidate) => item(candidate, view, strongest, truth, null)),
    };
  });
}

function item(
  candidate: Candidate,
  view: ToneView,
  strongest: number,
  truth: Truth,
  decidedS: number | null,
): Item {
  const timeS = (candidate.features.peakIndex + view.firstIndex) / view.rateHz;
  const near = truth.passages
    .filter((passage) => means({ timeS, flaggedAtS: null }, passage))
    .sort((a, b) => Math.abs(a.timeS - timeS) - Math.abs(b.timeS - timeS));
  return {
    inputs: classifierInputs(candidate.features, strongest),
    timeS,
    decidedS,
    passage: near[0] ?? null,
    judgement: decidedS === null ? null : judgementOf(candidate.match.template, view.rateHz),
    features: { ...candidate.features, peakIndex: candidate.features.peakIndex + view.firstIndex },
  };
}

/**
 * Trains on what is found in these recordings, the late judgement's left out: trained on them too, the network flags as
 * much as is right, but later (95 % within 1.6 s instead of 1.4).
 */
function train(recordings: readonly (readonly Item[])[]): Perceptron {
  const examples = recordings.flatMap((items, recording) =>
    items
      .filter(({ passage, judgement }) => (passage === null || passage.audible) && judgement !== 2)
      // Each judgement of a passage has its own best: an early one need not be as sure as a patient one.
      .map(({ inputs, passage, judgement }) => ({
        inputs,
        passage: passage === null ? null : `${recording} ${passage.timeS} ${judgement}`,
      })),
  );
  return trainPerceptron(examples, 1);
}

/** Flags of one recording as the detectors would raise them, from stored items. */
function flags(view: ToneView, items: readonly Item[], network: Perceptron, threshold: number): Flag[] {
  const over = items
    .map((it) => ({ it, probability: perceptronOutput(network, it.inputs) }))
    .filter(({ it, probability }) => probability >= (it.judgement === 0 ? EARLY_THRESHOLD : threshold));
  const chosen: Item[] = [];
  // Live decisions come in order of time and can't be taken back; offline the surest come first.
  over.sort((a, b) =>
    a.it.decidedS !== b.it.decidedS
      ? (a.it.decidedS ?? 0) - (b.it.decidedS ?? 0)
      : b.probability - a.probability,
  );
  for (const { it } of over) {
    if (!chosen.some((other) => samePassage(view, other.features, it.features))) chosen.push(it);
  }
  return chosen.map((it) => ({ timeS: it.timeS, flaggedAtS: it.decidedS }));
}

function scoreAll(
  recordings: readonly Recording[],
  which: 'offline' | 'online',
  network: Perceptron,
  at: number,
): Score {
  return addScores([
    NO_SCORE,
    ...recordings.map((r) => score(flags(r.view, r[which], network, at), r.truth.passages)),
  ]);
}

function trainAndTell(recordings: readonly Recording[], which: 'offline' | 'online'): PassageClassifier {
  const network = train(recordings.filter((r) => !r.kept).map((r) => r[which]));
  const kept = recordings.filter((r) => r.kept);
  let best = { threshold: 0.5, f1: 0 };
  let highest = 0;
  for (let percent = 20; percent <= 95; percent += 5) {
    const { hits, falseAlarms, audible } = scoreAll(kept, which, network, percent / 100);
    const precision = hits / Math.max(1, hits + falseAlarms);
    const recall = hits / Math.max(1, audible);
    const f1 = (2 * precision * recall) / (precision + recall || 1);
    console.log(
      `${which} at ${percent} %: precision ${precision.toFixed(3)} recall ${recall.toFixed(3)} F1 ${f1.toFixed(3)}`,
    );
    highest = Math.max(highest, f1);
    // A false flag costs trust: of thresholds that are as good to 0.005, the highest.
    if (f1 >= highest - 0.005) best = { threshold: percent / 100, f1 };
  }
  for (const condition of new Set(kept.map((r) => r.truth.condition))) {
    const own = kept.filter((r) => r.truth.condition === condition);
    const { hits, falseAlarms, audible } = scoreAll(own, which, network, best.threshold);
    console.log(`  ${condition.padEnd(24)} hits ${hits} of ${audible}, false ${falseAlarms}`);
  }
  const short = (x: number): number => Number(x.toFixed(4));
  return {
    mean: network.mean.map(short),
    scale: network.scale.map(short),
    hidden: network.hidden.map((row) => row.map(short)),
    output: network.output.map(short),
    threshold: best.threshold,
  };
}

const recordings = load();
const offline = trainAndTell(recordings, 'offline');
const online = trainAndTell(recordings, 'online');
if (!args.dry) {
  const path = new URL('../../../src/resonance/passages/perceptronWeights.ts', import.meta.url);
  writeFileSync(path, weightsFile({ offline, online }));
}
