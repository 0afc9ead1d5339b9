import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import {
  EARLY_THRESHOLD,
  judgementOf,
  LiveDetector,
} from '../../../src/resonance/passages/onlineDetector.ts';
import { noteStrongest, samePassage } from '../../../src/resonance/passages/candidates.ts';
import type { Candidate } from '../../../src/resonance/passages/candidates.ts';
import { ruleProbability, RULE_TERMS, ruleValues } from '../../../src/resonance/passages/perceptron.ts';
import type { PassageRule, Strongest } from '../../../src/resonance/passages/perceptron.ts';
import { secondLook, secondLookCandidates } from '../../../src/resonance/passages/offlineDetector.ts';
import { viewOf } from '../../../src/resonance/toneView.ts';
import type { ToneView } from '../../../src/resonance/toneView.ts';
import { defaultToleranceHz } from '../../../src/session/forkTolerance.ts';
import { VALUES_PER_FRAME } from '../../../src/tone/sideBandNoise.ts';
import type { FlankRows } from '../../../src/tone/sideBandNoise.ts';
import { ToneSeries } from '../../../src/tone/toneSeries.ts';
import { ToneStream } from '../../../src/tone/toneStream.ts';
import { recordingSet } from './recordingSet.ts';
import { addScores, means, NO_SCORE, score } from './score.ts';
import type { Flag, Score } from './score.ts';
import { simulate } from './simulate.ts';
import type { Truth } from './simulate.ts';
import { trainRule } from './trainPerceptron.ts';
import type { Passage } from './truth.ts';

/**
 * Fits the two rules to simulated recordings of the tuning set and writes them to src/resonance/passages/perceptronWeights.ts.
 * A passage is known by its time alone; which of the candidates there stands for it, the fit finds itself: the most
 * probable one under the rule of the round before. Four of five seeds are fitted to; the fifth sets the threshold.
 */
interface Item {
  readonly values: readonly number[];
  readonly timeS: number;
  readonly decidedS: number | null;
  readonly passage: Passage | null;
  /** Which of the live look's judgements it comes from, see `judgementOf`; null: the second look's. */
  readonly judgement: number | null;
  /** With the peak as an index into the whole recording. */
  readonly evidence: Candidate['evidence'];
}

interface Recording {
  readonly truth: Truth;
  /** The whole recording, for telling whether two items are one passage. */
  readonly view: ToneView;
  readonly kept: boolean;
  readonly secondLook: Item[];
  readonly live: Item[];
}

const { values: args } = parseArgs({
  options: {
    each: { type: 'string', default: '92' },
    /** Folder for the tone series, so that a second fit needs no new simulation. */
    cache: { type: 'string' },
    dry: { type: 'boolean', default: false },
  },
});

/** Flags nothing: for looking at candidates only. */
const SILENT: PassageRule = {
  centre: Array.from({ length: RULE_TERMS }, () => 0),
  scale: Array.from({ length: RULE_TERMS }, () => 1),
  views: [],
  output: [-9],
  threshold: 1,
};

interface SeriesFile {
  readonly truth: Truth;
  readonly rateHz: number;
  readonly bandwidthHz: number;
  readonly flanks: readonly (readonly [near: number, far: number, floor: number])[];
}

/** The tone stage's output for one recording, from the cache where it is there. */
function seriesOf(
  condition: string,
  seed: number,
  make: () => ReturnType<typeof simulate>,
): [Truth, ToneSeries] {
  const stem = args.cache === undefined ? null : join(args.cache, `${condition}-${seed}`);
  if (stem !== null && existsSync(`${stem}.json`)) {
    const file = JSON.parse(readFileSync(`${stem}.json`, 'utf8')) as SeriesFile;
    const bytes = readFileSync(`${stem}.bin`);
    const values = new Float32Array(bytes.buffer, bytes.byteOffset, bytes.length / 4);
    const series = new ToneSeries(file.rateHz, file.bandwidthHz);
    const n = values.length / 2;
    series.pushValues(values.subarray(0, n), values.subarray(n), n);
    for (const frame of file.flanks) series.flanks.push(...frame);
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
    const { flanks } = series;
    const values = new Float32Array(2 * n);
    values.set(series.re.subarray(0, n));
    values.set(series.im.subarray(0, n), n);
    writeFileSync(`${stem}.bin`, values);
    const file: SeriesFile = {
      truth,
      rateHz: series.rateHz,
      bandwidthHz: series.bandwidthHz,
      flanks: Array.from({ length: flanks.length }, (_, i) => frameOf(flanks, i)),
    };
    writeFileSync(`${stem}.json`, JSON.stringify(file));
  }
  return [truth, series];
}

/** One frame of flanks: near, far and floor. */
const frameOf = ({ near, far, floor }: FlankRows, i: number): [number, number, number] => [
  near[i],
  far[i],
  floor[i],
];

function load(): Recording[] {
  return recordingSet('tune', Number(args.each)).map(({ scenario, seed }) => {
    const [truth, whole] = seriesOf(scenario.condition, seed, () => simulate(scenario, seed));
    const rangeHz = defaultToleranceHz(truth.nominalHz);
    const live: Item[] = [];
    // Replayed in steps: values and the flank frames that would be there by then.
    const growing = new ToneSeries(whole.rateHz, whole.bandwidthHz);
    const detector = new LiveDetector(growing, rangeHz, SILENT);
    let flanks = 0;
    for (let i = 0; i < whole.length; i += 1) {
      growing.pushValues(whole.re.subarray(i, i + 1), whole.im.subarray(i, i + 1), 1);
      for (; flanks < whole.flanks.length; flanks += 1) {
        if (flanks * VALUES_PER_FRAME > i - 10) break;
        growing.flanks.push(...frameOf(whole.flanks, flanks));
      }
      detector.advance(
        () => undefined,
        (candidates, view, strongest) => {
          const decidedS = (view.firstIndex + view.length) / view.rateHz;
          for (const candidate of candidates) live.push(item(candidate, view, strongest, truth, decidedS));
        },
      );
    }
    const { offsetHz } = secondLook(whole, rangeHz, [], SILENT);
    const view = viewOf(whole, 0, whole.length, offsetHz);
    const candidates = Array.from(secondLookCandidates(whole, offsetHz), ({ fit, evidence }) => ({
      fit: { ...fit },
      evidence: { ...evidence },
    }));
    const strongest = { peakPower: 0 };
    for (const one of candidates) noteStrongest(one, strongest);
    return {
      truth,
      view,
      kept: seed % 5 === 0,
      live,
      secondLook: candidates.map((candidate) => item(candidate, view, strongest, truth, null)),
    };
  });
}

function item(
  candidate: Candidate,
  view: ToneView,
  strongest: Strongest,
  truth: Truth,
  decidedS: number | null,
): Item {
  const timeS = (candidate.evidence.peakIndex + view.firstIndex) / view.rateHz;
  const near = truth.passages
    .filter((passage) => means({ timeS, flaggedAtS: null }, passage))
    .sort((a, b) => Math.abs(a.timeS - timeS) - Math.abs(b.timeS - timeS));
  return {
    values: [...ruleValues(candidate.evidence, strongest)],
    timeS,
    decidedS,
    passage: near[0] ?? null,
    judgement: decidedS === null ? null : judgementOf(candidate.fit.template, view.rateHz),
    evidence: { ...candidate.evidence, peakIndex: candidate.evidence.peakIndex + view.firstIndex },
  };
}

/**
 * Fits to what is found in these recordings, the late judgement's left out: fitted to them too, the rule flags as much
 * as is right, but later (95 % within 1.6 s instead of 1.4).
 */
function fit(recordings: readonly (readonly Item[])[]): PassageRule {
  const examples = recordings.flatMap((items, recording) =>
    items
      .filter(({ passage, judgement }) => (passage === null || passage.audible) && judgement !== 2)
      // Each judgement of a passage has its own best: an early one need not be as sure as a patient one.
      .map(({ values, passage, judgement }) => ({
        values,
        passage: passage === null ? null : `${recording} ${passage.timeS} ${judgement}`,
      })),
  );
  return trainRule(examples, 1);
}

/** Flags of one recording as the detectors would raise them, from stored items. */
function flags(view: ToneView, items: readonly Item[], rule: PassageRule, threshold: number): Flag[] {
  const over = items
    .map((it) => ({ it, probability: ruleProbability(rule, it.values) }))
    .filter(({ it, probability }) => probability >= (it.judgement === 0 ? EARLY_THRESHOLD : threshold));
  const chosen: Item[] = [];
  // Live decisions come in order of time and can't be taken back; a second look takes the surest first.
  over.sort((a, b) =>
    a.it.decidedS !== b.it.decidedS
      ? (a.it.decidedS ?? 0) - (b.it.decidedS ?? 0)
      : b.probability - a.probability,
  );
  for (const { it } of over) {
    if (!chosen.some((other) => samePassage(view, other.evidence, it.evidence))) chosen.push(it);
  }
  return chosen.map((it) => ({ timeS: it.timeS, flaggedAtS: it.decidedS }));
}

function scoreAll(
  recordings: readonly Recording[],
  which: 'secondLook' | 'live',
  rule: PassageRule,
  at: number,
): Score {
  return addScores([
    NO_SCORE,
    ...recordings.map((r) => score(flags(r.view, r[which], rule, at), r.truth.passages)),
  ]);
}

function fitAndTell(
  name: string,
  recordings: readonly Recording[],
  which: 'secondLook' | 'live',
): PassageRule {
  const rule = fit(recordings.filter((r) => !r.kept).map((r) => r[which]));
  const kept = recordings.filter((r) => r.kept);
  let best = { threshold: 0.5, f1: 0 };
  let highest = 0;
  for (let percent = 20; percent <= 95; percent += 5) {
    const { hits, falseAlarms, audible } = scoreAll(kept, which, rule, percent / 100);
    const precision = hits / Math.max(1, hits + falseAlarms);
    const recall = hits / Math.max(1, audible);
    const f1 = (2 * precision * recall) / (precision + recall || 1);
    console.log(
      `${name} at ${percent} %: precision ${precision.toFixed(3)} recall ${recall.toFixed(3)} F1 ${f1.toFixed(3)}`,
    );
    highest = Math.max(highest, f1);
    // A false flag costs trust: of thresholds that are as good to 0.005, the highest.
    if (f1 >= highest - 0.005) best = { threshold: percent / 100, f1 };
  }
  for (const condition of new Set(kept.map((r) => r.truth.condition))) {
    const own = kept.filter((r) => r.truth.condition === condition);
    const { hits, falseAlarms, audible } = scoreAll(own, which, rule, best.threshold);
    console.log(`  ${condition.padEnd(24)} hits ${hits} of ${audible}, false ${falseAlarms}`);
  }
  const short = (x: number): number => Number(x.toFixed(4));
  return {
    centre: rule.centre.map(short),
    scale: rule.scale.map(short),
    views: rule.views.map((row) => row.map(short)),
    output: rule.output.map(short),
    threshold: best.threshold,
  };
}

const recordings = load();
const second = fitAndTell('second look', recordings, 'secondLook');
const live = fitAndTell('live', recordings, 'live');
const text = `import type { PassageRule, Strongest } from './passageRule.ts';

/**
 * Fitted by tests/bench/detector/fitDetector.ts to the tuning set of the simulator, terms in the order of ruleValues.
 * Do not edit by hand: change the terms or the simulator, and fit anew.
 */
export const SECOND_LOOK_RULE: PassageRule = ${JSON.stringify(second)};

export const LIVE_RULE: PassageRule = ${JSON.stringify(live)};
`;
if (!args.dry)
  writeFileSync(new URL('../../../src/resonance/passages/perceptronWeights.ts', import.meta.url), text);
