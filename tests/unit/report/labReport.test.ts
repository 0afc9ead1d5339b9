// @vitest-environment happy-dom
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labReportFile } from '../../../src/report/labReport/labReportFile.ts';
import { reportQuestions } from '../../../src/report/labReport/reportQuestions.ts';
import type { LabReportInput } from '../../../src/report/labReport/labReportInput.ts';
import { compareGroups } from '../../../src/session/experiment/comparedGroups.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { anyExperiment } from '../../support/anyExperiment.ts';
import { largeExperiment } from '../../support/largeExperiment.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

const place = {
  id: 'place-1',
  name: 'Lab',
  temperatureC: 21,
  temperatureStandardUncertaintyC: 0.5,
  humidityPct: 45,
  pressurePa: null,
  filling: 'air' as const,
  co2MoleFraction: null,
};
const three: Experiment = {
  ...exampleExperiment([
    exampleMark('a', { lengthM: 0.158 }),
    exampleMark('b', { lengthM: 0.4925, note: '<img src=x onerror=alert(1)>' }),
    exampleMark('c', { lengthM: 0.828 }),
  ]),
  places: [place],
  tube: { diameterM: 0.03, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1 },
};

function comparisonsOf(experiment: Experiment): LabReportInput['comparisons'] {
  const { pairs } = compareGroups(experiment, { by: 'place', oneId: null, from: 0 });
  return pairs.flatMap((pair) => (pair.differenceMps === null ? [] : [pair]));
}

function fileOf(experiment: Experiment): string {
  return labReportFile({
    experiment,
    places: solveExperiment(experiment).places,
    comparisons: comparisonsOf(experiment),
  });
}

function documentOf(experiment: Experiment): Document {
  return new DOMParser().parseFromString(fileOf(experiment), 'text/html');
}

describe('the report of a very large experiment', () => {
  const places = 60;
  // Without a diameter each place has a warning of its own.
  const large: Experiment = {
    ...largeExperiment({ marks: 900, places, forks: 2, seed: 1 }),
    tube: { diameterM: null, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1.2 },
  };
  const html = labReportFile({
    experiment: large,
    places: solveExperiment(large).places,
    comparisons: comparisonsOf(large),
    pairsLeftOut: 1750,
  });
  const { body } = new DOMParser().parseFromString(html, 'text/html');
  const text = body.textContent.replace(/\s+/g, ' ');

  it('prints a part of the marks, places and pairs and says how many are left out, and where they are', () => {
    expect(body.querySelectorAll('.marks tbody tr')).toHaveLength(500);
    expect(text).toContain('Of 900 marks the first 500 are printed; the tables under Records have all.');
    expect(body.querySelectorAll('.working')).toHaveLength(12);
    expect(text).toContain('budget of 48 further places are not printed');
    expect(body.querySelectorAll('.result')).toHaveLength(40);
    expect(text).toContain('20 further places are in the table “Result” under Records.');
    expect(text).toContain('1750 further pairs of places are not printed');
    expect(text).toContain('Further places20, not printed');
    expect(text).toMatch(/\d+ further warnings are not printed\./);
  });

  it('names no point of a picture that has too many for names, and lists some in words', () => {
    expect(text).toContain('and 20 more. There are too many points to name them in the picture.');
    const labels = [...body.querySelectorAll('figure:last-of-type .wide text')].map((one) => one.textContent);
    expect(labels.length).toBeGreaterThan(5);
    expect(labels.filter((label) => label.startsWith('Room'))).toEqual([]);
  });
});

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
      'What the letters mean',
      'Sources',
      'Cautions',
      'Questions',
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
    expect(body.querySelectorAll('.wide > svg')).toHaveLength(4);
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
    expect(text).not.toMatch(/in the middle|15.80 to/);
  });

  it('keeps theory back where the lesson does', () => {
    const lesson = { task: 'Find c.', hideExpected: true, hideTheory: true, hideTruth: true };
    const text = documentOf({ ...three, lesson }).body.textContent;
    expect(text).toContain('This lesson hides the predicted speed.');
    expect(text).not.toMatch(/344\.[45]\d? ±|Cramer|Difference from the prediction/);
    expect(documentOf(three).body.textContent).toMatch(/Cramer/);
  });

  it('says how places differ, by their names', () => {
    const yard = { ...place, id: 'place-2', name: 'Yard', temperatureC: 4 };
    const marks = [...three.marks, exampleMark('d', { lengthM: 0.153, placeId: 'place-2' })];
    const text = documentOf({ ...three, places: [place, yard], marks }).body.textContent;
    expect(text).toMatch(/“Lab” against “Yard”: .*Theory predicts/);
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

describe('what a teacher looks for', () => {
  const solved = solveExperiment(three).places;
  const write = (change: Partial<LabReportInput>): string =>
    labReportFile({ experiment: three, places: solved, comparisons: [], ...change });
  const [{ solution }] = solved as [(typeof solved)[number]];
  if (solution.speedMps === null) throw new Error('The example has no result.');
  const speed = solution.speedMps.toFixed(1);

  it('is there: the apparatus drawn with its lengths, legend, letters, sources and three questions', () => {
    const text = write({});
    expect(text).toMatch(/<title>The apparatus, along its rule to scale<\/title>/);
    for (const cm of ['15.8', '49.3', '82.8']) expect(text).toContain(`>${cm}</text>`);
    expect(text).toContain('30.0 mm wide inside');
    expect(text).toContain('A cross is an outlier');
    for (const name of ['k', 'ν', 'Eₙ']) expect(text).toContain(`<li><strong>${name}</strong>: `);
    for (const source of ['Cramer', 'Levine', 'Keefe', 'JCGM 100:2008']) expect(text).toContain(source);
    const [, questions = ''] = text.split('<h2>Questions</h2>');
    expect(questions.split('</ol>')[0]?.match(/<li>/g)).toHaveLength(3);
    expect(text).toContain('counter(page)');
  });

  it('says group and class, in the file’s title too, escaped', () => {
    const named = { ...three, group: 'Window <b>', className: '9b' };
    const text = write({ experiment: named });
    expect(text).toContain('<title>Air column report, Window &lt;b&gt;, 9b</title>');
    expect(text).toContain('Group: Window &lt;b&gt;');
    expect(text).toContain('Class: 9b');
    expect(text).not.toContain('<b>');
  });

  it('leaves the working to the student: lengths and formulas are there, no result, with room', () => {
    const text = write({ leavesWorking: true });
    expect(write({})).toContain(speed);
    expect(text).not.toContain(speed);
    expect(text).not.toContain(solution.speedMps?.toFixed(2));
    expect(text).toContain('15.80');
    expect(text).toContain('c = ( ________ ± ________ ) m/s');
    expect(text.match(/class="line"/g)?.length).toBeGreaterThan(
      write({}).match(/class="line"/g)?.length ?? 0,
    );
    expect(text).not.toMatch(/Uncertainty budget|Comparison with theory|[Mm]easured minus predicted/);
  });

  it('asks what fits the data: an outlier, one order only, no temperature; theory not where it is hidden', () => {
    const asked = (experiment: Experiment, hideTheory = false) =>
      reportQuestions(experiment, solveExperiment(experiment).places, hideTheory).map(({ code }) => code);
    const one = { ...three, marks: three.marks.slice(0, 1) };
    expect(asked(one)).toContain('one-order');
    const cold = { ...three, places: [{ ...place, temperatureC: null }] };
    expect(asked(cold)).toContain('no-temperature');
    expect(asked(three).some((code) => /theory/.test(code))).toBe(true);
    expect(asked(three, true).some((code) => /theory/.test(code))).toBe(false);
    expect(asked({ ...three, marks: [] })).toEqual([]);
  });
});
