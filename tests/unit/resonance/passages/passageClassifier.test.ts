import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { PassageEvidence } from '../../../../src/resonance/passages/passageFeatures.ts';
import { blankEvidence } from '../../../../src/resonance/passages/passageFeatures.ts';
import {
  passageProbability,
  probabilityAtMost,
  RULE_TERMS,
} from '../../../../src/resonance/passages/perceptron.ts';
import { LIVE_RULE, SECOND_LOOK_RULE } from '../../../../src/resonance/passages/perceptronWeights.ts';

const between = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const anyEvidence: fc.Arbitrary<PassageEvidence> = fc.record({
  ...(Object.fromEntries(Object.keys(blankEvidence()).map((key) => [key, between(-6, 9)])) as unknown as {
    [Key in keyof PassageEvidence]: fc.Arbitrary<number>;
  }),
  roundness: between(0, 0.5),
  loop: between(0, 1.5),
  peakPower: between(1e-9, 1),
});

describe('the rule on passages', () => {
  it.each([
    ['live', LIVE_RULE],
    ['second look', SECOND_LOOK_RULE],
  ])('%s has a weight for each term in each view', (_, rule) => {
    expect(rule.centre).toHaveLength(RULE_TERMS);
    expect(rule.scale).toHaveLength(RULE_TERMS);
    expect(rule.views.every((weights) => weights.length === RULE_TERMS)).toBe(true);
    expect(rule.output).toHaveLength(rule.views.length + 1);
  });

  it('is never surer than the bound says, however strong the strongest turns out to be', () => {
    let tight = 0;
    fc.assert(
      fc.property(anyEvidence, between(0, 3), between(0, 8), (evidence, known, more) => {
        const soFar = evidence.peakPower * Math.exp(known);
        const most = probabilityAtMost(SECOND_LOOK_RULE, evidence, { peakPower: soFar });
        const stronger = { peakPower: soFar * Math.exp(more) };
        const found = passageProbability(SECOND_LOOK_RULE, evidence, stronger);
        expect(found).toBeLessThanOrEqual(most + 1e-12);
        if (most < 0.35) tight += 1;
      }),
      { numRuns: 500 },
    );
    // And the bound is worth something: much is put aside by it.
    expect(tight).toBeGreaterThan(50);
  });
});
