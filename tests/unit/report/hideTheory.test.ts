import { describe, expect, it } from 'vitest';
import { compareGroups } from '../../../src/session/experiment/comparedGroups.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import {
  comparisonWithoutTheory,
  factsWithoutTheory,
  hidesTheory,
  stepsWithoutTheory,
  warningsWithoutTheory,
} from '../../../src/report/hideTheory.ts';
import { resultLines } from '../../../src/words/result.ts';
import type { Solution, SolverWarning } from '../../../src/solver/solution.ts';
import { comparisonWords, groupNames } from '../../../src/words/comparison.ts';
import { markNames } from '../../../src/words/markNames.ts';
import { solverWarningWords } from '../../../src/words/solverWarnings.ts';
import { workingStepWords } from '../../../src/words/workingSteps.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

const air = {
  temperatureStandardUncertaintyC: 0.5,
  humidityPct: 45,
  pressurePa: null,
  filling: 'air' as const,
  co2MoleFraction: null,
};
const lesson = { task: '', hideExpected: true, hideTheory: true, hideTruth: true };
/** Steps of half a wavelength that air at 21 °C doesn't have: 2 · 0.36 m · 512 Hz = 369 m/s. */
const faulty: Experiment = {
  ...exampleExperiment([
    exampleMark('a', { lengthM: 0.17 }),
    exampleMark('b', { lengthM: 0.53 }),
    exampleMark('c', { lengthM: 0.89 }),
    exampleMark('d', { lengthM: 0.157, placeId: 'place-2' }),
    exampleMark('e', { lengthM: 0.4925, placeId: 'place-2' }),
  ]),
  tube: { diameterM: 0.035, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1 },
  places: [
    { id: 'place-1', name: 'Lab', temperatureC: 21, ...air },
    { id: 'place-2', name: 'Cold store', temperatureC: 4, ...air },
  ],
  lesson,
};

describe('where a lesson keeps theory back', () => {
  const solution = solveExperiment(faulty).places[0]?.solution;
  if (solution === undefined || solution.speedMps === null) throw new Error('The example has no result.');
  const theory = solution.theory?.speedMps.toFixed(1) ?? '';

  it('the lesson says so, and without a lesson nothing is kept back', () => {
    expect(hidesTheory(faulty)).toBe(true);
    expect(hidesTheory({ ...faulty, lesson: { ...lesson, hideTheory: false } })).toBe(false);
    expect(hidesTheory(exampleExperiment())).toBe(false);
  });

  it('warnings that name theory or the speeds that air can have are left out, and no others', () => {
    const inWords = (warnings: readonly SolverWarning[]): readonly string[] =>
      solverWarningWords(warnings, markNames(faulty));
    const all = inWords(solution.warnings);
    const left = inWords(warningsWithoutTheory(solution));
    // The example is worth nothing unless there is something to keep back.
    expect(all.join(' ')).toMatch(/the predicted speed, more|is outside of \d+ to \d+ m\/s/);
    expect(left.join(' ')).not.toMatch(/the predicted speed, more|is outside of/);
    expect(left).toEqual(all.filter((message) => !/the predicted speed, more|is outside of/.test(message)));
  });

  it('the temperature that a speed stands for is left out: it is theory read backwards', () => {
    const places = faulty.places.map((place) => ({ ...place, temperatureC: null }));
    const [unread] = solveExperiment({ ...faulty, places }).places;
    if (unread?.solution.speedMps === null || unread === undefined) throw new Error('No result.');
    const inWords = (warnings: readonly SolverWarning[]): string =>
      solverWarningWords(warnings, markNames(faulty)).join(' ');
    expect(inWords(unread.solution.warnings)).toMatch(/\d °C/);
    expect(inWords(warningsWithoutTheory(unread.solution))).not.toMatch(/\d °C/);
  });

  it('facts and working lose theory’s speed and the difference from it', () => {
    const lines = resultLines(solution);
    expect(JSON.stringify(lines.facts)).toContain(theory);
    expect(JSON.stringify(factsWithoutTheory(lines))).not.toContain(theory);
    const written = (steps: Solution['working']): string => JSON.stringify(steps.map(workingStepWords));
    expect(written(solution.working)).toContain(theory);
    expect(written(stepsWithoutTheory(solution.working))).not.toContain(theory);
  });

  it('a comparison says whether the difference is real, but not what theory expects', () => {
    const [pair] = compareGroups(faulty, { by: 'place', oneId: null, from: 0 }).pairs;
    if (pair === undefined || pair.differenceMps === null) throw new Error('Nothing was compared.');
    const nameGroup = groupNames(faulty, 'place');
    expect(comparisonWords(pair, nameGroup)).toContain('Theory predicts');
    const without = comparisonWords(comparisonWithoutTheory(pair), nameGroup);
    expect(without).toMatch(/\(95 %\)\. (The difference is real|These marks show no real difference)\.$/);
    expect(without).not.toContain('Theory');
  });

  it('a place whose name speaks of theory keeps its name', () => {
    const places = faulty.places.map((place) => ({
      ...place,
      name: `${place.name}. Theory predicts nothing`,
    }));
    const named = { ...faulty, places };
    const [pair] = compareGroups(named, { by: 'place', oneId: null, from: 0 }).pairs;
    if (pair === undefined || pair.differenceMps === null) throw new Error('Nothing was compared.');
    expect(comparisonWords(comparisonWithoutTheory(pair), groupNames(named, 'place'))).toContain(
      'Cold store. Theory predicts nothing',
    );
  });
});
