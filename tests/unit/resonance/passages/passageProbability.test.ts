import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  CLASSIFIER_INPUTS,
  certaintyOf,
  classifierInputs,
  flagProbability,
  passageScore,
  scoreAtMost,
} from '../../../../src/resonance/passages/passageProbability.ts';
import { NONE_YET } from '../../../../src/resonance/passages/candidates.ts';
import type { PassageFeatures } from '../../../../src/resonance/passages/passageFeatures.ts';
import { perceptronOutput } from '../../../../src/resonance/passages/perceptron.ts';
import { PATH_LENGTH } from '../../../../src/resonance/passages/phasorPath.ts';
import {
  OFFLINE_CLASSIFIER,
  ONLINE_CLASSIFIER,
} from '../../../../src/resonance/passages/perceptronWeights.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const anyLog = between(-6, 9);
const anyFeatures: fc.Arbitrary<PassageFeatures> = fc.record({
  peakIndex: anyLog,
  middle: anyLog,
  statistic: anyLog,
  signalToNoise: anyLog,
  goodnessOfFit: anyLog,
  peakToBackground: anyLog,
  toneBefore: anyLog,
  toneAfter: anyLog,
  riseOverBefore: anyLog,
  riseOverAfter: anyLog,
  logHalfWidth: anyLog,
  lookAhead: anyLog,
  circularity: between(0, 0.5),
  enclosedArea: between(0, 1.5),
  noiseBurstRatio: anyLog,
  harmonicNeighbourRatio: anyLog,
  phaseReturn: anyLog,
  steadyBefore: anyLog,
  steadyAfter: anyLog,
  prominence: anyLog,
  higherBeside: anyLog,
  talkAround: anyLog,
  handedness: anyLog,
  peakOverUsual: anyLog,
  unsteadiness: anyLog,
  onset: between(0, 9),
  sinceOnset: anyLog,
  attack: between(0, 9),
  release: between(0, 9),
  burst: between(0, 9),
  offBefore: anyLog,
  offAfter: anyLog,
  path: fc.array(between(-2, 2), { minLength: PATH_LENGTH, maxLength: PATH_LENGTH }),
  peakPower: between(1e-9, 1),
  sidePower: anyLog,
  noisePower: between(1e-9, 1),
});

describe('the classifier of passages', () => {
  it.each([
    ['online', ONLINE_CLASSIFIER],
    ['offline', OFFLINE_CLASSIFIER],
  ])('%s has a weight for each input in each hidden unit', (_, network) => {
    expect(network.mean).toHaveLength(CLASSIFIER_INPUTS);
    expect(network.scale).toHaveLength(CLASSIFIER_INPUTS);
    expect(network.hidden.every((weights) => weights.length === CLASSIFIER_INPUTS)).toBe(true);
    expect(network.output).toHaveLength(network.hidden.length + 1);
  });

  it.each([
    ['online', ONLINE_CLASSIFIER, 2],
    ['offline', OFFLINE_CLASSIFIER, 1],
  ])('%s tells a higher probability for a higher output, in each judgement', (_, classifier, judgements) => {
    expect(classifier.calibration).toHaveLength(judgements);
    for (let judgement = 0; judgement < judgements; judgement += 1) {
      const told = [0, 0.3, 0.7, 0.95, 1].map((score) => flagProbability(classifier, score, judgement));
      expect(told).toEqual([...told].sort((a, b) => a - b));
      expect(told[0]).toBeGreaterThan(0);
      expect(told[4]).toBeLessThan(1);
    }
  });

  it('is sure from a higher output on than it flags', () => {
    for (const classifier of [ONLINE_CLASSIFIER, OFFLINE_CLASSIFIER]) {
      const { threshold, sureThreshold } = classifier;
      expect(sureThreshold).toBeGreaterThan(threshold);
      expect(certaintyOf(classifier, threshold)).toBe('maybe');
      expect(certaintyOf(classifier, sureThreshold)).toBe('sure');
    }
  });

  it('takes the mean for what can’t be told', () => {
    for (const network of [ONLINE_CLASSIFIER, OFFLINE_CLASSIFIER]) {
      const inputs = network.mean.map((mean, i) => mean + 0.5 * network.scale[i]);
      const last = inputs.length - 1;
      const untold = inputs.with(last, NaN);
      expect(perceptronOutput(network, untold)).toBe(
        perceptronOutput(network, inputs.with(last, network.mean[last])),
      );
      expect(perceptronOutput(network, untold)).not.toBe(perceptronOutput(network, inputs));
    }
  });

  it('has as many inputs as it says', () => {
    const [features] = fc.sample(anyFeatures, 1);
    expect(classifierInputs(features, NONE_YET)).toHaveLength(CLASSIFIER_INPUTS);
  });

  it('is never surer than the bound says, however strong the strongest turns out to be', () => {
    let tight = 0;
    fc.assert(
      fc.property(anyFeatures, between(0, 3), between(0, 8), between(0, 3), between(0, 6), (...drawn) => {
        const [features, known, more, rise, louder] = drawn;
        const soFar = { peakPower: features.peakPower * Math.exp(known), rise };
        const most = scoreAtMost(OFFLINE_CLASSIFIER, features, soFar);
        const found = passageScore(OFFLINE_CLASSIFIER, features, {
          peakPower: soFar.peakPower * Math.exp(more),
          rise: rise + louder,
        });
        expect(found).toBeLessThanOrEqual(most + 1e-12);
        if (most < 0.35) tight += 1;
      }),
      { numRuns: 500 },
    );
    // And the bound is worth something: much is put aside by it.
    expect(tight).toBeGreaterThan(50);
  });
});
