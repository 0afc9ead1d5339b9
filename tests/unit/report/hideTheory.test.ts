import { describe, expect, it } from 'vitest';
import { compareGroups } from '../../../src/session/benchCompare.ts';
import { solveExperiment } from '../../../src/session/benchSolve.ts';
import {
  factsWithoutTheory,
  hidesTheory,
  statementWithoutTheory,
  stepsWithoutTheory,
  warningsWithoutTheory,
} from '../../../src/report/hideTheory.ts';
import { resultLines } from '../../../src/report/resultLines.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

const air = { temperatureStandardUncertaintyC: 0.5, humidityPct: 45, pressurePa: null };
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
  tube: { diameterM: 0.035, travelM: 1 },
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
    const all = solution.warnings.map(({ message }) => message);
    const left = warningsWithoutTheory(solution);
    // The example is worth nothing unless there is something to keep back.
    expect(all.join(' ')).toMatch(/theory for this air|is outside of \d+–\d+ m\/s/);
    expect(left.join(' ')).not.toMatch(/theory for this air|is outside of/);
    expect(left).toEqual(all.filter((message) => !/theory for this air|is outside of/.test(message)));
  });

  it('facts and working lose theory’s speed and the difference from it', () => {
    const lines = resultLines(solution);
    expect(JSON.stringify(lines.facts)).toContain(theory);
    expect(JSON.stringify(factsWithoutTheory(lines))).not.toContain(theory);
    expect(JSON.stringify(solution.working)).toContain(theory);
    expect(JSON.stringify(stepsWithoutTheory(solution.working))).not.toContain(theory);
  });

  it('a comparison says whether the difference is real, but not what theory expects', () => {
    const [pair] = compareGroups(faulty, { by: 'place', oneId: null, from: 0 }).pairs;
    if (pair === undefined || pair.differenceMps === null) throw new Error('Nothing was compared.');
    expect(pair.statement).toContain('Theory expects');
    expect(statementWithoutTheory(pair)).toMatch(/\(95 %\): (a real difference|no difference that).*\.$/);
    expect(statementWithoutTheory(pair)).not.toContain('Theory');
  });
});
