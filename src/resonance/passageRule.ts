import type { PassageEvidence } from './passageEvidence.ts';

/** Weights of the rule's terms, in the order of RULE_TERMS, with the least probability that is flagged. */
export interface PassageRule {
  readonly weights: readonly number[];
  readonly threshold: number;
}

const atMost = (value: number, limit: number): number => Math.min(value, limit);

/** Every term of the rule: a name, the reason why it is there, and how it comes from the evidence. */
export const RULE_TERMS: readonly {
  readonly name: string;
  readonly why: string;
  readonly value: (evidence: PassageEvidence, strongestPower: number) => number;
}[] = [
  { name: 'constant', why: 'how rare a passage is among all that is looked at', value: () => 1 },
  { name: 'signalToNoise', why: 'stands out of the room', value: (e) => atMost(e.signalToNoise, 8) },
  { name: 'fit', why: 'looks like a resonator swept through the pitch', value: (e) => e.fit },
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
    value: (e, strongestPower) => Math.max(-5, Math.log(e.peakPower / strongestPower)),
  },
];

/** The terms' values for one piece of evidence. @param strongestPower  peak power of the strongest so far, > 0 */
export function ruleValues(evidence: PassageEvidence, strongestPower: number): number[] {
  return RULE_TERMS.map((term) => term.value(evidence, strongestPower));
}

/** Probability that this is a passage through a resonance: a logistic rule on the terms, 0..1. */
export function passageProbability(
  rule: PassageRule,
  evidence: PassageEvidence,
  strongestPower: number,
): number {
  let sum = 0;
  ruleValues(evidence, strongestPower).forEach((value, i) => {
    sum += value * (rule.weights[i] as number);
  });
  return 1 / (1 + Math.exp(-sum));
}
