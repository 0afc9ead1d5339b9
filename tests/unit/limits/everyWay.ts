import { expect } from 'vitest';
import { solveTable } from '../../../src/cli/solveTable.ts';
import { readFile } from '../../../src/intake/readFile.ts';
import { experimentFromRows } from '../../../src/intake/takeRows.ts';
import type { MarkRow } from '../../../src/marks/markRow.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import {
  lessonExperiment,
  lessonFault,
  lessonHash,
  planOf,
  readLessonHash,
} from '../../../src/notebook/lessonLink.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { labReportFile } from '../../../src/report/labReport/labReportFile.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { measuredMarks } from '../../../src/notebook/measuredMarks.ts';
import { plotPicture } from '../../../src/report/plots/picture.ts';
import { PRINT_PALETTE } from '../../../src/report/plots/plot.ts';
import { placeSpeeds, temperaturePlot } from '../../../src/report/plots/temperaturePlot.ts';
import { compareGroups } from '../../../src/session/experiment/comparedGroups.ts';
import { nextMarksHere } from '../../../src/session/experiment/nextMarks.ts';
import type { Outcome } from '../../../src/session/experiment/outcome.ts';
import { PracticeRun } from '../../../src/session/hearing/practiceRun.ts';
import { predictColumn } from '../../../src/session/experiment/predictColumn.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import {
  gasFromSpeed,
  frequencyFromSpeed,
  temperatureFromSpeed,
} from '../../../src/session/experiment/turnRound.ts';
import { columnGeometry, ruleTicks } from '../../../src/ui/stage/columnGeometry.ts';
import { nodesAndAntinodes, standingWave, stemsOf } from '../../../src/ui/stage/columnScene.ts';
import { columnWords } from '../../../src/words/page/columnPicture.ts';
import { svgAddress } from '../../../src/ui/parts/svgAddress.ts';
import { EXAMPLE_TIME } from '../notebook/exampleExperiment.ts';
import { MemoryStore } from '../notebook/memoryStore.ts';
import { benchInTest } from '../session/benchInTest.ts';

export function outside() {
  let count = 0;
  return { newId: () => `new-${(count += 1)}`, now: EXAMPLE_TIME };
}

/** What can be done with an experiment that was accepted: all of it works. */
export async function expectEveryWay(experiment: Experiment): Promise<void> {
  await expectFile(experiment);
  await expectStored(experiment);
  const outcome = solveExperiment(experiment);
  expectAnalysis(experiment, outcome);
  expectDrawn(experiment, outcome);
  await expectTable(experiment, outcome);
  await expectLesson(experiment);
}

async function expectFile(experiment: Experiment): Promise<void> {
  const intake = await readFile(new File([experimentJson(experiment)], 'x.json'));
  expect(intake.faults).toEqual([]);
  expect(intake.content).toEqual({ kind: 'experiment', experiment });
}

/** The next visit begins with it, and a change is kept. */
async function expectStored(experiment: Experiment): Promise<void> {
  const store = new MemoryStore([experiment]);
  const bench = benchInTest({ openStore: () => Promise.resolve(store) });
  await bench.restore();
  expect(bench.notice).toBeNull();
  expect(bench.experiment).toEqual(experiment);
  expect(bench.change('rename', (state) => ({ ...state, title: 'Another' }))).toBe(true);
  await bench.keeping.idle();
  expect(readExperiment(store.experiment(experiment.id))).toEqual({
    kind: 'experiment',
    experiment: bench.experiment,
  });
}

function expectAnalysis(experiment: Experiment, outcome: Outcome): void {
  for (const { solution } of outcome.places) {
    // Every mark is used: none is outside of what the solver takes.
    expect(solution.warnings.map(({ code }) => code)).not.toContain('bad-mark');
    if (solution.speedMps !== null) expect(Number.isFinite(solution.expandedUncertaintyMps)).toBe(true);
  }
  for (const by of ['fork', 'ends'] as const)
    expect(compareGroups(experiment, { by, oneId: null, from: 0 }).by).toBe(by);
  frequencyFromSpeed(experiment);
  temperatureFromSpeed(experiment, outcome);
  gasFromSpeed(experiment, outcome);
  nextMarksHere(experiment);
  const prediction = predictColumn(experiment, outcome);
  expect(prediction.wavelengthM).toBeGreaterThan(0);
  expect(prediction.endCorrectionM).toBeGreaterThan(-1);
}

function expectDrawn(experiment: Experiment, outcome: Outcome): void {
  const prediction = predictColumn(experiment, outcome);
  for (const widthPx of [320, 1400]) {
    const geometry = columnGeometry(widthPx, experiment.tube.travelM);
    const ticks = ruleTicks(geometry);
    expect(ticks.length).toBeGreaterThan(1);
    expect(ticks.length).toBeLessThan(600);
    expect(ticks.every(({ atPx }) => Number.isFinite(atPx))).toBe(true);
  }
  const lengthM = experiment.tube.travelM / 2;
  expect(standingWave(prediction, lengthM, 'pressure').every(({ size }) => size >= 0)).toBe(true);
  nodesAndAntinodes(prediction, lengthM);
  expect(columnWords(experiment, lengthM, stemsOf(experiment, outcome))).not.toContain('NaN');
  const report = labReportFile({
    experiment,
    places: outcome.places,
    comparisons: compareGroups(experiment, { by: 'place', oneId: null, from: 0 }).pairs.flatMap((pair) =>
      pair.differenceMps === null ? [] : [pair],
    ),
  });
  expect(report).not.toMatch(/NaN|undefined/);
  const byTemperature = plotPicture(temperaturePlot(placeSpeeds(experiment, outcome.places)));
  expect(svgAddress(byTemperature.svg(PRINT_PALETTE, false))).not.toMatch(/NaN|undefined/);
  const practice = new PracticeRun(experiment, 1);
  practice.column.strike();
  expect(practice.column.render(480).every(Number.isFinite)).toBe(true);
  const elsewhere = new PracticeRun(
    {
      ...experiment,
      tube: { diameterM: null, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1 },
    },
    1,
  );
  elsewhere.follow(experiment);
}

/** The table comes in again on the page and is solved on the command line. */
async function expectTable(experiment: Experiment, outcome: Outcome): Promise<void> {
  // A table without a row is none.
  if (experiment.marks.every(({ lengthM }) => lengthM === null)) return;
  const csv = marksCsv(experiment);
  const rows = await rowsOf(csv);
  expect(rows).toHaveLength(measuredMarks(experiment).length);
  // None vanishes.
  expect(rows).toHaveLength(experiment.marks.filter(({ lengthM }) => lengthM !== null).length);
  const taken = experimentFromRows('x', rows, outside());
  expect(taken.faults).toEqual([]);
  expect(readExperiment(JSON.parse(experimentJson(taken.experiment)))).toEqual({
    kind: 'experiment',
    experiment: taken.experiment,
  });
  const answer = solveTable(csv);
  const isWithoutSpeed = outcome.places.every(({ solution }) => solution.speedMps === null);
  if ('error' in answer) expect(isWithoutSpeed, answer.error).toBe(true);
}

async function expectLesson(experiment: Experiment): Promise<void> {
  const plan = planOf(experiment, { task: 'Two.', hideExpected: false, hideTheory: true, hideTruth: true });
  const hash = await lessonHash(plan);
  expect(lessonFault(plan, hash)).toBeNull();
  const arrived = await readLessonHash(hash);
  if (arrived === null || 'fault' in arrived) throw new Error('a lesson was sent');
  // Forks and places are numbered anew, and the lesson gets an id.
  const numbered = (list: readonly object[], name: string) =>
    list.map((one, index) => ({ ...one, id: `${name}-${index + 1}` }));
  expect(arrived).toMatchObject({
    plan: { ...plan, forks: numbered(plan.forks, 'fork'), places: numbered(plan.places, 'place') },
    unheardHz: [],
  });
  const lesson = lessonExperiment(arrived.plan, 'lesson', EXAMPLE_TIME);
  expect(readExperiment(JSON.parse(experimentJson(lesson)))).toEqual({
    kind: 'experiment',
    experiment: lesson,
  });
}

export async function rowsOf(csv: string): Promise<readonly MarkRow[]> {
  const { content, faults } = await readFile(new File([csv], 'x.csv'));
  expect(faults).toEqual([]);
  if (content?.kind !== 'table') throw new Error('a table was written');
  return content.rows;
}
