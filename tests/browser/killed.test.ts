import { performance } from 'node:perf_hooks';
import { setTimeout as pause } from 'node:timers/promises';
import { afterEach, describe, expect, inject, it } from 'vitest';
import { BenchPage, scratchFolder } from './support/benchPage.ts';
import { openKillable } from './support/killableBrowser.ts';
import type { KillableBrowser } from './support/killableBrowser.ts';

/** `KILLS=50 npx vitest run --project browser tests/browser/killed.test.ts` for the long run. */
const KILLS = Number(process.env['KILLS'] ?? 4);
/** A new profile after so many: the page lists 50 marks at a time, and all are counted there. */
const KILLS_A_PROFILE = 2;
/** What the bench promises: nothing older than this is lost, ms. */
const PROMISE_MS = 1000;
/** From the start of a run to its end at the latest, ms. */
const LONGEST_RUN_MS = 3500;

let running: KillableBrowser | null = null;

afterEach(async () => {
  await running?.kill();
  running = null;
});

interface Made {
  readonly length: string;
  readonly atMs: number;
}

describe('the browser’s process is ended at a random moment', () => {
  it(
    `${KILLS} times: nothing older than a second is lost, and the notebook opens`,
    async () => {
      const worstLostMs: number[] = [];
      let changes = 0;
      let profile = scratchFolder();
      let kept: string[] = [];
      for (let kill = 0; kill < KILLS; kill += 1) {
        if (kill % KILLS_A_PROFILE === 0) {
          profile = scratchFolder();
          kept = [];
        }
        running = await openKillable(inject('chromiumPath'), profile, inject('pageUrl'));
        const bench = new BenchPage(running.page);
        await bench.opened();
        await expect.poll(() => bench.lengths()).toEqual(kept);
        await bench.listen();
        const made: Made[] = [];
        const isOver = { yet: false };
        const working = work(bench, kept.length, made, isOver);
        await pause(300 + Math.random() * LONGEST_RUN_MS);
        const killedMs = performance.now();
        await running.kill();
        isOver.yet = true;
        await working;

        running = await openKillable(inject('chromiumPath'), profile, inject('pageUrl'));
        const after = new BenchPage(running.page);
        await after.opened();
        const old = made.filter((one) => one.atMs < killedMs - PROMISE_MS);
        const all = [...kept, ...made.map((one) => one.length)];
        await expect
          .poll(async () => (await after.lengths()).length)
          .toBeGreaterThanOrEqual(kept.length + old.length);
        const shown = await after.lengths();
        // Whole states in their order, never a hole or a half-written one; the one under way may have landed.
        expect(all.slice(0, shown.length).map(Number)).toEqual(shown.slice(0, all.length).map(Number));
        expect(shown.length).toBeLessThanOrEqual(all.length + 1);
        expect(await running.page.getByText('couldn’t be read').count()).toBe(0);
        const firstLost = made[shown.length - kept.length];
        worstLostMs.push(firstLost === undefined ? 0 : killedMs - firstLost.atMs);
        changes += made.length;
        kept = shown;
        await pause(200);
        await running.kill();
      }
      const worst = Math.max(...worstLostMs);
      console.info(
        `${KILLS} kills, ${changes} changes; the oldest change lost was ${worst.toFixed(0)} ms old`,
      );
      expect(changes).toBeGreaterThan(KILLS);
      expect(worst).toBeLessThan(PROMISE_MS);
    },
    30_000 + KILLS * 40_000,
  );
});

/** Types lengths at random intervals until the process is gone, and notes when each was entered. */
async function work(bench: BenchPage, from: number, made: Made[], isOver: { yet: boolean }): Promise<void> {
  const field = bench.page.getByRole('textbox', { name: 'Length of a new mark' });
  try {
    for (let index = from; !isOver.yet; index += 1) {
      const length = (10 + index / 10).toFixed(2);
      await field.fill(length);
      await field.press('Enter');
      made.push({ length: String(Number(length)), atMs: performance.now() });
      await pause(Math.random() * 300);
    }
  } catch (error) {
    // The page is gone in the middle of a key press; anything else is a fault of the page.
    if (!isOver.yet && !/closed|crash|disconnect/i.test(String(error))) throw error;
  }
}
