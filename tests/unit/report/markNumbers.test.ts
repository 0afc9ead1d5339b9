// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { markNumber, ownMarks } from '../../../src/notebook/markList.ts';
import { cueLabel } from '../../../src/words/cueLabel.ts';
import { labReportFile } from '../../../src/report/labReport/labReportFile.ts';
import { fitRows } from '../../../src/report/tables/fitRows.ts';
import { traceRows } from '../../../src/report/tables/traceRows.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

const evidence = {
  ...EXAMPLE_EVIDENCE,
  trace: { startS: 2, stepS: 0.5, toneDb: [-40], roomDb: [-60] },
};
// The first resonance is passed three times before the second is reached: the page numbers them 1, 2 and 3.
const marks = [
  exampleMark('first', { lengthM: 0.158, evidence }),
  exampleMark('back', { repeatOf: 'first', evidence }),
  exampleMark('forth', { repeatOf: 'back', evidence }),
  exampleMark('second', { lengthM: 0.4925, evidence }),
  // 30 cm too long: the solver's messages name it.
  exampleMark('third', { lengthM: 1.128, evidence }),
];
const experiment = {
  ...exampleExperiment(marks),
  tube: { diameterM: 0.03, otherDiameterM: null, mouth: null, stopper: 'piston' as const, travelM: 1.3 },
};
const { places } = solveExperiment(experiment);
const SHOWN = [1, 1, 1, 2, 3];

describe('the number of a mark', () => {
  it('is the one of the page in tables, in the report and in sound files', () => {
    expect(ownMarks(marks).map(({ id }) => id)).toEqual(['first', 'second', 'third']);
    expect(marks.map(({ id }) => markNumber(experiment, id))).toEqual(SHOWN);
    expect(marks.map((mark) => cueLabel(experiment, mark))).toEqual([
      'Mark 1, 512 Hz, closed, 15.80 cm',
      'Mark 1 again, 512 Hz, closed',
      'Mark 1 again, 512 Hz, closed',
      'Mark 2, 512 Hz, closed, 49.25 cm',
      'Mark 3, 512 Hz, closed, 112.80 cm',
    ]);
    expect(
      traceRows(experiment)
        .slice(1)
        .map(([mark, passage]) => [mark, passage]),
    ).toEqual([
      [1, 1],
      [1, 2],
      [1, 3],
      [2, 1],
      [3, 1],
    ]);
    expect(
      fitRows(experiment, places)
        .slice(1)
        .map((row) => row[1]),
    ).toEqual([1, 2, 3]);
    const page = new DOMParser().parseFromString(
      labReportFile({ experiment, places, comparisons: [] }),
      'text/html',
    );
    const numbers = [...page.querySelectorAll('.marks tbody tr')].map((row) => row.children[0]?.textContent);
    expect(numbers).toEqual(['1', '1 again', '1 again', '2', '3']);
  });

  it('leads from the fit back to the mark, a repeat with a length of its own included', () => {
    const typed = marks.map((mark) => (mark.id === 'forth' ? { ...mark, lengthM: 0.159 } : mark));
    const [place] = solveExperiment({ ...experiment, marks: typed }).places;
    if (place === undefined || place.solution.speedMps === null) throw new Error('this example has a result');
    expect(place.solution.marks.map(({ key }) => key)).toEqual(['first', 'forth', 'second', 'third']);
  });
});
