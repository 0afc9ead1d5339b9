import { isDeepStrictEqual } from 'node:util';
import { expect } from 'vitest';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { readExperiment } from '../../../../src/notebook/readExperiment.ts';
import type { Tab } from './benchTabs.ts';
import type { Edit } from './edit.ts';
import { everywhere, lineOf, stepped } from './line.ts';

/** Does something to what a tab shows, and sees to it that just this came of it. */
export function perform(tab: Tab, edit: Edit): void {
  const { bench } = tab;
  // Another experiment has opened in the meantime, as by a move that is still under way.
  if (bench.experiment.id !== tab.line.present.id) tab.line = lineOf(bench.history);
  const isOnlyShown = bench.keeping.access === 'elsewhere';
  const before = structuredClone(tab.line.present);
  const there = bench.experiment;
  const told = bench.notice?.serial ?? 0;
  const made = edit.make(tab, before);
  if (made !== null && !isOnlyShown && bench.experiment === there && !('past' in made)) {
    // Refused: it says so, and nobody could have opened it again.
    expect(bench.notice, 'a change is refused with a message').toMatchObject({ kind: 'problem' });
    expect(bench.notice?.serial).toBeGreaterThan(told);
    expect(canBeKept(made.state), 'what can be kept is not refused').toBe(false);
  } else if (made !== null && !isOnlyShown) {
    const { changedAt } = bench.experiment;
    tab.line = 'past' in made ? made : stepped(tab.line, made.step, { ...made.state, changedAt });
  }
  followTraces(tab);
  expectShown(tab);
}

/** Whether a reader takes the state, and each reading leaves a column of 0.1 mm to 10 m once the rule's zero is off. */
function canBeKept(state: Experiment): boolean {
  const columns = [...state.marks, ...state.deletedMarks]
    .flatMap(({ lengthM, otherLengthM }) => [lengthM, otherLengthM])
    .flatMap((readingM) => (readingM === null ? [] : [readingM - state.rule.zeroOffsetM]));
  const areColumns = columns.every((columnM) => columnM > 1e-4 - 1e-12 && columnM < 10 + 1e-12);
  return areColumns && readExperiment(state).kind === 'experiment';
}

/** The trace of a mark goes on for a while after the mark was made: in every state that has the mark, as if from the start. */
export function followTraces(tab: Tab): void {
  const { past, present, future } = tab.bench.history;
  for (const id of tab.growing) {
    const find = (state: Experiment) =>
      [...state.marks, ...state.deletedMarks].find((mark) => mark.id === id);
    const states = [present, ...past.map(({ value }) => value), ...future.map(({ value }) => value)];
    const trace = states.map(find).find((mark) => mark !== undefined)?.evidence?.trace ?? null;
    if (isDeepStrictEqual(find(tab.line.present)?.evidence?.trace ?? null, trace)) continue;
    const grown = structuredClone(trace);
    const amend = (marks: Experiment['marks']): Experiment['marks'] =>
      marks.map((mark) =>
        mark.id === id && mark.evidence !== null
          ? { ...mark, evidence: { ...mark.evidence, trace: grown } }
          : mark,
      );
    tab.line = everywhere(tab.line, (state) => ({
      ...state,
      marks: amend(state.marks),
      deletedMarks: amend(state.deletedMarks),
    }));
  }
}

/** What the tab shows is what is expected there, and the next step back and forth with it. */
export function expectShown({ bench, line }: Tab): void {
  const { history } = bench;
  expectSame(history.present, line.present, 'what is shown');
  expect([history.past.length, history.future.length], 'steps back and forth').toEqual([
    line.past.length,
    line.future.length,
  ]);
  expect([bench.undoName, bench.redoName]).toEqual([
    line.past.at(-1)?.step ?? null,
    line.future.at(-1)?.step ?? null,
  ]);
  expectSame(history.past.at(-1)?.value, line.past.at(-1)?.value, 'one step back');
  expectSame(history.future.at(-1)?.value, line.future.at(-1)?.value, 'one step forth');
}

/** Fast where the two are the same, in words where they aren't. */
export function expectSame(found: unknown, wanted: unknown, what: string): void {
  if (!isDeepStrictEqual(found, wanted)) expect(found, what).toEqual(wanted);
}
