import fc from 'fast-check';
import { expect } from 'vitest';
import { anyApparatusEdit } from './apparatusEdits.ts';
import type { BenchTabs, Tab } from './benchTabs.ts';
import { checkAll, expectNotLost } from './checks.ts';
import type { Edit } from './edit.ts';
import type { Line } from './line.ts';
import { anyExperimentMove } from './experimentMoves.ts';
import { anyIntakeMove } from './intakeMoves.ts';
import { anyMarkEdit } from './markEdits.ts';
import type { Move } from './move.ts';
import type { StoreMood } from './notebookInTest.ts';
import { perform } from './perform.ts';
import { anySessionEdit } from './sessionEdits.ts';

/** One thing done in the browser. The model is kept beside the real thing, in `BenchTabs`. */
type Command = fc.AsyncCommand<BenchTabs, BenchTabs>;

function command(
  words: string,
  isPossible: (tabs: BenchTabs) => boolean,
  run: (tabs: BenchTabs) => Promise<void> | void,
): Command {
  return {
    check: isPossible,
    run: async (tabs) => {
      await run(tabs);
      await tabs.settle();
      await checkAll(tabs);
    },
    toString: () => words,
  };
}

/** Something done in one of the tabs, while it is open. */
function inTab(index: number, words: string, run: (tab: Tab, tabs: BenchTabs) => Promise<void> | void) {
  const isPossible = (tabs: BenchTabs): boolean => tabs.tab(index) !== null;
  return command(index === 0 ? words : `${words} (second tab)`, isPossible, async (tabs) => {
    const tab = tabs.tab(index);
    if (tab !== null) await run(tab, tabs);
  });
}

/** Waits for what the page would tell a person: that storage failed, else nothing fails here. */
async function finished(tab: Tab, done: Promise<unknown>): Promise<boolean> {
  try {
    await done;
    return true;
  } catch (error) {
    if (!tab.isTroubled) throw error;
    return false;
  }
}

/** Whether the tab reaches the notebook, and the notebook works. */
function isWell({ notebook }: BenchTabs, { bench }: Tab): boolean {
  return bench.keeping.sounds !== null && !notebook.isFailing;
}

/** @param meanwhile  what is done while it is still under way; each thing goes to what is open at that moment */
async function make(
  tabs: BenchTabs,
  tab: Tab,
  move: Move,
  meanwhile: () => Promise<Line | null>,
): Promise<void> {
  const wasWell = isWell(tabs, tab);
  const { questions } = tab;
  // Another tab's work is in that one, whatever this one last saw of it.
  const isOnlyShown = tab.bench.keeping.access === 'elsewhere';
  const begun = move.begin(tabs, tab);
  if (begun === null) {
    await meanwhile();
    return;
  }
  const before = tab.line;
  const was = (await meanwhile()) ?? before;
  const isAsMade = tab.line === was;
  const isDone = await finished(tab, begun.done);
  await tabs.settle();
  if (tab.questions > questions) return;
  // What is done to another tab's experiment before the tab has learnt whose it is stays in the tab, and is said to.
  if (!isAsMade && tab.bench.keeping.access === 'apart') tab.isTroubled = true;
  const isCertain = move.isSure === true || begun.isInHere === true || (wasWell && isWell(tabs, tab));
  if (isDone && isCertain) {
    await begun.after(was, isAsMade);
    tab.isFollowing = tab.bench.keeping.access === 'elsewhere';
  }
  if (tab.bench.experiment.id === was.present.id || move.isErasing === true || isOnlyShown) return;
  await expectNotLost(tabs, tab, was, move.isGoingOn === true && tab.isTroubled);
}

const nothing = (): Promise<null> => Promise.resolve(null);
const editCommand = (index: number, edit: Edit): Command =>
  inTab(index, edit.words, (tab) => perform(tab, edit));
const moveCommand = (index: number, move: Move): Command =>
  inTab(index, move.words, (tab, tabs) => make(tabs, tab, move, nothing));

/** What is done while the store is slow: a move is still under way when the next things are done. */
function whileSlow(index: number, move: Move | null, edits: readonly Edit[], isErased: boolean): Command {
  const parts = [
    move?.words,
    ...edits.map(({ words }) => words),
    isErased ? 'all is erased elsewhere' : null,
  ];
  const words = `all at once: ${parts.filter((part) => part !== null && part !== undefined).join(' + ')}`;
  return inTab(index, words, async (tab, tabs) => {
    tabs.notebook.holdUp();
    let answer = (): void => undefined;
    tabs.locks.answersFrom = new Promise((resolve) => (answer = resolve));
    tabs.locks.isImpatient = true;
    try {
      const { id } = tab.line.present;
      let was: Line | null = null;
      const doAll = async (some: readonly Edit[]): Promise<void> => {
        for (const edit of some) {
          perform(tab, edit);
          if (tab.line.present.id === id) was = tab.line;
          await tabs.turn();
        }
      };
      const meanwhile = async (): Promise<Line | null> => {
        const half = Math.ceil(edits.length / 2);
        await doAll(edits.slice(0, half));
        if (isErased) eraseAll(tabs, 'another tab');
        tabs.notebook.goOn();
        // What is open may be another one now, and nobody has said yet whose it is.
        await tabs.turn();
        await doAll(edits.slice(half));
        answer();
        return was;
      };
      // A question whether unsaved work may go is asked before what is done meanwhile.
      if (move === null || tabs.notebook.isFailing) await meanwhile();
      else await make(tabs, tab, move, meanwhile);
    } finally {
      tabs.locks.isImpatient = false;
      tabs.notebook.goOn();
      answer();
    }
  });
}

function eraseAll(tabs: BenchTabs, by: 'another tab' | 'the browser'): void {
  for (const tab of tabs.tabs) if (tab !== null) tab.isTroubled = true;
  tabs.kept.clear();
  tabs.notebook.erase(by);
}

const mood = (next: StoreMood): Command =>
  command(
    next === 'well' ? 'storage works again' : `storage is ${next}`,
    (tabs) => tabs.notebook.mood !== next,
    (tabs) => {
      tabs.notebook.mood = next;
      if (tabs.notebook.isFailing) for (const tab of tabs.tabs) if (tab !== null) tab.isTroubled = true;
    },
  );

const reload = (index: number): Command =>
  inTab(index, 'load the page anew', async (tab, tabs) => {
    const { id } = tab.line.present;
    const kept = tabs.kept.get(id);
    const again = await tabs.open(index);
    if (tabs.notebook.mood === 'well' && kept !== undefined && !kept.isAway)
      expect(again.bench.experiment.id, 'the experiment that was open').toBe(id);
  });

const takeOver = (index: number): Command =>
  inTab(index, 'work on it here', async (tab, tabs) => {
    const isOwn = (): boolean => tab.bench.keeping.access === 'own';
    if (isOwn()) return;
    const { id } = tab.line.present;
    await tab.bench.keeping.takeOver();
    await tabs.settle();
    const kept = tabs.kept.get(id);
    // What this tab held apart is given up for what the other one saved: a full store can still be read.
    if (kept !== undefined && isOwn()) tab.line = kept.line;
    if (isWell(tabs, tab)) expect(isOwn()).toBe(true);
  });

const anyTab = fc.constantFrom(0, 0, 0, 1);
const anyEdit = fc.oneof(
  { weight: 5, arbitrary: anyMarkEdit },
  { weight: 3, arbitrary: anyApparatusEdit },
  { weight: 4, arbitrary: anySessionEdit },
);
const anyMove = fc.oneof(
  { weight: 3, arbitrary: anyExperimentMove },
  { weight: 1, arbitrary: anyIntakeMove },
);

/** Anything that a person can do, in one tab or the other, and what the browser can do to them. */
export const anyCommand: fc.Arbitrary<Command> = fc.oneof(
  { weight: 30, arbitrary: fc.tuple(anyTab, anyEdit).map(([index, edit]) => editCommand(index, edit)) },
  { weight: 9, arbitrary: fc.tuple(anyTab, anyMove).map(([index, move]) => moveCommand(index, move)) },
  {
    weight: 4,
    arbitrary: fc
      .tuple(
        anyTab,
        fc.option(anyMove),
        fc.array(anyEdit, { minLength: 1, maxLength: 4 }),
        fc.integer({ min: 0, max: 7 }),
      )
      .map(([index, move, edits, chance]) =>
        chance === 7 ? whileSlow(index, null, edits, true) : whileSlow(index, move, edits, false),
      ),
  },
  { weight: 3, arbitrary: fc.constantFrom(0, 1).map(reload) },
  {
    weight: 2,
    arbitrary: fc.constant(
      command(
        'open a second tab',
        (tabs) => tabs.tab(1) === null,
        async (tabs) => void (await tabs.open(1)),
      ),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constant(
      command(
        'close the second tab',
        (tabs) => tabs.tab(1) !== null,
        (tabs) => tabs.close(1),
      ),
    ),
  },
  { weight: 2, arbitrary: fc.constantFrom(0, 1).map(takeOver) },
  { weight: 1, arbitrary: fc.constantFrom<StoreMood>('full', 'broken', 'refused').map(mood) },
  { weight: 3, arbitrary: fc.constant(mood('well')) },
  {
    weight: 2,
    arbitrary: fc.constantFrom(0, 1).map((index) =>
      inTab(index, 'try again to save', (tab, tabs) => {
        tab.isTroubled ||= tabs.notebook.mood !== 'well';
        return tab.bench.keeping.tryAgain();
      }),
    ),
  },
  {
    weight: 1,
    arbitrary: fc.constantFrom('another tab' as const, 'the browser' as const).map((by) =>
      command(
        `all is erased by ${by}`,
        () => true,
        (tabs) => eraseAll(tabs, by),
      ),
    ),
  },
);
