import { isDeepStrictEqual } from 'node:util';
import { expect } from 'vitest';
import type { StoredExperiment } from '../../../../src/notebook/notebookStore.ts';
import { readExperiment } from '../../../../src/notebook/readExperiment.ts';
import type { BenchTabs, Tab } from './benchTabs.ts';
import { lineOf } from './line.ts';
import type { Line } from './line.ts';
import { expectSame, expectShown, followTraces } from './perform.ts';

/** After everything has settled: what is shown, what is said of it, and what lies in the store belong together. */
export async function checkAll(tabs: BenchTabs): Promise<void> {
  const stored = await tabs.notebook.records();
  // A tab that only follows shows what the other one has saved.
  const follows = (tab: Tab): number => (tab.bench.keeping.access === 'elsewhere' ? 1 : 0);
  const open = tabs.tabs.filter((tab) => tab !== null).sort((one, other) => follows(one) - follows(other));
  for (const tab of open) {
    follow(tabs, tab);
    followTraces(tab);
    expectShown(tab);
    expectSaid(tabs, tab, stored);
  }
  for (const [id, record] of stored) {
    expect(readExperiment(record.experiment), `the record of ${id} opens`).toMatchObject({
      kind: 'experiment',
    });
    expect([...tabs.kept.keys()], 'a record that nobody made').toContain(id);
  }
  for (const [id, { line, isAway }] of tabs.kept) {
    const record = stored.get(id);
    expect(record, `the experiment ${id} is still kept`).toBeDefined();
    if (record === undefined) continue;
    expectSame(storedLine(record), line, `what is kept of ${id}`);
    expect(record.deletedAt !== null, `whether ${id} is put away`).toBe(isAway);
  }
}

/**
 * A line that a tab no longer shows is kept whole, unless another tab has it.
 * @param isCarried  where it couldn't be saved: whether all of it goes on in what the tab shows now
 */
export async function expectNotLost(tabs: BenchTabs, by: Tab, line: Line, isCarried: boolean): Promise<void> {
  const { id } = line.present;
  if (line.past.length === 0 && line.future.length === 0 && !tabs.kept.has(id)) return;
  if (tabs.tabs.some((tab) => tab !== by && tab !== null && isDeepStrictEqual(tab.line, line))) return;
  const record = (await tabs.notebook.records()).get(id);
  const isKept = record !== undefined && isDeepStrictEqual(storedLine(record), line);
  if (!isKept && isCarried) return;
  expect(record, 'what was shown is kept').toBeDefined();
  if (record === undefined) return;
  expectSame(storedLine(record), line, `what was shown of ${id} is kept whole`);
  keep(tabs, line, record);
}

/** Another experiment has opened, or the other tab's work is followed. */
function follow(tabs: BenchTabs, tab: Tab): void {
  const { bench } = tab;
  const { id } = bench.experiment;
  const wasFollowing = tab.isFollowing;
  tab.isFollowing = bench.keeping.access === 'elsewhere';
  if (!wasFollowing && !tab.isFollowing && id === tab.line.present.id) return;
  // Without storage nothing of the notebook reaches the tab: what it shows may be older, or without its steps.
  if (tab.isTroubled) tab.line = lineOf(bench.history);
  else tab.line = tabs.kept.get(id)?.line ?? ownerOf(tabs, tab, id)?.line ?? lineOf(bench.history);
}

function ownerOf(tabs: BenchTabs, tab: Tab, id: string): Tab | undefined {
  return (
    tabs.tabs.find((other) => other !== null && other !== tab && other.line.present.id === id) ?? undefined
  );
}

/** “Saved” is only said when the store holds the very state that is shown, steps and all. */
function expectSaid(tabs: BenchTabs, tab: Tab, stored: ReadonlyMap<string, StoredExperiment>): void {
  const { saveState, access } = tab.bench.keeping;
  const { line } = tab;
  const { id } = line.present;
  const record = stored.get(id);
  if (access === 'elsewhere') return;
  const isUntouched = line.past.length === 0 && line.future.length === 0 && !tabs.kept.has(id);
  // Where nothing was entered yet there is nothing to save.
  if (saveState.kind !== 'saving' && saveState.kind !== 'refused' && !(isUntouched && record === undefined)) {
    expect(record, 'the page says “Saved”: a record').toBeDefined();
    if (record === undefined) return;
    // Without locks two tabs may work on one experiment: the one that saves second hears of it then.
    const lines = tabs.hasLocks
      ? [line]
      : tabs.tabs.flatMap((other) => (other?.line.present.id === id ? [other.line] : []));
    const held = lines.find((one) => isDeepStrictEqual(storedLine(record), one)) ?? line;
    expectSame(storedLine(record), held, 'the page says “Saved”: what the store holds');
    keep(tabs, held, record);
    tab.isTroubled = tabs.notebook.isFailing;
  } else if (saveState.kind === 'refused') {
    expect(tab.isTroubled || !tabs.hasLocks, `without cause: ${saveState.fault}`).toBe(true);
    // The last write may have landed all the same.
    if (record !== undefined && isDeepStrictEqual(storedLine(record), line)) keep(tabs, line, record);
  } else if (saveState.kind === 'saving') throw new Error('What is said of saving has stopped at “saving”.');
}

/** This lies in the store now. What was put away in another tab stays so until it is worked on here, or saved anew. */
function keep(tabs: BenchTabs, line: Line, record: StoredExperiment): void {
  const { id } = line.present;
  const isAway = record.deletedAt !== null;
  const before = tabs.kept.get(id);
  const wasAway = before?.isAway === true && isDeepStrictEqual(before.line, line);
  if (isAway) expect(wasAway, `${id} is put away because somebody did so`).toBe(true);
  tabs.kept.set(id, { line, isAway });
}

function storedLine({ experiment, history }: StoredExperiment): Line {
  const { past, future } = history as Pick<Line, 'past' | 'future'>;
  return { past, present: experiment as Line['present'], future };
}
