import { describe, expect, it } from 'vitest';
import { isUnsure } from '../../../src/marks/unsureMark.ts';
import { certaintyOf, flagProbability } from '../../../src/resonance/passages/passageProbability.ts';
import { OFFLINE_CLASSIFIER, ONLINE_CLASSIFIER } from '../../../src/resonance/passages/perceptronWeights.ts';
import { EXAMPLE_EVIDENCE, exampleMark } from '../notebook/exampleExperiment.ts';

const heardWith = (confidence: number) => exampleMark('a', { evidence: { ...EXAMPLE_EVIDENCE, confidence } });

describe('a mark that may be no resonance', () => {
  it('is what the detector would only call a maybe, at each judgement, within 5 %', () => {
    for (const classifier of [ONLINE_CLASSIFIER, OFFLINE_CLASSIFIER]) {
      for (const judgement of classifier.calibration.keys()) {
        const probabilityOf = (score: number) => flagProbability(classifier, score, judgement);
        const { sureThreshold } = classifier;
        expect(certaintyOf(classifier, sureThreshold)).toBe('sure');
        expect(isUnsure(heardWith(probabilityOf(sureThreshold) + 0.05))).toBe(false);
        expect(isUnsure(heardWith(probabilityOf(sureThreshold) - 0.05))).toBe(true);
      }
    }
  });

  it('is none that was made by hand', () => {
    expect(isUnsure(exampleMark('a', { evidence: null }))).toBe(false);
  });
});
