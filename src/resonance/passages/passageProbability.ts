import type { PassageFeatures } from './passageFeatures.ts';
import { perceptronOutput, perceptronOutputAtMost } from './perceptron.ts';
import type { Perceptron } from './perceptron.ts';

/** A network that tells passages from all else, and from which probability on it is believed. */
export interface PassageClassifier extends Perceptron {
  /** Least probability that is flagged. */
  readonly threshold: number;
}

/** Weaker than this beside the strongest, ln of the powers' ratio, makes no difference. */
const LEAST_STRENGTH = -5;

/** How many inputs the network has. */
export const CLASSIFIER_INPUTS = 19;

/**
 * The network's inputs for one candidate.
 * @param strongestPower  peak power of the strongest of the recording so far; 0 where there was none yet: then the
 *   candidate is compared with itself
 */
export function classifierInputs(e: PassageFeatures, strongestPower: number): number[] {
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
    Math.max(LEAST_STRENGTH, Math.log(e.peakPower / Math.max(strongestPower, e.peakPower))),
    // A voice brings its other harmonics,
    Math.max(-8, Math.min(3, e.harmonicNeighbourRatio)),
    // and noise beside the fork's frequency flares up with a knock or a syllable.
    Math.max(-2, Math.min(3, e.noiseBurstRatio)),
    // What is judged early must be clearer.
    e.lookAhead,
  ];
}

/** Probability that this is a passage through a resonance, 0..1. */
export const passageProbability = (
  network: Perceptron,
  features: PassageFeatures,
  strongestPower: number,
): number => perceptronOutput(network, classifierInputs(features, strongestPower));

/** A bound: the probability is no higher, however strong the strongest turns out to be. */
export const probabilityAtMost = (
  network: Perceptron,
  features: PassageFeatures,
  strongestPower: number,
): number =>
  perceptronOutputAtMost(
    network,
    classifierInputs(features, strongestPower),
    classifierInputs(features, features.peakPower * Math.exp(-LEAST_STRENGTH)),
  );
