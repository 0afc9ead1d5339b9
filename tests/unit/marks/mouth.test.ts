// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { MOUTH_SHAPES } from '../../../src/air/mouth.ts';
import { solveTable } from '../../../src/cli/solveTable.ts';
import { takeRows } from '../../../src/intake/takeRows.ts';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { parseMouth } from '../../../src/marks/parseMouth.ts';
import { measuredMarks } from '../../../src/notebook/measuredMarks.ts';
import { apparatusPart } from '../../../src/report/labReport/apparatusPart.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { predictColumn } from '../../../src/session/experiment/predictColumn.ts';
import { solverMarks } from '../../../src/session/experiment/solverMarks.ts';
import '../../../src/ui/apparatus/mouthElement.ts';
import { parseFaultWords } from '../../../src/words/parseFaults.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { benchInTest } from '../session/benchInTest.ts';

const HEADING = 'fork_hz,ends,length_cm,diameter_mm,mouth';
const withMouth = (mouth: (typeof MOUTH_SHAPES)[number] | null) => {
  const experiment = exampleExperiment([exampleMark('a', { lengthM: 0.158 })]);
  return { ...experiment, tube: { ...experiment.tube, diameterM: 0.03, mouth } };
};

describe('the mouth in a table', () => {
  it('is read in any spelling of the five words, and may be empty', () => {
    for (const mouth of MOUTH_SHAPES) {
      for (const text of [
        mouth,
        mouth.toUpperCase(),
        ` ${mouth.replace('-', ' ')} `,
        mouth.replace('-', '_'),
      ])
        expect(parseMouth(text)).toEqual({ ok: true, mouth });
    }
    expect(parseMouth(' ')).toEqual({ ok: true, mouth: null });
  });

  it('that is another word is a fault which names the row, the column and the words', () => {
    const answer = solveTable(`${HEADING}\n512,closed,15.8,30,wide\n`);
    if (!('error' in answer)) throw new Error('no tube has a wide mouth');
    expect(answer.error).toContain('row 2, column mouth');
    const fault = parseMouth('wide');
    expect(fault.ok ? '' : parseFaultWords(fault.fault)).toBe(
      '“wide” is not a mouth that this page knows. Write thin-rim, thick-rim, flange, obstructed or ideal, or leave the cell empty.',
    );
  });

  it('reaches the solver: a flange has 0.82 radii where a thin rim has 0.61', () => {
    // Nomura, Yamamura & Inawashiro 1960 and Levine & Schwinger 1948, low frequency; one length alone measures no e.
    const endOf = (mouth: string): number => {
      const answer = solveTable(`${HEADING}\n128,closed,65.8,30,${mouth}\n`);
      if ('error' in answer) throw new Error(answer.error);
      return answer.endCorrectionM;
    };
    expect(endOf('flange') / 0.015).toBeCloseTo(0.8216, 2);
    expect(endOf('thin-rim') / 0.015).toBeCloseTo(0.6133, 2);
    expect(endOf('ideal')).toBeCloseTo(0, 5);
  });

  it('goes out and comes in again; another mouth is another experiment', () => {
    const table = readMarksTable(marksCsv(withMouth('thick-rim')));
    if (!table.ok) throw new Error('a table was written');
    expect(table.rows.map(({ mouth }) => mouth)).toEqual(['thick-rim']);
    const outside = { newId: () => 'new', now: '2030-03-01T10:00:00.000Z' };
    expect(takeRows(withMouth(null), table.rows, outside).experiment.tube.mouth).toBe('thick-rim');
    const { faults, experiment } = takeRows(withMouth('flange'), table.rows, outside);
    expect(faults).toMatchObject([{ row: 2, column: 'mouth' }]);
    expect(experiment.tube.mouth).toBe('flange');
  });
});

describe('the mouth of an experiment', () => {
  it('reaches the solver and the report', () => {
    for (const mouth of [null, ...MOUTH_SHAPES]) {
      const experiment = withMouth(mouth);
      expect(solverMarks(experiment, measuredMarks(experiment))[0]?.mouth).toBe(mouth);
    }
    expect(apparatusPart(withMouth('flange')).text).toContain('mouth: flange');
    expect(apparatusPart(withMouth(null)).text).toContain('mouth not described');
  });

  it('moves what is expected before anything was measured: shorter columns with a flange', () => {
    const firstOf = (mouth: 'flange' | 'ideal') =>
      predictColumn({ ...withMouth(mouth), marks: [] }, { places: [] });
    const flange = firstOf('flange');
    expect(flange.endCorrectionM / 0.015).toBeCloseTo(0.82, 1);
    // L = λ/4 − e.
    const differenceM = (firstOf('ideal').expected[0]?.lengthM ?? 0) - (flange.expected[0]?.lengthM ?? 0);
    expect(differenceM).toBeCloseTo(flange.endCorrectionM, 9);
  });
});

describe('the choice of a mouth under Apparatus', () => {
  it('offers six, each with a picture and a sentence, and takes one', async () => {
    const session = benchInTest();
    const element = document.createElement('bench-mouth');
    element.session = session;
    document.body.append(element);
    await element.updateComplete;
    const labels = [...element.renderRoot.querySelectorAll('label')];
    expect(labels).toHaveLength(6);
    expect(labels.map((label) => label.querySelector('input')?.checked)).toEqual([
      true,
      ...MOUTH_SHAPES.map(() => false),
    ]);
    expect(new Set(labels.map((label) => label.querySelector('svg')?.innerHTML)).size).toBe(6);
    expect(labels[1]?.textContent).toContain('0.61 ± 0.03 radii');
    expect(labels[5]?.textContent).toContain('no end correction');
    const flange = labels[3]?.querySelector('input');
    if (flange === null || flange === undefined) throw new Error('a flange is offered');
    flange.checked = true;
    flange.dispatchEvent(new Event('change'));
    expect(session.experiment.tube.mouth).toBe('flange');
    session.undo();
    await element.updateComplete;
    expect(labels[0]?.querySelector('input')?.checked).toBe(true);
    element.remove();
  });
});
