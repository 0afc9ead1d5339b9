import type { Page } from 'playwright-core';
import { describe, expect, it } from 'vitest';
import type {} from '../../src/ui/appElement.ts';
import type { Resonance } from '../../src/session/hearing/listeningTypes.ts';
import { NOTHING_HEARD, flagAt } from '../support/nothingHeard.ts';
import { eachBench } from './support/eachBench.ts';

const { open } = eachBench(true);

/** Which sounds a detector is unsure of changes with its training, so the flag itself is given to what listens. */
const flag = (page: Page, resonance: Resonance): Promise<void> =>
  page.evaluate(
    (update) => {
      const session = document.querySelector('bench-app')?.session;
      if (session === undefined) throw new Error('no session');
      const timeS = session.hearing.trace.latest?.timeS ?? 0;
      const resonances = update.resonances.map((one) => ({ ...one, timeS }));
      session.hearing['takeUpdate']({ ...update, resonances });
    },
    { ...NOTHING_HEARD, resonances: [resonance] },
  );

/** Until the first sound has been looked at. */
const heard = (page: Page): Promise<void> =>
  expect
    .poll(() => page.evaluate(() => document.querySelector('bench-app')?.session.hearing.trace.latest))
    .not.toBeNull();

/** Whether the stage shows a flash, as the page draws it. */
const flashes = (page: Page): Promise<boolean> =>
  page.evaluate(async () => {
    const stage = document.querySelector('bench-app')?.shadowRoot?.querySelector('bench-stage');
    await stage?.updateComplete;
    const drawn = stage?.shadowRoot?.querySelector('.stage');
    if (drawn === null || drawn === undefined) throw new Error('no stage');
    return getComputedStyle(drawn).boxShadow !== 'none';
  });

describe('a flag that may be a resonance', () => {
  it('is said, doesn’t flash, and becomes a mark with a hollow stem by one key', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.listen();
    await page.getByRole('button', { name: 'Stop' }).waitFor();
    await heard(page);

    await flag(page, flagAt(0, { certainty: 'maybe', confidence: 0.62 }));
    expect(await flashes(page)).toBe(false);
    await page.getByText('Perhaps a resonance, 62 % sure.').waitFor();
    await page.getByRole('img', { name: /^Level of the last minute.*perhaps at/ }).waitFor();
    const keep = page.getByRole('listitem').getByRole('button', { name: /^Keep the resonance at / });
    await keep.waitFor();
    expect(await bench.marks.count()).toBe(0);

    await page.keyboard.press('k');
    await bench.marks.first().waitFor();
    expect(await keep.count()).toBe(0);
    await bench.stop();
    await bench.lengthOf(1).fill('15.8');
    await bench.lengthOf(1).press('Enter');
    await page.getByRole('img', { name: /Marks: perhaps .*at 15\.8 cm/ }).waitFor();
    const head = page.locator('.stem.unsure .head');
    const paint = (): Promise<{ fill: string; stroke: string }> =>
      head.evaluate((circle) => {
        const { fill, stroke } = getComputedStyle(circle);
        return { fill, stroke };
      });
    const { fill, stroke } = await paint();
    expect(fill).not.toBe(stroke);
  });

  it('is kept on a phone, which has no keys, by a button beside what is said', async () => {
    const viewport = { width: 390, height: 844 };
    const bench = await open({ viewport });
    const { page } = bench;
    await bench.listen();
    await page.getByRole('button', { name: 'Stop' }).waitFor();
    await heard(page);
    await flag(page, flagAt(0, { certainty: 'maybe', confidence: 0.62 }));
    const keep = page.getByRole('contentinfo').getByRole('button', { name: /^Keep the resonance at / });
    await keep.waitFor();
    const box = await keep.boundingBox();
    expect((box?.x ?? NaN) + (box?.width ?? NaN)).toBeLessThanOrEqual(viewport.width);
    expect((box?.y ?? NaN) + (box?.height ?? NaN)).toBeLessThanOrEqual(viewport.height);
    expect(await page.evaluate(() => scrollY)).toBe(0);
    await keep.click();
    await bench.marks.first().waitFor();
    expect(await page.getByText('Perhaps a resonance, 62 % sure.').count()).toBe(0);
    await bench.stop();
  });

  it('differs from a sure one, which flashes', async () => {
    const bench = await open();
    await bench.listen();
    await bench.page.getByRole('button', { name: 'Stop' }).waitFor();
    await flag(bench.page, flagAt(0));
    expect(await flashes(bench.page)).toBe(true);
    await bench.stop();
  });
});
