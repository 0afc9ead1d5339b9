import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { WavReader } from '../../../src/capture/wav.ts';
import { LiveDetector } from '../../../src/resonance/liveLook.ts';
import { samePassage, strongestPower } from '../../../src/resonance/passages.ts';
import type { Candidate } from '../../../src/resonance/passages.ts';
import { RULE_TERMS, ruleValues } from '../../../src/resonance/passageRule.ts';
import { secondLook, secondLookCandidates } from '../../../src/resonance/secondLook.ts';
import type { ToneView } from '../../../src/resonance/toneView.ts';
import { defaultToleranceHz } from '../../../src/session/forkTolerance.ts';
import { ToneSeries } from '../../../src/tone/toneSeries.ts';
import { ToneStream } from '../../../src/tone/toneStream.ts';
import { fitLogistic } from './logistic.ts';
import { addScores, NO_SCORE, score, toleranceS } from './score.ts';
import type { Flag } from './score.ts';
import type { Truth } from './simulate.ts';
import type { Passage } from './truth.ts';

/**
 * Fits the weights of the two rules to recordings that write.ts made, and writes them to src/resonance/rules.ts.
 * A passage is known by its time alone; which of the candidates there stands for it, the fit finds itself: the most
 * probable one under the weights of the round before.
 */
interface Item {
  readonly values: readonly number[];
  readonly timeS: number;
  readonly decidedS: number | null;
  readonly passage: Passage | null;
  readonly evidence: Candidate['evidence'];
  readonly view: ToneView;
}

interface Recording {
  readonly truth: Truth;
  readonly secondLook: Item[];
  readonly live: Item[];
}

const { values: args } = parseArgs({
  options: {
    from: { type: 'string' },
    skip: { type: 'string', default: '' },
    dry: { type: 'boolean', default: false },
  },
});
if (args.from === undefined) {
  console.error(
    'Usage: tsx tests/bench/detector/fitRule.ts --from FOLDER (made by write.ts --set tune) [--dry]',
  );
  process.exit(2);
}

const nowhere = { threshold: 1, weights: RULE_TERMS.map(() => 0) };

async function load(folder: string): Promise<Recording[]> {
  const truths = JSON.parse(readFileSync(join(folder, 'truth.json'), 'utf8')) as (Truth & { file: string })[];
  const recordings: Recording[] = [];
  for (const truth of truths) {
    const reader = await WavReader.fromBytes(readFileSync(join(folder, truth.file)));
    let series: ToneSeries | null = null;
    const stream = new ToneStream(reader.format.sampleRateHz, truth.nominalHz, {
      onValue: (re, im) => series?.pushValue(re, im),
      onFlanks: (frame) => series?.pushFlanks(frame),
    });
    series = new ToneSeries(stream.narrowRateHz, stream.narrowBandwidthHz);
    const rangeHz = defaultToleranceHz(truth.nominalHz);
    const live: Item[] = [];
    const detector = new LiveDetector(series, rangeHz, nowhere);
    for await (const block of reader.blocks()) {
      stream.push(block.samples);
      detector.advance((look, strongest) => {
        for (const candidate of look.candidates) {
          const decided = look.view.firstIndex + look.view.length;
          live.push(item(candidate, look.view, strongest, truth, decided / look.view.rateHz));
        }
      });
    }
    stream.finish();
    const { view } = secondLook(series, rangeHz, nowhere);
    const candidates = secondLookCandidates(series, view);
    const strongest = strongestPower(candidates);
    recordings.push({
      truth,
      live,
      secondLook: candidates.map((candidate) => item(candidate, view, strongest, truth, null)),
    });
  }
  return recordings;
}

function item(
  candidate: Candidate,
  view: ToneView,
  strongest: number | null,
  truth: Truth,
  decidedS: number | null,
): Item {
  const timeS = (candidate.evidence.peakIndex + view.firstIndex) / view.rateHz;
  const near = truth.passages
    .filter((passage) => Math.abs(passage.timeS - timeS) <= toleranceS(passage))
    .sort((a, b) => Math.abs(a.timeS - timeS) - Math.abs(b.timeS - timeS));
  return {
    values: ruleValues(candidate.evidence, Math.max(strongest ?? 0, candidate.evidence.peakPower)),
    timeS,
    decidedS,
    passage: near[0] ?? null,
    evidence: candidate.evidence,
    view,
  };
}

const logit = (weights: readonly number[], values: readonly number[]): number =>
  values.reduce((sum, value, j) => sum + value * (weights[j] as number), 0);

function fitWeights(recordings: readonly (readonly Item[])[]): number[] {
  let weights: number[] | null = null;
  for (let round = 0; round < 8; round += 1) {
    const rows = recordings.flatMap((items) => {
      const best = new Map<Passage, Item>();
      for (const it of items) {
        if (it.passage?.audible !== true) continue;
        const old = best.get(it.passage);
        const value = (x: Item): number =>
          weights === null ? (x.values[1] as number) + (x.values[2] as number) : logit(weights, x.values);
        if (old === undefined || value(it) > value(old)) best.set(it.passage, it);
      }
      return [
        ...items.filter((it) => it.passage === null).map((it) => ({ values: it.values, hit: false })),
        ...[...best.values()].map((it) => ({ values: it.values, hit: true })),
      ];
    });
    weights = fitLogistic(rows, 2);
  }
  return weights as number[];
}

/** Flags of one recording as the detectors would raise them, from stored items. */
function flags(items: readonly Item[], weights: readonly number[], threshold: number): Flag[] {
  const least = Math.log(threshold / (1 - threshold));
  const over = items.filter((it) => logit(weights, it.values) >= least);
  const chosen: Item[] = [];
  // Live decisions come in order of time and can't be taken back; a second look takes the surest first.
  const order = [...over].sort((a, b) =>
    a.decidedS !== b.decidedS
      ? (a.decidedS ?? 0) - (b.decidedS ?? 0)
      : logit(weights, b.values) - logit(weights, a.values),
  );
  for (const it of order) {
    const taken = chosen.some((other) => {
      const peakIndex = other.evidence.peakIndex + other.view.firstIndex - it.view.firstIndex;
      return peakIndex >= 0 && samePassage(it.view, { ...other.evidence, peakIndex }, it.evidence);
    });
    if (!taken) chosen.push(it);
  }
  return chosen.map((it) => ({ timeS: it.timeS, flaggedAtS: it.decidedS }));
}

function report(name: string, recordings: readonly Recording[], which: 'secondLook' | 'live'): object {
  const weights = fitWeights(recordings.map((r) => r[which]));
  let best = { threshold: 0.5, f1: 0, text: '' };
  for (let threshold = 0.15; threshold < 0.95; threshold += 0.05) {
    const total = recordings
      .map((r) => score(flags(r[which], weights, threshold), r.truth.passages))
      .reduce((a, b) => addScores([a, b]), NO_SCORE);
    const precision = total.hits / Math.max(1, total.hits + total.falseAlarms);
    const recall = total.hits / total.audible;
    const f1 = (2 * precision * recall) / (precision + recall);
    const text = `${name} at ${threshold.toFixed(2)}: precision ${precision.toFixed(3)} recall ${recall.toFixed(3)} F1 ${f1.toFixed(3)}`;
    console.log(text);
    if (f1 > best.f1) best = { threshold, f1, text };
  }
  RULE_TERMS.forEach((term, j) =>
    console.log(`  ${term.name.padEnd(16)}${(weights[j] as number).toFixed(3)}`),
  );
  return { threshold: Number(best.threshold.toFixed(2)), weights: weights.map((w) => Number(w.toFixed(4))) };
}

const skip = args.skip.split(',');
const recordings = (await load(args.from)).filter((r) => !skip.includes(r.truth.condition));
const second = report('second look', recordings, 'secondLook');
const live = report('live', recordings, 'live');
const text = `import type { PassageRule } from './passageRule.ts';

/**
 * Weights fitted by tests/bench/detector/fitRule.ts to the tuning set of the simulator, in the order of RULE_TERMS.
 * Do not edit by hand: change the terms or the simulator, and fit anew.
 */
export const SECOND_LOOK_RULE: PassageRule = ${JSON.stringify(second)};

export const LIVE_RULE: PassageRule = ${JSON.stringify(live)};
`;
if (!args.dry) writeFileSync(new URL('../../../src/resonance/rules.ts', import.meta.url), text);
