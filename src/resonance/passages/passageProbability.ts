import type { Strongest } from './candidates.ts';
import { riseOf } from './candidates.ts';
import type { PassageFeatures } from './passageFeatures.ts';
import { logistic, logOdds, perceptronOutput, perceptronOutputAtMost } from './perceptron.ts';
import type { Perceptron } from './perceptron.ts';
import { PATH_LENGTH } from './phasorPath.ts';

/** What a flag says of itself: a sure one can be relied on, the other is for a person to decide. */
export type Certainty = 'sure' | 'maybe';

/** How a network's output becomes a probability: the log-odds are `offset` + `slope` × the output's log-odds. */
export interface Calibration {
  readonly offset: number;
  readonly slope: number;
}

/** A network that tells passages from all else, and from which output on it is believed. */
export interface PassageClassifier extends Perceptron {
  /** Least output that is flagged. */
  readonly threshold: number;
  /** Least output of a flag that is sure. */
  readonly sureThreshold: number;
  /** One for each judgement, see lookAheads.ts; the offline detector has one. */
  readonly calibration: readonly Calibration[];
}

/** Weaker than this beside the strongest, ln of the powers' ratio, makes no difference. */
const LEAST_STRENGTH = -5;

/** A rise that is smaller by more than this, ln, makes no difference. */
const LEAST_RISE = -4;

/** How many inputs the network has. */
export const CLASSIFIER_INPUTS = 36 + PATH_LENGTH;

/**
 * The network's inputs for one candidate; NaN where one can't be told.
 * @param strongest  of the recording so far; where there was none yet, the candidate is compared with itself
 */
export function classifierInputs(e: PassageFeatures, strongest: Strongest): number[] {
  return [
    // How rare a passage is among all that is looked at.
    1,
    // It stands out of room and misfit alike,
    e.statistic,
    // out of the room,
    Math.min(e.signalToNoise, 8),
    // looks like a resonator swept through the frequency,
    e.goodnessOfFit,
    // and far more so than all else around it.
    Math.min(e.peakToBackground, 4),
    // The fork sounded before,
    Math.min(e.toneBefore, 5),
    // and still after;
    Math.min(e.toneAfter, 5),
    // it was louder than before
    Math.min(e.riseOverBefore, 4),
    // and than after;
    Math.min(e.riseOverAfter, 4),
    // a step (strike, approach, damping) is louder than one side only.
    Math.min(e.riseOverBefore, e.riseOverAfter, 3),
    // Short events are more often chance;
    e.logHalfWidth,
    // a good fit says more over many values.
    e.goodnessOfFit * e.logHalfWidth,
    // The phase turns, while an amplitude alone stays on a line;
    Math.log(0.01 + e.circularity),
    // the path encloses a circle at whatever speed,
    Math.log(0.05 + e.enclosedArea),
    // and ends at the phase that it began with.
    e.phaseReturn,
    // Weak beside the strongest of this recording.
    Math.max(LEAST_STRENGTH, Math.log(e.peakPower / Math.max(strongest.peakPower, e.peakPower))),
    // A voice brings its other harmonics,
    Math.max(-8, Math.min(3, e.harmonicNeighbourRatio)),
    // and noise beside the fork's frequency flares up with a knock or a syllable.
    Math.max(-2, Math.min(3, e.noiseBurstRatio)),
    // What is judged early must be clearer.
    e.lookAhead,
    // A fork stands before it,
    Math.max(-2, Math.min(5, e.steadyBefore)),
    // and after it;
    Math.max(-2, Math.min(5, e.steadyAfter)),
    // it stands out of all beside it,
    Math.min(e.prominence, 4),
    // with nothing louder near.
    Math.max(-3, Math.min(2, e.higherBeside)),
    // Amid talk more is chance.
    Math.max(-8, Math.min(3, e.talkAround)),
    // It rose by as much as the others of this recording.
    Math.max(LEAST_RISE, Math.min(0, riseOf(e) - strongest.rise)),
    // It stands above the room's noise.
    Math.min(8, Math.log(e.peakPower / e.noisePower)),
    // Its phase turns one way, and not as well the other;
    Math.max(-2, Math.min(5, e.handedness)),
    // it is louder than what is usual around here,
    Math.max(-2, Math.min(5, e.peakOverUsual)),
    // where the level is steady but for it.
    Math.min(5, e.unsteadiness),
    // A strike, or a fork that is put to the mouth, jumps
    Math.min(6, e.onset),
    // just before.
    e.sinceOnset,
    // A note that is played begins sharply,
    Math.min(4, e.attack),
    // and may be damped,
    Math.min(4, e.release),
    // with a burst beside it,
    Math.min(5, e.burst),
    // and mostly not at the fork's frequency, neither before
    e.offBefore,
    // nor after.
    e.offAfter,
    // The phasor goes round a resonance's circle.
    ...e.path,
  ];
}

/**
 * The network's output for one candidate, 0..1: the surer, the higher. It counts every candidate of a passage, and misses
 * more than false alarms, so it is no probability yet.
 */
export const passageScore = (network: Perceptron, features: PassageFeatures, strongest: Strongest): number =>
  perceptronOutput(network, classifierInputs(features, strongest));

/** A bound: the output is no higher, however strong the strongest turns out to be. */
export const scoreAtMost = (
  network: Perceptron,
  features: PassageFeatures,
  { peakPower, rise }: Strongest,
): number => {
  const highest = {
    peakPower: Math.max(peakPower, features.peakPower * Math.exp(-LEAST_STRENGTH)),
    rise: Math.max(rise, riseOf(features) - LEAST_RISE),
  };
  return perceptronOutputAtMost(network, [
    classifierInputs(features, { peakPower, rise }),
    classifierInputs(features, { peakPower: highest.peakPower, rise }),
    classifierInputs(features, { peakPower, rise: highest.rise }),
    classifierInputs(features, highest),
  ]);
};

/** Probability that what is flagged with such an output is a passage, 0..1. @param judgement  see `judgementOf`, 0 offline */
export function flagProbability(
  { calibration }: PassageClassifier,
  score: number,
  judgement: number,
): number {
  const { offset, slope } = calibration[judgement];
  return logistic(offset + slope * logOdds(score));
}

export const certaintyOf = ({ sureThreshold }: PassageClassifier, score: number): Certainty =>
  score >= sureThreshold ? 'sure' : 'maybe';
