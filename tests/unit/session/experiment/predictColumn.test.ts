import { describe, expect, it } from 'vitest';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { predictColumn } from '../../../../src/session/experiment/predictColumn.ts';
import { solveExperiment } from '../../../../src/session/experiment/solveExperiment.ts';
import { exampleExperiment } from '../../notebook/exampleExperiment.ts';
import { makeMarks } from '../../solver/makeMarks.ts';

const example = exampleExperiment();
const bench: Experiment = {
  ...example,
  places: example.places.map((place) => ({ ...place, temperatureC: 20, humidityPct: 50 })),
  tube: { diameterM: 0.03, otherDiameterM: null, mouth: null, stopper: 'piston' as const, travelM: 0.9 },
  rule: { ...example.rule, zeroOffsetM: 0.012 },
};

describe('predictColumn', () => {
  it('says where the resonances of the travel lie, by theory as long as nothing is measured', () => {
    const { basis, expected } = predictColumn(bench, solveExperiment(bench));
    // The fourth lies beyond the travel.
    const truth = makeMarks([{ hz: 512, orders: [1, 2, 3] }]);
    expect(basis).toBe('theory');
    expect(expected.map(({ order }) => order)).toEqual([1, 2, 3]);
    for (const [i, { lengthM, standardUncertaintyM }] of expected.entries()) {
      expect(Math.abs(lengthM - 0.012 - (truth[i]?.lengthM ?? 0))).toBeLessThan(0.0001);
      expect(standardUncertaintyM).toBeLessThan(0.002);
    }
  });

  it('has none where the travel is too short', () => {
    const short = {
      ...bench,
      tube: { diameterM: null, otherDiameterM: null, mouth: null, stopper: 'piston' as const, travelM: 0.1 },
    };
    expect(predictColumn(short, solveExperiment(short)).expected).toEqual([]);
  });
});
