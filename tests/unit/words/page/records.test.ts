import { describe, expect, it } from 'vitest';
import { EXPERIMENT_TABLES } from '../../../../src/report/tables/experimentTables.ts';
import { laterWords } from '../../../../src/words/inUse.ts';
import { entryWords, keptSoundWords } from '../../../../src/words/page/records.ts';

describe('the list of experiments', () => {
  it('counts one and many, and says which is open', () => {
    expect(entryWords(1, 2, '', false)).toBe('1 mark, 2 places');
    expect(entryWords(0, 1, '', true)).toBe('0 marks, 1 place · open now');
    const when = new Date('2026-03-01T10:00:00.000Z').toLocaleString();
    expect(entryWords(3, 1, '2026-03-01T10:00:00.000Z', true)).toBe(`3 marks, 1 place · ${when} · open now`);
  });
});

describe('a kept sound', () => {
  const sound = {
    number: 2,
    createdAt: '2026-03-01T10:00:00.000Z',
    lengthS: 12.34,
    forkHz: 512,
    bytes: 1.2e6,
    marks: [],
  };

  it('names the marks that were found in it', () => {
    expect(keptSoundWords(sound)).toMatch(/^2\. .* · 12\.3 s · 512 Hz · 1\.2 MB$/);
    expect(keptSoundWords({ ...sound, marks: [3] })).toMatch(/ · 1\.2 MB · mark 3$/);
    expect(keptSoundWords({ ...sound, marks: [3, 5] })).toMatch(/ · 1\.2 MB · marks 3, 5$/);
  });
});

describe('the tables', () => {
  it('have a name each, which the names of their buttons hold', () => {
    expect(EXPERIMENT_TABLES.map(({ id }) => laterWords.tableKinds[id].name)).toHaveLength(
      Object.keys(laterWords.tableKinds).length,
    );
    for (const { name, save, copy } of Object.values(laterWords.tableKinds)) {
      expect(save).toBe(`Save ${name.toLowerCase()} as CSV`);
      expect(copy).toBe(`Copy ${name.toLowerCase()} as a table`);
    }
  });
});
