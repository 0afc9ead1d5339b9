import type { PassageEvidence } from './passageFeatures.ts';

/**
 * A logistic rule on a few weighed-up views of the terms. Each view is tanh of a weighted sum of all terms (the
 * first term is 1), so that what counts as a good fit may differ between a fast and a slow slide; the probability is
 * the logistic function of a weighted sum of the views.
 */
export interface PassageRule {
  /** Each term less `centre`, over `scale`, within ±4, before it is weighed. One value a term. */
  readonly centre: readonly number[];
  readonly scale: readonly number[];
  /** One row of weights a view, one weight a term. */
  readonly views: readonly (readonly number[])[];
  /** Constant, then one weight a view. */
  readonly output: readonly number[];
  /** Least probability that is flagged. */
  readonly threshold: number;
}

/** The strongest of a recording so far: what others are compared with. */
export interface Strongest {
  /** Of the evidence; 0 where there was none yet, and each is compared with itself. */
  readonly peakPower: number;
}

/** Weaker than this beside the strongest, ln of the powers' ratio, makes no difference. */
const LEAST_STRENGTH = -5;

/** How many terms the rule weighs up. */
export const RULE_TERMS = 19;

/** Room to work in, kept from one call to the next. */
const scratch = [new Float64Array(RULE_TERMS), new Float64Array(RULE_TERMS)] as const;

/**
 * The terms' values for one piece of evidence.
 * @param strongest  an object, since a number that is handed on is litter
 * @param values  is filled
 */
export function ruleValues(
  e: PassageEvidence,
  strongest: Strongest,
  values = new Float64Array(RULE_TERMS),
): Float64Array {
  // How rare a passage is among all that is looked at.
  values[0] = 1;
  // It stands out of room and misfit alike,
  values[1] = e.statistic;
  // out of the room,
  values[2] = Math.min(e.signalToNoise, 8);
  // looks like a resonator swept through the pitch,
  values[3] = e.fit;
  // and far more so than all else around it.
  values[4] = Math.min(e.contrast, 4);
  // The fork sounded before,
  values[5] = Math.min(e.before, 5);
  // and still after;
  values[6] = Math.min(e.after, 5);
  // it was louder than before
  values[7] = Math.min(e.riseOverBefore, 4);
  // and than after;
  values[8] = Math.min(e.riseOverAfter, 4);
  // a step (strike, approach, damping) is louder than one side only.
  values[9] = Math.min(e.riseOverBefore, e.riseOverAfter, 3);
  // Short events are more often chance;
  values[10] = e.width;
  // a good fit says more over many values.
  values[11] = e.fit * e.width;
  // The phase turns, while an amplitude alone stays on a line;
  values[12] = Math.log(0.01 + e.roundness);
  // the path encloses a circle at whatever speed,
  values[13] = Math.log(0.05 + e.loop);
  // and ends at the phase that it began with.
  values[14] = e.phaseReturn;
  // Weak beside the strongest of this recording.
  values[15] = Math.max(LEAST_STRENGTH, Math.log(e.peakPower / Math.max(strongest.peakPower, e.peakPower)));
  // A voice brings its other harmonics,
  values[16] = Math.max(-8, Math.min(3, e.company));
  // and noise beside the pitch flares up with a knock or a syllable.
  values[17] = Math.max(-2, Math.min(3, e.burst));
  // What is judged early must be clearer.
  values[18] = e.hindsight;
  return values;
}

/** Probability that this is a passage through a resonance, 0..1. */
export const passageProbability = (
  rule: PassageRule,
  evidence: PassageEvidence,
  strongest: Strongest,
): number => ruleProbability(rule, ruleValues(evidence, strongest, scratch[0]));

/** The same from the terms' values. */
export function ruleProbability(rule: PassageRule, values: ArrayLike<number>): number {
  let sum = rule.output[0];
  for (let k = 0; k < rule.views.length; k += 1) sum += viewShare(rule, k, values);
  return logistic(sum);
}

/**
 * A bound: the probability is no higher, however strong the strongest turns out to be. Each view goes one way with
 * `strength`, so its highest share lies at one end of that term.
 */
export function probabilityAtMost(
  rule: PassageRule,
  evidence: PassageEvidence,
  strongest: Strongest,
): number {
  const soFar = ruleValues(evidence, strongest, scratch[0]);
  const stronger = { peakPower: evidence.peakPower * Math.exp(-LEAST_STRENGTH) };
  const weakest = ruleValues(evidence, stronger, scratch[1]);
  let sum = rule.output[0];
  for (let k = 0; k < rule.views.length; k += 1) {
    sum += Math.max(viewShare(rule, k, soFar), viewShare(rule, k, weakest));
  }
  return logistic(sum);
}

/** What one view adds to the sum. */
function viewShare(
  { centre, scale, views, output }: PassageRule,
  k: number,
  values: ArrayLike<number>,
): number {
  const weights = views[k];
  let weighed = 0;
  for (let j = 0; j < weights.length; j += 1) {
    const scaled = (values[j] - centre[j]) / scale[j];
    weighed += weights[j] * Math.max(-4, Math.min(4, scaled));
  }
  return output[k + 1] * Math.tanh(weighed);
}

const logistic = (sum: number): number => 1 / (1 + Math.exp(-sum));
