import fc from 'fast-check';
import { expect } from 'vitest';
import type { Step } from '../../../../src/notebook/step.ts';
import type { Mark } from '../../../../src/marks/mark.ts';
import { likelyRepeated, ownMarks, repeatsOf } from '../../../../src/notebook/markList.ts';
import type { MarkChange } from '../../../../src/notebook/markList.ts';
import { parseReading } from '../../../../src/marks/parseReading.ts';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import type { Tab } from './benchTabs.ts';
import { changed, picked } from './edit.ts';
import type { Edit, Outcome } from './edit.ts';
import { anyReading, anyText } from './readings.ts';
import type { TypedReading } from './readings.ts';

/** What the page makes of a length that was typed; null where it refuses it. */
function read({ text, means }: TypedReading): { lengthM: number; otherLengthM: number | null } | null {
  const parsed = parseReading(text);
  const reading = parsed.ok ? { lengthM: parsed.lengthM, otherLengthM: parsed.otherLengthM } : null;
  if (means !== null) expect(reading).toEqual(means);
  return reading;
}

/** The mark that an action has just made; where the list only shows another tab's work it makes none. */
function made(tab: Tab, before: Experiment): Pick<Mark, 'id' | 'createdAt'> {
  const known = new Set([...before.marks, ...before.deletedMarks].map(({ id }) => id));
  const { id, createdAt } = tab.bench.experiment.marks.find((mark) => !known.has(mark.id)) ?? {
    id: '',
    createdAt: '',
  };
  return { id, createdAt };
}

export function plainMark(before: Experiment, known: Pick<Mark, 'id' | 'createdAt'>): Mark {
  return {
    ...known,
    ...before.present,
    lengthM: null,
    otherLengthM: null,
    evidence: null,
    order: null,
    excluded: false,
    note: '',
  };
}

const add = (typed: TypedReading | null): Edit => ({
  words: typed === null ? 'mark (key M)' : `new mark at ${JSON.stringify(typed.text)}`,
  make: (tab, before) => {
    const reading = typed === null ? { lengthM: null, otherLengthM: null } : read(typed);
    if (reading === null) return null;
    tab.bench.addMarkByHand(reading.lengthM, reading.otherLengthM);
    const mark = { ...plainMark(before, made(tab, before)), ...reading };
    return { step: 'add mark', state: { ...before, marks: [...before.marks, mark] } };
  },
});

/** A change of one mark, as its row on the page makes it. */
function change(
  words: string,
  pick: number,
  step: Step,
  make: (mark: Mark, before: Experiment) => MarkChange | null,
): Edit {
  return {
    words: `${words}, mark [${pick}]`,
    make: (tab, before): Outcome | null => {
      const mark = picked(ownMarks(before.marks), pick);
      const wanted = mark === undefined ? null : make(mark, before);
      if (mark === undefined || wanted === null) return null;
      tab.bench.editMark(mark.id, wanted, step);
      const names = Object.keys(wanted) as (keyof MarkChange)[];
      if (names.every((name) => wanted[name] === mark[name])) return null;
      return { step, state: { ...before, marks: changed<Mark>(before.marks, mark.id, wanted) } };
    },
  };
}

const separate = (pick: number): Edit => ({
  words: `separate a repeat [${pick}]`,
  make: (tab, before) => {
    const repeats = ownMarks(before.marks).flatMap(({ id }) => repeatsOf(before.marks, id));
    const repeat = picked(repeats, pick);
    if (repeat === undefined) return null;
    tab.bench.editMark(repeat.id, { repeatOf: null }, 'separate marks');
    const marks = changed<Mark>(before.marks, repeat.id, { repeatOf: null });
    return { step: 'separate marks', state: { ...before, marks } };
  },
});

const remove = (pick: number): Edit => ({
  words: `delete mark [${pick}]`,
  make: (tab, before) => {
    const mark = picked(ownMarks(before.marks), pick);
    if (mark === undefined) return null;
    const gone = new Set([mark.id, ...repeatsOf(before.marks, mark.id).map(({ id }) => id)]);
    tab.bench.deleteMark(mark.id);
    return {
      step: 'delete mark',
      state: {
        ...before,
        marks: before.marks.filter(({ id }) => !gone.has(id)),
        deletedMarks: [...before.deletedMarks, ...before.marks.filter(({ id }) => gone.has(id))],
      },
    };
  },
});

const bringBack = (pick: number): Edit => ({
  words: `bring back deleted mark [${pick}]`,
  make: (tab, before) => {
    const mark = picked(ownMarks(before.deletedMarks), pick);
    if (mark === undefined) return null;
    const back = new Set([mark.id, ...repeatsOf(before.deletedMarks, mark.id).map(({ id }) => id)]);
    tab.bench.restoreMark(mark.id);
    const marks = [...before.marks, ...before.deletedMarks.filter(({ id }) => back.has(id))];
    return {
      step: 'restore mark',
      state: {
        ...before,
        marks: marks.sort((one, other) => Math.sign(Date.parse(one.createdAt) - Date.parse(other.createdAt))),
        deletedMarks: before.deletedMarks.filter(({ id }) => !back.has(id)),
      },
    };
  },
});

const pick = fc.nat({ max: 9 });

export const anyMarkEdit: fc.Arbitrary<Edit> = fc.oneof(
  { weight: 6, arbitrary: anyReading.map(add) },
  { weight: 2, arbitrary: fc.constant(add(null)) },
  {
    weight: 4,
    arbitrary: fc
      .tuple(anyReading, pick)
      .map(([typed, at]) =>
        change(`type length ${JSON.stringify(typed.text)}`, at, 'type length', () =>
          typed.text === '' ? { lengthM: null, otherLengthM: null } : read(typed),
        ),
      ),
  },
  {
    weight: 2,
    arbitrary: fc
      .tuple(fc.option(fc.integer({ min: 1, max: 8 })), pick)
      .map(([order, at]) => change(`order ${order ?? 'auto'}`, at, 'set order', () => ({ order }))),
  },
  {
    weight: 2,
    arbitrary: pick.map((at) =>
      change('leave out or in', at, 'exclude mark', ({ excluded }) => ({ excluded: !excluded })),
    ),
  },
  {
    weight: 1,
    arbitrary: fc
      .tuple(anyText(40), pick)
      .map(([note, at]) => change(`note ${JSON.stringify(note)}`, at, 'edit mark', () => ({ note }))),
  },
  {
    weight: 1,
    arbitrary: pick.map((at) =>
      change('same as the mark before', at, 'join marks', (mark, { marks }) => {
        const other = mark.lengthM === null ? likelyRepeated(marks, mark) : null;
        return other === null ? null : { repeatOf: other.id };
      }),
    ),
  },
  { weight: 1, arbitrary: pick.map(separate) },
  { weight: 3, arbitrary: pick.map(remove) },
  { weight: 2, arbitrary: pick.map(bringBack) },
);
