import fc from 'fast-check';
import { expect } from 'vitest';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { keepsBack } from '../../../../src/notebook/keptBack.ts';
import { newExperiment } from '../../../../src/notebook/newExperiment.ts';
import type { BenchTabs, Tab } from './benchTabs.ts';
import { picked } from './edit.ts';
import { everywhere, lineOf, stepped } from './line.ts';
import type { Line } from './line.ts';
import type { Begun, Move } from './move.ts';
import { expectSame } from './perform.ts';
import { anyText } from './readings.ts';
import { titleWords } from '../../../../src/words/titles.ts';

/** Ids of the list of experiments that the tab shows, put away or not; without storage it shows none. */
function listed(tabs: BenchTabs, tab: Tab, isAway: boolean): string[] {
  if (tab.bench.keeping.sounds === null) return [];
  return [...tabs.kept].filter(([, kept]) => kept.isAway === isAway).map(([id]) => id);
}

/** Whether another tab has this experiment, so that this one may not touch it. */
export function isTaken(tabs: BenchTabs, tab: Tab, id: string): boolean {
  return tabs.hasLocks && tabs.tabs.some((other) => other !== null && other !== tab && other.has(id));
}

export function copied(line: Line, id: string): Line {
  return everywhere(line, (state) => ({
    ...state,
    id,
    origin: { ...state.origin, copy: state.origin.copy + 1 },
  }));
}

/** A fresh experiment is shown that nobody knew before. */
export function expectFresh(tabs: BenchTabs, tab: Tab, was: Line): Experiment {
  const { history } = tab.bench;
  const { present } = history;
  expect([...tabs.kept.keys(), was.present.id]).not.toContain(present.id);
  expect([history.past, history.future]).toEqual([[], []]);
  tab.line = lineOf(history);
  return present;
}

const openNew = (isSame: boolean): Move => ({
  words: isSame ? 'new experiment, same apparatus' : 'new experiment from scratch',
  begin: (tabs, tab): Begun => {
    const others = [...tabs.kept].filter(([id]) => id !== tab.line.present.id);
    const names = others.map(([, { line }]) => titleWords(line.present));
    return {
      done: tab.bench.experiments.openNew(isSame),
      after: (was, isAsMade) => {
        if (!isAsMade) return;
        const found = expectFresh(tabs, tab, was);
        expect([...names, titleWords(was.present)]).not.toContain(titleWords(found));
        const { id, origin, createdAt, changedAt } = found;
        const { forks, places, tube, rule, present, lesson } = was.present;
        const { className } = was.present;
        const same = { forks, places, tube, rule, present, className };
        const kept = lesson !== undefined && (isSame || keepsBack(lesson)) ? { lesson } : {};
        const plain = newExperiment(id, createdAt);
        expectSame(
          found,
          { ...plain, origin, changedAt, ...(isSame ? same : {}), ...kept },
          'a new experiment',
        );
      },
    };
  },
});

const openStored = (pick: number): Move => ({
  words: `open experiment [${pick}] of the list`,
  begin: (tabs, tab) => {
    const id = picked(
      listed(tabs, tab, false).filter((other) => other !== tab.line.present.id),
      pick,
    );
    if (id === undefined) return null;
    const kept = tabs.kept.get(id);
    return {
      done: tab.bench.experiments.openStored(id),
      after: (_was, isAsMade) => {
        expect(tab.bench.experiment.id).toBe(id);
        if (kept !== undefined && isAsMade) tab.line = kept.line;
      },
    };
  },
});

const openCopy: Move = {
  words: 'go on with a copy',
  isGoingOn: true,
  begin: (tabs, tab) => {
    const source = tab.line;
    return {
      done: tab.bench.experiments.openCopy(),
      after: (was, isAsMade) => {
        const { id } = tab.bench.experiment;
        expect([...tabs.kept.keys(), was.present.id]).not.toContain(id);
        if (!isAsMade) return;
        // Of what was done at the same moment the copy has as much as the original had when it was made.
        tab.line = was === source ? copied(source, id) : lineOf(tab.bench.history);
      },
    };
  },
};

const rename = (pick: number, title: string): Move => ({
  words: `rename experiment [${pick}] of the list to ${JSON.stringify(title)}`,
  isSure: true,
  begin: (tabs, tab) => {
    const others = listed(tabs, tab, false).filter((other) => other !== tab.line.present.id);
    const id = picked(others, pick);
    const kept = id === undefined ? undefined : tabs.kept.get(id);
    if (id === undefined || kept === undefined || title.trim() === '') return null;
    const isBusy = isTaken(tabs, tab, id);
    return {
      done: tab.bench.experiments.rename(id, title),
      after: async () => {
        if (isBusy) return;
        const stored = (await tabs.notebook.records()).get(id)?.experiment as Experiment;
        const { present } = kept.line;
        const origin = { ...present.origin, copy: 0 };
        const state = { ...present, title, origin, changedAt: stored.changedAt };
        tabs.kept.set(id, { line: stepped(kept.line, 'rename', state), isAway: false });
      },
    };
  },
});

const duplicate = (pick: number): Move => ({
  words: `duplicate experiment [${pick}]`,
  begin: (tabs, tab) => {
    const id = picked(listed(tabs, tab, false), pick);
    if (id === undefined) return null;
    const source = id === tab.line.present.id ? tab.line : tabs.kept.get(id)?.line;
    return {
      done: tab.bench.experiments.duplicate(id),
      after: async () => {
        // What a tab has open may have been saved for the first time just then.
        const open = new Set(tabs.tabs.map((one) => one?.bench.experiment.id));
        const ids = [...(await tabs.notebook.records()).keys()].filter(
          (other) => !tabs.kept.has(other) && !open.has(other),
        );
        expect(ids).toHaveLength(1);
        const [copy] = ids;
        if (copy !== undefined && source !== undefined)
          tabs.kept.set(copy, { line: copied(source, copy), isAway: false });
      },
    };
  },
});

const putAway = (pick: number): Move => ({
  words: `delete experiment [${pick}]`,
  isSure: true,
  begin: (tabs, tab) => {
    const id = picked(listed(tabs, tab, false), pick);
    if (id === undefined) return null;
    const isOpen = id === tab.line.present.id;
    // What is typed into something that is just being deleted goes with it, or doesn't: nobody can say.
    if (isOpen && tabs.notebook.isSlow) return null;
    const isBusy = isTaken(tabs, tab, id) || (isOpen && tab.bench.keeping.access === 'elsewhere');
    return {
      done: tab.bench.experiments.putAway(id),
      after: () => {
        const kept = tabs.kept.get(id);
        if (isBusy || kept === undefined) return;
        tabs.kept.set(id, { ...kept, isAway: true });
        // The next of the list is open, or a new one: as `follow` finds it.
        if (isOpen) expect(tab.bench.experiment.id).not.toBe(id);
      },
    };
  },
});

const bringBack = (pick: number): Move => ({
  words: `bring back deleted experiment [${pick}]`,
  isSure: true,
  begin: (tabs, tab) => {
    const id = picked(listed(tabs, tab, true), pick);
    const kept = id === undefined ? undefined : tabs.kept.get(id);
    if (id === undefined || kept === undefined) return null;
    const isBusy = isTaken(tabs, tab, id);
    return {
      done: tab.bench.experiments.bringBack(id),
      after: () => {
        if (!isBusy) tabs.kept.set(id, { ...kept, isAway: false });
      },
    };
  },
});

const erase = (pick: number): Move => ({
  words: `erase deleted experiment [${pick}] for good`,
  isErasing: true,
  isSure: true,
  begin: (tabs, tab) => {
    const id = picked(listed(tabs, tab, true), pick);
    if (id === undefined) return null;
    if (tabs.notebook.isSlow && id === tab.line.present.id) return null;
    const isBusy =
      isTaken(tabs, tab, id) || (id === tab.line.present.id && tab.bench.keeping.access === 'elsewhere');
    return {
      done: tab.bench.experiments.erase(id),
      after: (was) => {
        if (isBusy) return;
        tabs.kept.delete(id);
        // Erased on request: it needn't be kept.
        if (was.present.id === id) tab.line = lineOf(tab.bench.history);
      },
    };
  },
});

const pick = fc.nat({ max: 9 });

export const anyExperimentMove: fc.Arbitrary<Move> = fc.oneof(
  { weight: 3, arbitrary: fc.boolean().map(openNew) },
  { weight: 4, arbitrary: pick.map(openStored) },
  { weight: 2, arbitrary: fc.constant(openCopy) },
  {
    weight: 2,
    arbitrary: fc
      .tuple(pick, anyText(120))
      .map(([at, title]) => rename(at, title.replaceAll('\n', ' ').trim())),
  },
  { weight: 1, arbitrary: pick.map(duplicate) },
  { weight: 3, arbitrary: pick.map(putAway) },
  { weight: 2, arbitrary: pick.map(bringBack) },
  { weight: 1, arbitrary: pick.map(erase) },
);
