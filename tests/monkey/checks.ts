import { availableParallelism, loadavg } from 'node:os';
import type { Page } from 'playwright-core';
import { takePauses } from './tab.ts';
import type { Tab } from './tab.ts';

/** The page answers a click within this time on a machine at rest, ms. */
const LONGEST_PAUSE_MS = 1000;

/** How many programs wait for each processor: on a busy machine all takes that much longer. */
function busyness(): number {
  return Math.max(1, loadavg()[0] / availableParallelism());
}

/** What is wrong with a tab right now, in words for the log; nothing of it is said twice. */
export async function faultsOf({ page, faults }: Tab): Promise<readonly string[]> {
  const found = faults.splice(0);
  const seen = await page.evaluate(() => {
    const app = document.querySelector('bench-app')?.shadowRoot;
    const failed: string[] = [];
    const roots: ParentNode[] = app ? [app] : [];
    for (let root = roots.pop(); root !== undefined; root = roots.pop()) {
      for (const { shadowRoot, localName } of root.querySelectorAll('*')) {
        if (shadowRoot === null) continue;
        if (shadowRoot.querySelector('.failed') !== null) failed.push(localName);
        roots.push(shadowRoot);
      }
    }
    const header = app?.querySelector('bench-header')?.shadowRoot;
    const views = header?.querySelectorAll('nav a').length ?? 0;
    const main = app?.querySelector('main');
    return { failed, views, mainHeight: main?.getBoundingClientRect().height ?? 0 };
  });
  for (const name of seen.failed) found.push(`the part <${name}> has failed`);
  if (seen.views < 6) found.push(`the header shows ${seen.views} links to views where 6 belong`);
  if (seen.mainHeight < 40) found.push(`the view is empty: ${Math.round(seen.mainHeight)} px high`);
  for (const { durationMs, slowness } of await takePauses(page)) {
    if (durationMs > LONGEST_PAUSE_MS * Math.max(busyness(), slowness)) {
      found.push(
        `the page stood still for ${Math.round(durationMs)} ms (machine ${Math.max(busyness(), slowness).toFixed(1)} times as slow as at rest)`,
      );
    }
  }
  return found;
}

/**
 * The open experiment as this tab holds it, as JSON. Reads the element's own session: no view shows all of it.
 * @param mustOwn  whether it counts only where this tab works on it
 * @returns null before the session has begun, while sound comes in, and where the page says that it isn't saved
 */
export function readShown(page: Page, mustOwn: boolean): Promise<string | null> {
  return page.evaluate((own) => {
    const app = document.querySelector('bench-app') as (Element & { session?: SessionSeen }) | null;
    const session = app?.session;
    if (session === undefined || session.hearing.isListening || session.saveState.kind !== 'saved')
      return null;
    if (own && session.keeping.access !== 'own') return null;
    return JSON.stringify(session.experiment);
  }, mustOwn);
}

/** Whether the experiment that is shown lies among the deleted ones, because another tab put it there. */
export function readPutAway(page: Page): Promise<boolean> {
  return page.evaluate(async () => {
    const app = document.querySelector('bench-app') as (Element & { session?: SessionSeen }) | null;
    if (app?.session === undefined) return false;
    const { experiment, keeping } = app.session;
    const { value = [] } = await keeping.list();
    return value.some(({ id, deletedAt }) => id === experiment.id && deletedAt !== null);
  });
}

/** What the monkey reads of the page's session. */
interface SessionSeen {
  readonly experiment: { readonly id: string };
  readonly saveState: { readonly kind: string };
  readonly keeping: {
    readonly access: string;
    list(): Promise<{
      readonly value?: readonly { readonly id: string; readonly deletedAt: string | null }[];
    }>;
  };
  readonly hearing: { readonly isListening: boolean };
}

/** What the page's session says of saving, for a finding. */
export function readSaving(page: Page): Promise<string> {
  return page.evaluate(() => {
    const app = document.querySelector('bench-app') as (Element & { session?: SessionSeen }) | null;
    if (app?.session === undefined) return 'there is no session';
    const { saveState, keeping, hearing } = app.session;
    return JSON.stringify({ saveState, access: keeping.access, isListening: hearing.isListening });
  });
}
