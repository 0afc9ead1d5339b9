import type { BrowserContext } from 'playwright-core';
import { Random } from '../bench/detector/random.ts';
import { ACTIONS } from './actions.ts';
import type { Action } from './actions.ts';
import { faultsOf, readPutAway, readSaving, readShown } from './checks.ts';
import { openTab } from './tab.ts';
import type { Tab } from './tab.ts';

export interface MonkeyOptions {
  readonly seed: number;
  /** Ends after so many actions, or when `isOver` says so. */
  readonly steps: number;
  readonly isOver: () => boolean;
  /** A person's browser with nothing kept in it yet. */
  readonly context: BrowserContext;
  readonly url: string;
  /** Paths of files that it may open. */
  readonly files: readonly string[];
  /** Told of every action, for a log to follow. */
  readonly onAction?: (line: string) => void;
}

export interface Finding {
  readonly step: number;
  readonly what: string;
  /** The last actions, oldest first. */
  readonly actions: readonly string[];
}

export interface MonkeyReport {
  readonly steps: number;
  readonly reloads: number;
  readonly findings: readonly Finding[];
}

const KEPT_ACTIONS = 15;
const MOST_TABS = 2;
const MOST_FINDINGS = 5;
/** Within this time what was done is on the disk and the page says so, ms. */
const SAVING_MS = 10_000;

/**
 * Does what a person might, at random from the seed alone, and looks after each action for what must never be: errors,
 * parts that failed, an empty view, a page that stands still, work that was saved and is gone after a reload.
 * A browser's own timing is not in the seed: a finding may need some runs of its seed to come again.
 */
export async function letMonkeyLoose(options: MonkeyOptions): Promise<MonkeyReport> {
  const { context, url } = options;
  const random = new Random(options.seed);
  const tabs: Tab[] = [await openTab(context, url)];
  // Links beside the page open tabs of their own: nobody reads them here.
  context.on('page', (page) => {
    setTimeout(() => {
      if (tabs.every((tab) => tab.page !== page) && !opening) void page.close().catch(() => undefined);
    }, 500);
  });
  let opening = false;
  const actions: string[] = [];
  const findings: Finding[] = [];
  let reloads = 0;
  let step = 0;
  const find = (what: string): void => {
    findings.push({ step, what, actions: actions.slice(-KEPT_ACTIONS) });
  };
  const note = (line: string): void => {
    actions.push(line);
    options.onAction?.(`${step}: ${line}`);
  };

  while (step < options.steps && !options.isOver() && findings.length < MOST_FINDINGS) {
    step += 1;
    const tabNumber = random.integer(0, tabs.length - 1);
    const tab = tabs[tabNumber];
    if (tab === undefined) break;
    const dice = random.next();
    const where = tabs.length > 1 ? `tab ${tabNumber + 1}: ` : '';
    try {
      await tab.page.bringToFront();
      if (dice < 0.03) {
        note(`${where}reload`);
        reloads += 1;
        const lost = await reloadAndCompare(
          tab,
          tabs.filter((other) => other !== tab),
        );
        if (lost !== null) find(lost);
      } else if (dice < 0.04 && tabs.length < MOST_TABS) {
        note('open a second tab');
        opening = true;
        tabs.push(await openTab(context, url));
        opening = false;
      } else if (dice < 0.05 && tabs.length > 1) {
        note(`${where}close the tab`);
        tabs.splice(tabNumber, 1);
        await tab.page.close({ runBeforeUnload: false });
        continue;
      } else if (dice < 0.06) {
        const isOffline = random.chance(0.5);
        note(isOffline ? 'the network goes' : 'the network comes back');
        await context.setOffline(isOffline);
      } else {
        const line = await act(pickAction(random), tab, random, options);
        if (line === null) continue;
        note(`${where}${line}`);
      }
      for (const fault of await faultsOf(tab)) find(`${where}${fault}`);
    } catch (error) {
      find(`${where}the monkey itself was stopped: ${String(error).split('\n')[0] ?? ''}`);
    }
  }
  await context.setOffline(false);
  return { steps: step, reloads, findings };
}

function pickAction(random: Random): Action {
  const whole = ACTIONS.reduce((sum, { weight }) => sum + weight, 0);
  let rest = random.next() * whole;
  return ACTIONS.find(({ weight }) => (rest -= weight) < 0) ?? ACTIONS[0];
}

/** What can't be done, because something lies over it or it has gone meanwhile, is no finding. */
async function act(
  action: Action,
  { page }: Tab,
  random: Random,
  options: MonkeyOptions,
): Promise<string | null> {
  // The action's own choices don't change what comes after it, however many it makes.
  const own = random.branch(action.name);
  try {
    return await action.act({ page, random: own, files: options.files, url: options.url });
  } catch (error) {
    if (
      error instanceof Error &&
      /Timeout|intercepts|detached|not visible|not enabled/i.test(error.message)
    ) {
      return null;
    }
    throw error;
  }
}

/**
 * @param others  a tab that shows the same experiment gets it while this one is away, with what is typed there
 * @returns what is gone; null where all is as it was, or nothing could be said because it wasn't saved before
 */
async function reloadAndCompare({ page }: Tab, others: readonly Tab[]): Promise<string | null> {
  // What stands in a field belongs to the experiment once the field is left.
  await page.evaluate(() => {
    let active = document.activeElement;
    while (active?.shadowRoot?.activeElement) active = active.shadowRoot.activeElement;
    (active as HTMLElement | null)?.blur();
  });
  const before = await untilSaved(page);
  // Deleted in another tab, it is shown here until the page goes; then it is among the deleted ones.
  const isPutAway = await readPutAway(page);
  await page.reload();
  await page.locator('bench-app').waitFor();
  if (before === null || isPutAway) return null;
  const after = await untilSaved(page, false);
  if (after === null)
    return `after a reload the page doesn’t say that it is saved: ${await readSaving(page)}`;
  if (after === before) return null;
  const elsewhere = await Promise.all(others.map((other) => readShown(other.page, false)));
  const id = idOf(after);
  if (id === idOf(before) && elsewhere.some((shown) => shown !== null && idOf(shown) === id)) return null;
  return `after a reload the experiment is another one:${differences(before, after)}`;
}

const idOf = (experiment: string): string => (JSON.parse(experiment) as { readonly id: string }).id;

/** The parts of two experiments that differ, a line each. */
function differences(before: string, after: string): string {
  const [one, other] = [before, after].map((text) => JSON.parse(text) as Record<string, unknown>);
  return Object.keys({ ...one, ...other })
    .map((name) => [name, JSON.stringify(one?.[name]), JSON.stringify(other?.[name])] as const)
    .filter(([, was, is]) => was !== is)
    .map(([name, was, is]) => `\n  ${name} before ${was}\n  ${name} after  ${is}`)
    .join('');
}

/** The experiment once all is saved; null where the page says that it isn't, or keeps on changing. */
async function untilSaved(page: Tab['page'], mustOwn = true): Promise<string | null> {
  const endMs = performance.now() + SAVING_MS;
  let last: string | null = null;
  while (performance.now() < endMs) {
    const shown = await readShown(page, mustOwn);
    if (shown !== null && shown === last) return shown;
    last = shown;
    await page.waitForTimeout(250);
  }
  return null;
}
