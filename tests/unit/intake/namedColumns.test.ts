import { describe, expect, it } from 'vitest';
import { airFromReadings } from '../../../src/air/airState.ts';
import { speedOfSound } from '../../../src/air/speedOfSound.ts';
import { solveTable } from '../../../src/cli/solveTable.ts';
import { experimentFromRows, takeRows } from '../../../src/intake/takeRows.ts';
import { readMarksTable } from '../../../src/marks/marksTable.ts';
import { parseCo2 } from '../../../src/marks/parseQuantities.ts';
import { airWords } from '../../../src/words/report/labReport.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import { marksOfRows } from '../../../src/solver/marksOfRows.ts';

const NOW = '2030-03-01T10:00:00.000Z';
const outside = () => {
  let count = 0;
  return { newId: () => `new-${(count += 1)}`, now: NOW };
};
function rowsOf(text: string) {
  const table = readMarksTable(text);
  if (!table.ok) throw new Error(JSON.stringify(table.faults));
  return table.rows;
}
const solvedTable = (text: string) => {
  const answer = solveTable(text);
  if ('error' in answer) throw new Error(answer.error);
  return answer;
};

describe('carbon dioxide', () => {
  it('slows sound as Cramer’s coefficients say: 0.0538 m/s from 400 to 1000 ppm in dry air of 20 °C', () => {
    // Cramer 1993, table III: (−85.20931 − 0.228525·20 + 5.91e-5·20²)·0.0006 + 29.179762·(0.001² − 0.0004²).
    const speedAt = (co2MoleFraction: number | null) =>
      speedOfSound(airFromReadings({ temperatureC: 20, humidityPct: 0, co2MoleFraction })).speedMps;
    expect(speedAt(0.001) - speedAt(0.0004)).toBeCloseTo(-0.0538, 4);
    expect(speedAt(null)).toBe(speedAt(0.0004));
  });

  it('that was read is known better than what is usual', () => {
    const { co2StandardUncertainty } = airFromReadings({ temperatureC: 20, co2MoleFraction: 0.001 });
    expect(co2StandardUncertainty).toBeLessThan(airFromReadings({ temperatureC: 20 }).co2StandardUncertainty);
  });

  it('is typed in ppm or %, up to more than a breath has', () => {
    expect(parseCo2('800')).toEqual({ ok: true, co2MoleFraction: 0.0008 });
    expect(parseCo2('0,08 %')).toEqual({ ok: true, co2MoleFraction: 0.0008 });
    expect(parseCo2('4 %')).toEqual({ ok: true, co2MoleFraction: 0.04 });
    expect(parseCo2('60001').ok).toBe(false);
    expect(parseCo2('7 %').ok).toBe(false);
  });

  it('and the thermometer’s own uncertainty go from a table into theory, the experiment and out again', () => {
    const text =
      'fork_hz,ends,length_cm,diameter_mm,temperature_c,temperature_uncertainty_c,co2_ppm\n512,closed,15.8,30,20,2,2500\n512,closed,49.3,30,20,2,2500\n';
    const [mark] = marksOfRows(rowsOf(text));
    expect(mark?.air).toMatchObject({ temperatureStandardUncertaintyC: 2, co2MoleFraction: 0.0025 });
    // dv/dT is 0.6 m/s a kelvin: common practice, no source. What else is uncertain of the air is the same.
    const uncertaintyMps = (table: string): number => solvedTable(table).theory?.standardUncertaintyMps ?? 0;
    const rest = uncertaintyMps(text.replaceAll(',20,2,', ',20,0,'));
    expect(Math.sqrt(uncertaintyMps(text) ** 2 - rest ** 2)).toBeCloseTo(2 * 0.6, 1);
    const { experiment, faults } = experimentFromRows('x', rowsOf(text), outside());
    expect(faults).toEqual([]);
    expect(experiment.places).toMatchObject([
      { temperatureC: 20, temperatureStandardUncertaintyC: 2, co2MoleFraction: 0.0025 },
    ]);
    const again = rowsOf(marksCsv(experiment));
    expect(again[0]).toMatchObject({ temperatureUncertaintyC: 2, co2MoleFraction: 0.0025 });
    // Its own table brings no second place.
    expect(takeRows(experiment, again, outside()).experiment.places).toHaveLength(1);
    const [place] = experiment.places;
    expect(place === undefined ? '' : airWords(place)).toContain('2500 ppm carbon dioxide');
  });
});

describe('the names of forks in a table', () => {
  const heading = 'fork_hz,ends,length_cm,diameter_mm,fork_id\n';
  const forkKeys = (rows: string) => marksOfRows(rowsOf(heading + rows)).map(({ forkKey }) => forkKey);

  it('make one fork of rows with one name, and several of others, whatever their frequencies', () => {
    const [one, other] = forkKeys('512,closed,15.8,30,red\n480,closed,17,30,red\n');
    expect(one).toBe(other);
    const [red, blue] = forkKeys('512,closed,15.8,30,red\n512,closed,15.8,30,blue\n');
    expect(red).not.toBe(blue);
  });

  it('leave rows without one to their frequencies', () => {
    const [first, named, second, far] = forkKeys(
      '512,closed,15.8,30,\n512,closed,15.8,30,512\n511.8,closed,15.8,30,\n480,closed,17,30,\n',
    );
    expect(first).toBe(second);
    expect(named).not.toBe(first);
    expect(far).not.toBe(first);
  });

  it('make two forks average: the fork’s part of u falls by the root of two', () => {
    // Two independent errors of equal weight, JCGM 100:2008, 4.2.3.
    const table = (names: readonly string[]) =>
      heading +
      names
        .flatMap((name) => [15.8, 49.3].map((cm) => `512,closed,${cm},30,${name}`))
        .map((row) => `${row}\n`)
        .join('');
    const forkPart = (names: readonly string[]): number => {
      const lines = solvedTable(table(names)).budget.filter(({ quantity }) => /fork/.test(quantity));
      return Math.hypot(...lines.map(({ contributionMps }) => contributionMps));
    };
    expect(forkPart(['a', 'a']) / forkPart(['a', 'b'])).toBeCloseTo(Math.SQRT2, 2);
  });

  it('are kept as forks of their own on the page, which gives the same speed and ±, there and back', () => {
    const text = `${heading}512,closed,15.8,30,red\n512,closed,49.3,30,red\n512,closed,15.9,30,blue\n512,closed,49.2,30,blue\n`;
    const { experiment } = experimentFromRows('x', rowsOf(text), outside());
    expect(experiment.forks.map(({ id }) => id)).toEqual(['red', 'blue']);
    const solution = solveExperiment(experiment).places[0]?.solution;
    for (const table of [text, marksCsv(experiment)]) {
      const answer = solvedTable(table);
      expect(solution?.speedMps).toBeCloseTo(answer.speedMps, 9);
      expect(solution?.speedMps === null ? 0 : solution?.standardUncertaintyMps).toBeCloseTo(
        answer.standardUncertaintyMps,
        9,
      );
    }
  });

  it('find the experiment’s own forks by their pitch, each once', () => {
    const own = experimentFromRows('x', rowsOf(`${heading}512,closed,15.8,30,\n`), outside()).experiment;
    const rows = rowsOf(
      `${heading}512,closed,49.3,30,red\n512,closed,49.3,30,blue\n512,closed,82.9,30,red\n`,
    );
    const { forks, marks } = takeRows(own, rows, outside()).experiment;
    expect(forks).toHaveLength(2);
    expect(marks.map(({ forkId }) => forks.findIndex(({ id }) => id === forkId))).toEqual([0, 0, 1, 0]);
  });
});
