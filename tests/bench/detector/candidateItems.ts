import { strongestOf, NONE_YET } from '../../../src/resonance/passages/candidates.ts';
import type { Candidate, Strongest } from '../../../src/resonance/passages/candidates.ts';
import { judgementOf } from '../../../src/resonance/passages/lookAheads.ts';
import { offlineCandidates } from '../../../src/resonance/passages/offlineCandidates.ts';
import { detectOffline } from '../../../src/resonance/passages/offlineDetector.ts';
import { OnlineDetector } from '../../../src/resonance/passages/onlineDetector.ts';
import { CLASSIFIER_INPUTS, classifierInputs } from '../../../src/resonance/passages/passageProbability.ts';
import type { PassageClassifier } from '../../../src/resonance/passages/passageProbability.ts';
import { MovingView, viewOf } from '../../../src/resonance/toneView.ts';
import type { ToneView } from '../../../src/resonance/toneView.ts';
import { defaultToleranceHz } from '../../../src/session/hearing/forkTolerance.ts';
import { VALUES_PER_FRAME } from '../../../src/tone/sideBandNoise.ts';
import { ToneSeries } from '../../../src/tone/toneSeries.ts';
import { means } from './score.ts';
import { frameOf, seriesOf } from './toneCache.ts';
import type { HeardPassage, WorldEntry, WorldTruth } from './worldSound.ts';

/** One candidate of a recording, to learn from. */
export interface Item {
  readonly inputs: Float32Array;
  readonly timeS: number;
  readonly decidedS: number | null;
  readonly passage: HeardPassage | null;
  /** Which of the online detector's judgements it comes from, see `judgementOf`; null: the offline detector's. */
  readonly judgement: number | null;
  /** As an index into the whole recording. */
  readonly peakIndex: number;
  readonly peakPower: number;
  readonly logHalfWidth: number;
}

export interface Candidates {
  readonly truth: WorldTruth;
  /** The whole recording, for telling whether two items are one passage. */
  readonly view: ToneView;
  /** Kept out of the training, to set thresholds and calibration. */
  readonly kept: boolean;
  readonly offline: readonly Item[];
  readonly online: readonly Item[];
}

/** Whether a recording is kept out of the training. */
export const isKept = (seed: number): boolean => seed % 5 === 0;

/** Flags nothing: for looking at candidates only. */
const SILENT: PassageClassifier = {
  mean: Array.from({ length: CLASSIFIER_INPUTS }, () => 0),
  scale: Array.from({ length: CLASSIFIER_INPUTS }, () => 1),
  hidden: [],
  output: [-9],
  threshold: 1,
  sureThreshold: 1,
  calibration: [{ offset: 0, slope: 1 }],
};

/** All that may be a passage in one recording, as both detectors see it. */
export function candidatesOf(entry: WorldEntry, cache: string | null): Candidates {
  const [truth, whole] = seriesOf(entry, cache);
  const rangeHz = defaultToleranceHz(truth.nominalHz);
  const { offsetHz } = detectOffline(whole, rangeHz, undefined, SILENT);
  const candidates = [...offlineCandidates(new MovingView(whole), offsetHz)];
  const strongest = strongestOf(candidates, NONE_YET);
  const view = viewOf(whole, 0, whole.length, offsetHz);
  return {
    truth,
    view,
    kept: isKept(entry.seed),
    online: onlineItems(whole, rangeHz, truth),
    offline: candidates.map((candidate) => item(candidate, view, strongest, truth, null)),
  };
}

/** Replayed in steps: values and the side-band frames that would be there by then. */
function onlineItems(whole: ToneSeries, rangeHz: number, truth: WorldTruth): Item[] {
  const items: Item[] = [];
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
      for (const candidate of candidates) items.push(item(candidate, view, strongest, truth, decidedS));
    });
  }
  return items;
}

function item(
  { match, features }: Candidate,
  view: ToneView,
  strongest: Strongest,
  truth: WorldTruth,
  decidedS: number | null,
): Item {
  const peakIndex = features.peakIndex + view.firstIndex;
  const timeS = peakIndex / view.rateHz;
  const near = truth.passages
    .filter((passage) => means({ timeS, flaggedAtS: null }, passage))
    .sort((a, b) => Math.abs(a.timeS - timeS) - Math.abs(b.timeS - timeS));
  return {
    inputs: Float32Array.from(classifierInputs(features, strongest)),
    timeS,
    decidedS,
    passage: near[0] ?? null,
    judgement: decidedS === null ? null : judgementOf(match.template, view.rateHz),
    peakIndex,
    peakPower: features.peakPower,
    logHalfWidth: features.logHalfWidth,
  };
}
