import type { PassageEvidence } from './passageEvidence.ts';

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

/** Weaker than this beside the strongest, ln of the powers' ratio, makes no difference. */
const LEAST_STRENGTH = -5;

const atMost = (value: number, limit: number): number => Math.min(value, limit);

/** A term of the rule: a name, the reason why it is there, and how it comes from the evidence. */
interface RuleTerm {
  readonly name: string;
  readonly why: string;
  readonly value: (evidence: PassageEvidence, strongestPower: number) => number;
}

/** Every term of the rule. */
export const RULE_TERMS: readonly RuleTerm[] = [
  { name: 'constant', why: 'how rare a passage is among all that is looked at', value: () => 1 },
  { name: 'statistic', why: 'stands out of room and misfit alike', value: (e) => e.statistic },
  { name: 'signalToNoise', why: 'stands out of the room', value: (e) => atMost(e.signalToNoise, 8) },
  { name: 'fit', why: 'looks like a resonator swept through the pitch', value: (e) => e.fit },
  { name: 'contrast', why: 'far more so than all else around it', value: (e) => atMost(e.contrast, 4) },
  { name: 'before', why: 'the fork sounded before', value: (e) => atMost(e.before, 5) },
  { name: 'after', why: 'and still after', value: (e) => atMost(e.after, 5) },
  { name: 'riseOverBefore', why: 'louder than before', value: (e) => atMost(e.riseOverBefore, 4) },
  { name: 'riseOverAfter', why: 'louder than after', value: (e) => atMost(e.riseOverAfter, 4) },
  {
    name: 'smallerRise',
    why: 'a step (strike, approach, damping) is louder than one side only',
    value: (e) => atMost(Math.min(e.riseOverBefore, e.riseOverAfter), 3),
  },
  { name: 'width', why: 'short events are more often chance', value: (e) => e.width },
  { name: 'fitTimesWidth', why: 'a good fit says more over many values', value: (e) => e.fit * e.width },
  {
    name: 'roundness',
    why: 'the phase turns; an amplitude alone stays on a line',
    value: (e) => Math.log(0.01 + e.roundness),
  },
  {
    name: 'loop',
    why: 'the path encloses a circle at whatever speed',
    value: (e) => Math.log(0.05 + e.loop),
  },
  { name: 'phaseReturn', why: 'and ends at the phase it began with', value: (e) => e.phaseReturn },
  {
    name: 'strength',
    why: 'weak beside the strongest of this recording',
    value: (e, strongestPower) => Math.max(LEAST_STRENGTH, Math.log(e.peakPower / strongestPower)),
  },
  {
    name: 'company',
    why: 'a voice brings its other harmonics',
    value: (e) => Math.max(-8, Math.min(3, e.company)),
  },
  {
    name: 'burst',
    why: 'noise beside the pitch flares up with a knock or a syllable',
    value: (e) => Math.max(-2, Math.min(3, e.burst)),
  },
  { name: 'hindsight', why: 'what is judged early must be clearer', value: (e) => e.hindsight },
];

/** Room to work in, kept from one call to the next. */
const scratch = [new Float64Array(RULE_TERMS.length), new Float64Array(RULE_TERMS.length)] as const;

/**
 * The terms' values for one piece of evidence.
 * @param strongestPower  peak power of the strongest so far, > 0
 * @param values  is filled
 */
export function ruleValues(
  evidence: PassageEvidence,
  strongestPower: number,
  values = new Float64Array(RULE_TERMS.length),
): Float64Array {
  for (let j = 0; j < RULE_TERMS.length; j += 1) {
    values[j] = (RULE_TERMS[j] as RuleTerm).value(evidence, strongestPower);
  }
  return values;
}

/** Probability that this is a passage through a resonance, 0..1. */
export function passageProbability(
  rule: PassageRule,
  evidence: PassageEvidence,
  strongestPower: number,
): number {
  return ruleProbability(rule, ruleValues(evidence, strongestPower, scratch[0]));
}

/** The same from the terms' values. */
export function ruleProbability(rule: PassageRule, values: ArrayLike<number>): number {
  let sum = rule.output[0] as number;
  for (let k = 0; k < rule.views.length; k += 1) sum += viewShare(rule, k, values);
  return logistic(sum);
}

/**
 * A bound: the probability is no higher, however strong the strongest turns out to be. Each view goes one way with
 * `strength`, so its highest share lies at one end of that term.
 */
export function probabilityAtMost(rule: PassageRule, evidence: PassageEvidence): number {
  const strongest = ruleValues(evidence, evidence.peakPower, scratch[0]);
  const weakest = ruleValues(evidence, evidence.peakPower * Math.exp(-LEAST_STRENGTH), scratch[1]);
  let sum = rule.output[0] as number;
  for (let k = 0; k < rule.views.length; k += 1) {
    sum += Math.max(viewShare(rule, k, strongest), viewShare(rule, k, weakest));
  }
  return logistic(sum);
}

/** What one view adds to the sum. */
function viewShare(
  { centre, scale, views, output }: PassageRule,
  k: number,
  values: ArrayLike<number>,
): number {
  const weights = views[k] as readonly number[];
  let weighed = 0;
  for (let j = 0; j < weights.length; j += 1) {
    const scaled = ((values[j] as number) - (centre[j] as number)) / (scale[j] as number);
    weighed += (weights[j] as number) * Math.max(-4, Math.min(4, scaled));
  }
  return (output[k + 1] as number) * Math.tanh(weighed);
}

const logistic = (sum: number): number => 1 / (1 + Math.exp(-sum));
