import type { PassageClassifier } from '../../../src/resonance/passages/passageProbability.ts';

/** Both classifiers, as trained. */
export interface TrainedClassifiers {
  readonly offline: PassageClassifier;
  readonly online: PassageClassifier;
}

/** Text of src/resonance/passages/perceptronWeights.ts, before it is formatted. */
export const weightsFile = ({ offline, online }: TrainedClassifiers): string =>
  `import type { PassageClassifier } from './passageProbability.ts';

/**
 * Trained by tests/bench/detector/fitDetector.ts on recordings of several worlds, inputs in the order of
 * classifierInputs. Do not edit by hand: change the inputs or the worlds, and train anew.
 */
export const OFFLINE_CLASSIFIER: PassageClassifier = ${JSON.stringify(offline)};

export const ONLINE_CLASSIFIER: PassageClassifier = ${JSON.stringify(online)};
`;
