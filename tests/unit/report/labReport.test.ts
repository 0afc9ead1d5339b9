import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labReportFile } from '../../../src/report/labReport/labReportFile.ts';
import { comparedGroups, comparePairs } from '../../../src/session/benchCompare.ts';
import { solveExperiment } from '../../../src/session/benchSolve.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { anyExperiment } from '../../support/anyExperiment.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

const place = {
  id: 'place-1',
  name: 'Lab',
  temperatureC: 21,
  temperatureStandardUncertaintyC: 0.5,
  humidityPct: 45,
  pressurePa: null,
};
const three: Experiment = {
  ...exampleExperiment([
    exampleMark('a', { lengthM: 0.158 }),
    exampleMark('b', { lengthM: 0.4925, note: '<img src=x onerror=alert(1)>' }),
    exampleMark('c', { lengthM: 0.828 }),
  ]),
  places: [place],
  tube: { diameterM: 0.03, travelM: 1 },
};

function fileOf(experiment: Experiment): string {
  return labReportFile({
    experiment,
    places: solveExperiment(experiment).places,
    comparisons: comparePairs(comparedGroups(experiment, 'place')).flatMap((pair) =>
      pair.differenceMps === null ? [] : [pair],
    ),
  });
}

function documentOf(experiment: Experiment): Document {
  return new DOMParser().parseFromString(fileOf(experiment), 'text/html');
}

describe('labReportFile', () => {
  it('has every part that a lab report has, in order', () => {
    const headings = [...documentOf(three).querySelectorAll('h2')].map((heading) => heading.textContent);
    expect(headings).toEqual([
      'Result: speed of sound in free air',
      'Apparatus',
      'Method',
      'Marks',
      'Plots',
      'Working',
      'Uncertainty budget',
      'Comparison with theory',
      'Warnings',
      'Cautions',
      'Discussion',
    ]);
  });

  it('says the result, each length, and keeps empty lines for names', () => {
    const body = documentOf(three).body;
    expect(body.querySelector('.result')?.textContent).toMatch(/^c = \(34\d\.\d+ ± \d\.\d+\) m\/s$/);
    const lengths = [...body.querySelectorAll('.marks tbody tr')].map((row) => row.children[2]?.textContent);
    expect(lengths).toEqual(['15.80', '49.25', '82.80']);
    expect([...body.querySelectorAll('.blank')].map((line) => line.textContent)).toEqual([
      'Names',
      'Class and date',
    ]);
    expect(body.querySelectorAll('svg')).toHaveLength(3);
  });

  it('says which resonance was passed again', () => {
    const again = { ...three, marks: [...three.marks, exampleMark('d', { repeatOf: 'b' })] };
    const last = [...documentOf(again).querySelectorAll('.marks tbody tr')].at(-1);
    expect(last?.textContent).toContain('the resonance of mark 2 passed again');
  });

  it('takes the same length twice, as a file may give it, for one', () => {
    const twice = exampleMark('a', { lengthM: 0.158, otherLengthM: 0.158 });
    const text = documentOf({ ...three, marks: [twice] }).body.textContent;
    expect(text).toContain('15.80');
    expect(text).not.toMatch(/between both|15.80 to/);
  });

  it('keeps theory back where the lesson does', () => {
    const lesson = { task: 'Find c.', hideExpected: true, hideTheory: true, hideTruth: true };
    const text = documentOf({ ...three, lesson }).body.textContent;
    expect(text).toContain('Theory is not shown in this lesson.');
    expect(text).not.toMatch(/344\.[45]\d? ±|Cramer|Difference from theory/);
    expect(documentOf(three).body.textContent).toMatch(/Cramer/);
  });

  it('says how places differ, by their names', () => {
    const yard = { ...place, id: 'place-2', name: 'Yard', temperatureC: 4 };
    const marks = [...three.marks, exampleMark('d', { lengthM: 0.153, placeId: 'place-2' })];
    const text = documentOf({ ...three, places: [place, yard], marks }).body.textContent;
    expect(text).toMatch(/(in Lab than in Yard|Lab and Yard differ by).*Theory expects/);
  });

  it('is one file on its own: no script, no address, nothing that people typed becomes markup', () => {
    fc.assert(
      fc.property(anyExperiment, (experiment) => {
        const hostile = {
          ...experiment,
          title: `</title><script>${experiment.title}`,
          note: '"><svg onload=x>',
        };
        const page = new DOMParser().parseFromString(fileOf(hostile), 'text/html');
        expect(
          page.querySelectorAll('script, link, img, iframe, object, embed, form, a, base, image, use'),
        ).toHaveLength(0);
        for (const element of page.querySelectorAll('*')) {
          for (const { name, value } of element.attributes) {
            expect(name).not.toMatch(/^on|^src$|^href$|^style$/);
            if (name !== 'xmlns') expect(value).not.toMatch(/https?:|url\(|javascript:/i);
          }
        }
      }),
      { numRuns: 15 },
    );
  }, 60_000);
});
