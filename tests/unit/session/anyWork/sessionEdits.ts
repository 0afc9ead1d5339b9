import fc from 'fast-check';
import { expect } from 'vitest';
import { readPasted } from '../../../../src/intake/readPasted.ts';
import { takeRows } from '../../../../src/intake/takeRows.ts';
import type { Mark } from '../../../../src/marks/mark.ts';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { forkInUse } from '../../../../src/notebook/forkInUse.ts';
import type { Tab } from './benchTabs.ts';
import type { Edit } from './edit.ts';
import { redone, undone } from './line.ts';
import { plainMark } from './markEdits.ts';
import { expectSame } from './perform.ts';

export const undo: Edit = {
  words: 'undo',
  make: (tab) => {
    const { line } = tab;
    tab.bench.undo();
    return undone(line);
  },
};

export const redo: Edit = {
  words: 'redo',
  make: (tab) => {
    const { line } = tab;
    tab.bench.redo();
    return redone(line);
  },
};

const listen: Edit = {
  words: 'listen to the practice column',
  make: (tab) => {
    if (tab.bench.keeping.access === 'elsewhere') return null;
    void tab.bench.hearing.start(tab.ears);
    expect(tab.bench.hearing.capture.kind).toBe('running');
    tab.lastFlag = null;
    return null;
  },
};

const stop: Edit = {
  words: 'stop listening',
  make: (tab) => {
    tab.bench.hearing.stop();
    expect(tab.bench.hearing.isListening).toBe(false);
    return null;
  },
};

/** @param isStruck  whether the fork was struck anew before it */
const pass = (slide: 'longer' | 'shorter', isStruck: boolean): Edit => ({
  words: `pass a resonance, ${slide}${isStruck ? ', after a strike' : ''}`,
  make: (tab, before) => {
    const { bench, ears, lastFlag } = tab;
    if (!bench.hearing.isListening) return null;
    const sounding = ears.sounding + (isStruck || ears.sounding === 0 ? 1 : 0);
    ears.pass({ slide, sounding });
    const flagged = bench.experiment.marks.find(({ id }) => !before.marks.some((mark) => mark.id === id));
    expect(flagged?.evidence).toMatchObject({ source: 'practice', riseDb: 12, aboveRoomDb: 30 });
    if (flagged === undefined) return null;
    const again = lastFlag === null ? undefined : standing(before.marks, lastFlag);
    const isHere = again !== undefined && samePresent(again, before.present);
    // Back through the same resonance within one sounding. After a new strike only a column that was followed up to it is
    // joined, and these ears follow none.
    const isSame = isHere && lastFlag?.sounding === sounding && lastFlag.slide !== slide;
    const mark: Mark = {
      ...plainMark(before, flagged),
      evidence: structuredClone(flagged.evidence),
      ...(isSame ? { repeatOf: again.id } : {}),
    };
    tab.lastFlag = { slide, sounding, own: mark.id, standsFor: isSame ? again.id : mark.id };
    tab.growing.add(mark.id);
    return { step: 'flagged resonance', state: { ...before, marks: [...before.marks, mark] } };
  },
});

/** The mark that a repeat is one of, or itself; a mark with a length is its own. */
function rootOf(marks: readonly Mark[], mark: Mark): Mark {
  let root = mark;
  // No chain is longer than the list; one that is leads in a circle.
  for (let i = 0; i <= marks.length; i += 1) {
    const { lengthM, repeatOf } = root;
    const next = lengthM === null ? marks.find(({ id }) => id === repeatOf) : undefined;
    if (next === undefined) return root;
    root = next;
  }
  return mark;
}

/** The mark that stands now for what was flagged last. */
function standing(marks: readonly Mark[], flag: NonNullable<Tab['lastFlag']>): Mark | undefined {
  const found = marks.find(({ id }) => id === flag.own) ?? marks.find(({ id }) => id === flag.standsFor);
  return found === undefined ? undefined : rootOf(marks, found);
}

function samePresent(mark: Mark, { forkId, placeId, ends }: Experiment['present']): boolean {
  return mark.forkId === forkId && mark.placeId === placeId && mark.ends === ends;
}

interface TypedRow {
  readonly forkHz: number;
  readonly ends: 'closed' | 'open';
  readonly tenthsMm: number;
  readonly place: string;
  readonly order: number | null;
}

const anyRow: fc.Arbitrary<TypedRow> = fc.record({
  forkHz: fc.constantFrom(256, 341.3, 512, 700),
  ends: fc.constantFrom('closed' as const, 'open' as const),
  tenthsMm: fc.integer({ min: 300, max: 19_999 }),
  place: fc.constantFrom('', 'Bench', 'Yard', 'a "b"'),
  order: fc.option(fc.integer({ min: 1, max: 12 }), { freq: 3 }),
});

export const anyRows = fc.array(anyRow, { minLength: 1, maxLength: 4 });

/** The rows as a spreadsheet gives them when they are copied. */
export function tableOf(rows: readonly TypedRow[]): string {
  const lines = rows.map(({ forkHz, ends, tenthsMm, place, order }) =>
    [forkHz, ends, tenthsMm / 100, `"${place.replaceAll('"', '""')}"`, order ?? ''].join('\t'),
  );
  return ['fork_hz\tends\tlength_cm\tplace\torder', ...lines].join('\n');
}

/** Each row is a mark, in the table's order, its length a column's and not the rule's. */
export function expectRows(marks: readonly Mark[], rows: readonly TypedRow[], experiment: Experiment): void {
  expect(marks.map(({ ends, order }) => ({ ends, order }))).toEqual(
    rows.map(({ ends, order }) => ({ ends, order })),
  );
  for (const [index, row] of rows.entries()) {
    const mark = marks[index];
    const fork = experiment.forks.find(({ id }) => id === mark?.forkId);
    const lengthM = (mark?.lengthM ?? 0) - experiment.rule.zeroOffsetM;
    expect(lengthM).toBeCloseTo(row.tenthsMm / 10_000, 9);
    expect(fork === undefined ? [] : [fork.nominalHz, forkInUse(fork).hz]).toContain(row.forkHz);
    if (row.place !== '') {
      const place = experiment.places.find(({ id }) => id === mark?.placeId);
      expect(place?.name.startsWith(row.place) === true || row.place.startsWith(place?.name ?? '')).toBe(
        true,
      );
    }
  }
}

/** A row is left out only where the rule, as it is set, shows nothing at such a column. */
function expectNoReading(row: TypedRow | undefined, { rule }: Experiment): void {
  const readingM = (row?.tenthsMm ?? 0) / 10_000 + rule.zeroOffsetM;
  expect(readingM >= 1e-4 && readingM <= 10, `a reading of ${readingM} m`).toBe(false);
}

const addTable = (rows: readonly TypedRow[]): Edit => ({
  words: `add a table of ${rows.length}: ${rows.map(({ tenthsMm }) => tenthsMm / 100).join(' ')} cm`,
  make: (tab, before) => {
    const { content, faults } = readPasted(tableOf(rows), defaultsOf(tab));
    expect(faults).toEqual([]);
    if (content?.kind !== 'table') throw new Error('a table was pasted');
    const taken = takeRows(tab.bench.experiment, content.rows, {
      newId: () => tab.bench.newId(),
      now: '2031-01-01T00:00:00.000Z',
    });
    const kept = rows.filter((_, index) => !taken.faults.some(({ row }) => row === index + 2));
    for (const { row } of taken.faults) expectNoReading(rows[(row ?? 0) - 2], before);
    if (kept.length === 0) return null;
    tab.bench.change('add table', () => taken.experiment);
    const { marks, forks, places, ...rest } = structuredClone(taken.experiment);
    // All that was there is as it was; what is new stands behind it.
    expectSame(marks.slice(0, before.marks.length), before.marks, 'marks before the table');
    expectSame(forks.slice(0, before.forks.length), before.forks, 'forks before the table');
    expectSame(places.slice(0, before.places.length), before.places, 'places before the table');
    expectSame(
      { ...rest, marks: [], forks: [], places: [] },
      { ...before, marks: [], forks: [], places: [] },
      'all else',
    );
    expectRows(marks.slice(before.marks.length), kept, taken.experiment);
    return { step: 'add table', state: { ...before, marks, forks, places } };
  },
});

export function defaultsOf({ bench }: Tab) {
  return { forkHz: forkInUse(bench.presentFork).hz, ends: bench.experiment.present.ends };
}

export const anySessionEdit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 6, arbitrary: fc.constant(undo) },
  { weight: 4, arbitrary: fc.constant(redo) },
  { weight: 2, arbitrary: fc.constant(listen) },
  { weight: 1, arbitrary: fc.constant(stop) },
  {
    weight: 4,
    arbitrary: fc
      .tuple(fc.constantFrom('longer' as const, 'shorter' as const), fc.boolean())
      .map(([slide, isStruck]) => pass(slide, isStruck)),
  },
  { weight: 2, arbitrary: anyRows.map(addTable) },
);
