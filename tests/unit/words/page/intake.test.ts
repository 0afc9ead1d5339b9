import { describe, expect, it } from 'vitest';
import {
  intakeWords,
  nothingTakenWords,
  takenWords,
  usableWords,
} from '../../../../src/words/page/intake.ts';

const fault = (row: number | null) => ({ row, column: null, message: 'no length.' });

describe('what came in', () => {
  it('is all of use, or says how much of it is and how much in part', () => {
    expect(usableWords(3, 3, 0)).toBe('All 3 files can be used.');
    expect(usableWords(3, 2, 0)).toBe('2 of 3 files can be used. What is wrong comes first.');
    expect(usableWords(3, 3, 1)).toBe(
      '3 of 3 files can be used, 1 of them in part. What is wrong comes first.',
    );
  });

  it('names the first eight faults and counts the others', () => {
    const faults = Array.from({ length: 10 }, (_, index) => fault(index + 2));
    const words = intakeWords({ content: { kind: 'table', rows: [{}] }, faults, remarks: [] });
    expect(words.what).toBe('table, 1 row of marks; 10 faults.');
    expect(words.faults).toHaveLength(9);
    expect(words.faults.at(0)).toBe('row 2: no length.');
    expect(words.faults.at(-1)).toBe('and 2 more.');
    expect(words.ask).toBe('Use only the part without faults: table, 1 row of marks');
  });

  it('asks nothing where there is no part to choose', () => {
    expect(intakeWords({ content: { kind: 'recording' }, faults: [], remarks: [] }).ask).toBeNull();
    expect(intakeWords({ content: null, faults: [fault(null)], remarks: [] })).toMatchObject({
      what: 'can’t be used.',
      faults: ['no length.'],
      ask: null,
    });
  });
});

describe('what was taken of a table', () => {
  it('counts marks and rows, one or many', () => {
    expect(takenWords({ kind: 'added', marks: 1 }, [], [])).toBe('1 mark added; Undo takes that back.');
    expect(takenWords({ kind: 'added', marks: 2 }, [fault(4)], ['Another tube.'])).toBe(
      '2 marks added; Undo takes that back. 1 row was left out: row 4: no length. Another tube.',
    );
    expect(takenWords({ kind: 'opened', title: 'Lab' }, [fault(4), fault(null)], [])).toBe(
      '“Lab” is open as a new experiment. What was open before is in the list under Records. 2 rows were left out: row 4: no length. row ?: no length.',
    );
  });

  it('names the first three rows where nothing was taken', () => {
    expect(nothingTakenWords(null, [2, 3, 4, 5].map(fault))).toBe(
      'No row of the table could be used. row 2: no length. row 3: no length. row 4: no length.',
    );
    expect(nothingTakenWords('Lab', [fault(2)])).toMatch(/^No row of Lab could be used\./);
  });
});
