import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { splitDelimited } from '../../../src/marks/delimited.ts';
import { unguarded } from '../../../src/marks/formulaGuard.ts';
import { readFile } from '../../../src/intake/readFile.ts';
import { marksRows } from '../../../src/report/marksCsv.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { toCsv, writeNumber } from '../../../src/report/csv.ts';

describe('toCsv', () => {
  it('quotes as RFC 4180, section 2, says: commas, quotes and line breaks inside quotes, CRLF after each row', () => {
    expect(
      toCsv([
        ['aaa', 'b,b', 'c"c', 'd\r\nd'],
        [1.5, null, 'x', ' y'],
      ]),
    ).toBe('aaa,"b,b","c""c","d\r\nd"\r\n1.5,,x," y"\r\n');
  });

  it('makes text harmless that a spreadsheet would run as a formula, and leaves numbers as numbers', () => {
    const dangerous = ['=1+1', '+cmd', '-2+3', '@SUM(A1)', '\tx', '\rx', '＝1', "'=1"];
    for (const cell of dangerous) expect(toCsv([[cell]])).toContain(`'${cell}`);
    for (const number of [-2.5, '-2.5', '+3', '-1e-3']) expect(toCsv([[number]])).toBe(`${number}\r\n`);
  });

  it('is read back cell by cell, whatever text the cells hold', () => {
    const text = fc.string({
      unit: fc.constantFrom('=', '+', '-', '@', "'", '"', ',', '\t', '\r', '\n', '#', ' ', 'a', '1'),
    });
    fc.assert(
      fc.property(fc.array(fc.array(text, { minLength: 2, maxLength: 4 }), { maxLength: 4 }), (rows) => {
        const { records, fault } = splitDelimited(toCsv(rows), ',');
        expect(fault).toBeNull();
        const written = rows.filter((row) => row.some((cell) => cell !== ''));
        expect(records.map(({ cells }) => cells.map(unguarded))).toEqual(written);
      }),
    );
  });
});

describe('toCsv with decimal commas', () => {
  it('parts cells by semicolons, begins with a byte-order mark and quotes both signs in texts', () => {
    expect(
      toCsv(
        [
          ['a', 'b;c', 'd,e'],
          [15.8, -0.25, null],
        ],
        'comma',
      ),
    ).toBe('\ufeffa;"b;c";"d,e"\r\n15,8;-0,25;\r\n');
  });

  it('leaves no number that such a spreadsheet would take for text, and is read back as it was', async () => {
    const experiment = exampleExperiment([
      exampleMark('a', { lengthM: 0.158, evidence: EXAMPLE_EVIDENCE }),
      exampleMark('b', { lengthM: 0.49253 }),
    ]);
    const read = async (text: string) => {
      const { content, faults } = await readFile(new File([text], 'x.csv'));
      expect(faults).toEqual([]);
      return content?.kind === 'table' ? content.rows : [];
    };
    const comma = toCsv(marksRows(experiment), 'comma');
    const cells = comma.split('\r\n').flatMap((line) => line.split(';'));
    expect(cells.filter((cell) => /^-?\d+,\d+$/.test(cell)).length).toBeGreaterThanOrEqual(4);
    expect(cells.filter((cell) => /^-?\d+\.\d+$/.test(cell))).toEqual([]);
    expect(await read(comma)).toEqual(await read(toCsv(marksRows(experiment))));
    expect(await read(comma)).toHaveLength(2);
  });
});

describe('writeNumber', () => {
  it('writes all digits that mean anything and no noise of binary fractions', () => {
    expect(writeNumber(0.158 * 100)).toBe('15.8');
    expect(writeNumber(0.1 + 0.2)).toBe('0.3');
    expect(writeNumber(1 / 3)).toBe('0.333333333333333');
    expect(() => writeNumber(NaN)).toThrow(RangeError);
  });
});
