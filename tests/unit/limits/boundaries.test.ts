import { describe, expect, it } from 'vitest';
import { solveTable } from '../../../src/cli/solveTable.ts';
import { linkFaultWords } from '../../../src/words/lessonLink.ts';
import { readFile } from '../../../src/intake/readFile.ts';
import { readPasted } from '../../../src/intake/readPasted.ts';
import { experimentFromRows } from '../../../src/intake/takeRows.ts';
import { columnName } from '../../../src/marks/tableDialect.ts';
import { lessonHash, planOf, readLessonHash } from '../../../src/notebook/lessonLink.ts';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { marksCsv } from '../../../src/report/marksCsv.ts';
import { expectEveryWay, outside, rowsOf } from './everyWay.ts';
import { badValues, boundaryExperiment, FIELDS, goodValues, manyValues } from './fields.ts';
import type { Field } from './fields.ts';
import { parseFaultWords } from '../../../src/words/parseFaults.ts';

const base = boundaryExperiment();
let imports = 0;
let typedValues = 0;

/** The number as it is typed in the field's unit. */
const written = (si: number, perUnit: number): string => String(Number((si / perUnit).toPrecision(12)));

/** A table of one mark whose cell holds this. */
function tableWith(column: NonNullable<Field['column']>, cell: string): string {
  const cells: Record<string, string> = {
    fork_hz: '512',
    ends: 'closed',
    length_cm: '15.8',
    [column.name]: cell,
  };
  const names = Object.keys(cells);
  return `${names.join(',')}\n${names.map((name) => cells[name]).join(',')}\n`;
}

const isRefused = (text: string, column: string, answer: { readonly error: string } | object): void => {
  expect(answer, text).toHaveProperty('error');
  expect((answer as { error: string }).error).toContain(`row 2, column ${column}`);
};

describe.each(FIELDS)('$path', { timeout: 60_000 }, (field) => {
  it('works everywhere at, just inside and between its limits', async () => {
    for (const si of goodValues(field)) {
      const experiment = field.put(base, si);
      imports += 1;
      await expectEveryWay(experiment);
    }
  });

  it('is refused in a file outside of them, with the field, the range and the value', async () => {
    for (const si of badValues(field)) {
      const bad = field.put(base, si);
      const json = experimentJson(bad);
      const { content, faults } = await readFile(new File([json], 'x.json'));
      imports += 1;
      expect(faults).toHaveLength(1);
      const isNear = Math.abs(si - field.limit.lowest) < 1e-3 || Math.abs(si - field.limit.highest) < 1e-3;
      const { lowest, highest } = field.limit;
      expect(faults[0]).toMatchObject({ column: field.path });
      if (Number.isInteger(si) || field.isWhole !== true)
        expect(faults[0]?.message).toBe(`must be a number from ${lowest} to ${highest}, but it is ${si}.`);
      // The good part is whole.
      if (content?.kind === 'experiment') {
        expect(readExperiment(JSON.parse(experimentJson(content.experiment)))).toEqual({
          kind: 'experiment',
          experiment: content.experiment,
        });
        if (isNear) await expectEveryWay(content.experiment);
      }
    }
  });

  const { typed, column } = field;
  it.skipIf(typed === undefined)('is typed alike, in any of its units', () => {
    if (typed === undefined) return;
    const { kind, perUnit } = typed;
    for (const si of manyValues(field)) {
      for (const text of spellings(written(si, perUnit), kind.unit)) {
        typedValues += 1;
        const read = kind.read(text);
        expect(read, text).toMatchObject({ ok: true });
        if (read.ok) expect(read.value * perUnit).toBeCloseTo(si, 9);
      }
    }
    for (const si of badValues(field)) {
      for (const text of spellings(written(si, perUnit), kind.unit)) {
        typedValues += 1;
        const read = kind.read(text);
        expect(read, text).toMatchObject({ ok: false });
        if (read.ok) continue;
        const [lowest, highest] = [field.limit.lowest, field.limit.highest].map((end) =>
          written(end, perUnit).replace('-', '−'),
        );
        const said = parseFaultWords(read.fault);
        expect(said).toContain(`${lowest} to ${highest} ${kind.unit}`);
        expect(said.length).toBeLessThan(260);
      }
    }
  });

  it.skipIf(column === undefined)(
    'is read alike in a table, on the page and on the command line',
    async () => {
      if (column === undefined) return;
      expect(columnName(column.name)).toBe(column.name);
      for (const si of manyValues(field)) {
        const cell = `${written(si, column.perUnit)} ${column.unit}`.trim();
        const text = tableWith(column, cell);
        imports += 2;
        const rows = await rowsOf(text);
        const taken = experimentFromRows('x', rows, outside());
        expect(taken.faults).toEqual([]);
        expect(readExperiment(JSON.parse(experimentJson(taken.experiment))).kind).toBe('experiment');
        expect(readPasted(text, { forkHz: 512, ends: 'closed' }).faults).toEqual([]);
        expect(solveTable(text)).not.toHaveProperty('error');
      }
      for (const si of badValues(field)) {
        const cell = `${written(si, column.perUnit)} ${column.unit}`.trim();
        const text = tableWith(column, cell);
        imports += 2;
        const { content, faults } = await readFile(new File([text], 'x.csv'));
        expect(content).toBeNull();
        expect(faults).toMatchObject([{ row: 2, column: column.name }]);
        expect(readPasted(text, { forkHz: 512, ends: 'closed' }).faults).toEqual(faults);
        isRefused(text, column.name, solveTable(text));
      }
    },
  );
});

describe('lesson links', () => {
  const lesson = { task: '', hideExpected: false, hideTheory: false, hideTruth: false };
  it.each([
    'forks[0].measuredHz',
    'tube.diameterM',
    'tube.travelM',
    'rule.zeroOffsetM',
    'places[0].temperatureC',
  ])('refuse what a file refuses of %s', async (path) => {
    const field = FIELDS.find((one) => one.path === path);
    if (field === undefined) throw new Error(path);
    for (const si of badValues(field)) {
      imports += 1;
      const read = await readLessonHash(await lessonHash(planOf(field.put(base, si), lesson)));
      const { lowest, highest } = field.limit;
      expect(read).toHaveProperty('fault');
      const fault = read !== null && 'fault' in read ? linkFaultWords(read.fault) : '';
      expect(fault).toContain(`from ${lowest} to ${highest}, but it is ${si}`);
    }
  });
});

describe('all ends at once', { timeout: 60_000 }, () => {
  /** Every field that fits with the others at one of its ends, by the bits of a number. */
  it('work together', async () => {
    const fields = FIELDS.filter(({ path }) => !/zeroOffset|order|otherLength/.test(path));
    for (let pick = 0; pick < 12; pick += 1) {
      // A linear congruential step makes neighbours differ in most bits.
      const bits = (pick * 1_103_515_245 + 12_345) >>> 7;
      const experiment = fields.reduce(
        (state, field, index) =>
          field.put(state, (bits >> index) % 2 === 0 ? field.limit.lowest : field.limit.highest),
        base,
      );
      imports += 1;
      await expectEveryWay(experiment);
    }
  });
});

describe('random numbers around the limits', { timeout: 60_000 }, () => {
  it('come in whole or not at all, from a table as on the command line', async () => {
    const columns = FIELDS.flatMap(({ column, limit }) => (column === undefined ? [] : [{ column, limit }]));
    let seed = 1;
    const random = (): number => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
    let taken = 0;
    for (let round = 0; round < 700; round += 1) {
      const cells: Record<string, string> = { fork_hz: '512', ends: 'closed', length_cm: '15.8' };
      for (const { column, limit } of columns) {
        if (random() > 0.3) continue;
        const share = random() < 0.9 ? random() : 1 + 0.2 * random();
        const value = (limit.lowest + share * (limit.highest - limit.lowest)) / column.perUnit;
        cells[column.name] = column.name === 'order' ? String(Math.round(value)) : value.toPrecision(5);
      }
      const names = Object.keys(cells);
      const text = `${names.join(';')}\n${names.map((name) => cells[name]).join(';')}\n`;
      imports += 1;
      const { content, faults } = await readFile(new File([text], 'x.csv'));
      const answer = solveTable(text);
      if (content?.kind !== 'table') {
        expect(faults.length).toBeGreaterThan(0);
        expect(answer).toHaveProperty('error');
        continue;
      }
      taken += 1;
      const made = experimentFromRows('x', content.rows, outside());
      expect(made.faults).toEqual([]);
      expect(readExperiment(JSON.parse(experimentJson(made.experiment))).kind).toBe('experiment');
      const again = await rowsOf(marksCsv(made.experiment));
      expect(again).toHaveLength(1);
    }
    expect(taken).toBeGreaterThan(200);
    expect(taken).toBeLessThan(690);
  });
});

describe('the boundary values', () => {
  it('were tried a thousand times in files and links, and a thousand times typed', () => {
    console.log(`${imports} imports, ${typedValues} typed values`);
    expect(imports).toBeGreaterThanOrEqual(1000);
    expect(typedValues).toBeGreaterThanOrEqual(1000);
  });
});

/** One number as people write it. */
function spellings(number: string, unit: string): readonly string[] {
  const comma = number.replace('.', ',');
  const minus = comma.replace('-', '−');
  return [
    `${number} ${unit}`,
    `${comma} ${unit}`,
    `${minus}${unit}`,
    ` ${number}\u00a0${unit} `,
    `${minus} ${unit.toUpperCase()}`,
    `\t${comma}\u202f${unit}`,
  ];
}
