import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, inject, it } from 'vitest';
import { newExperiment } from '../../src/notebook/newExperiment.ts';
import { scratchFolder } from './support/benchPage.ts';
import { eachBench } from './support/eachBench.ts';

const VIEWS = ['Measure', 'Apparatus', 'Check', 'Working', 'Compare', 'Records'] as const;
const ATTACK = `"><script>window.ran = 1</script><img src=x onerror="window.ran = 2"><svg onload="window.ran = 3"/>{{ran = 4}}\${window.ran = 5}`;

const { open, current } = eachBench();

describe('the built page', () => {
  it('makes no request outside its origin, through every view, sound and files', async () => {
    const bench = await open();
    const { page, context } = current() ?? expect.fail();
    const asked: string[] = [];
    context.on('request', (request) => asked.push(request.url()));
    await page.reload();
    await bench.listen();
    for (const view of VIEWS) {
      await bench.goTo(view);
      await page.waitForTimeout(300);
    }
    await bench.saveJson();
    await bench.stop();
    await page.getByRole('link', { name: 'Open the report' }).click();
    await page.waitForTimeout(1000);
    const { origin } = new URL(inject('pageUrl'));
    expect(asked.length).toBeGreaterThan(5);
    const outside = asked.filter((url) => !/^(blob|data):/.test(url) && new URL(url).origin !== origin);
    expect(outside).toEqual([]);
    expect(current()?.faults).toEqual([]);
  });

  it('is kept from it, and from running strings, by its policy', async () => {
    await open();
    const { page } = current() ?? expect.fail();
    const refused = await page.evaluate(async () => {
      const directives: string[] = [];
      document.addEventListener('securitypolicyviolation', (event) =>
        directives.push(event.effectiveDirective),
      );
      await fetch('https://outside.invalid/').catch(() => undefined);
      const image = document.createElement('img');
      image.src = 'https://outside.invalid/pixel.png';
      const script = document.createElement('script');
      script.append('window.ran = 1');
      try {
        document.body.append(script);
      } catch {
        // Where the text itself is refused already.
      }
      try {
        document.body.insertAdjacentHTML('beforeend', '<img src="x" onerror="window.ran = 2">');
      } catch {
        directives.push('markup refused');
      }
      // In a task of its own: what the test itself evaluates is let through.
      setTimeout(() => {
        try {
          (0, eval)('window.ran = 3');
        } catch {
          directives.push('eval refused');
        }
      });
      await new Promise((resolve) => setTimeout(resolve, 500));
      return { directives, ran: (window as { ran?: number }).ran ?? null };
    });
    expect(refused.ran).toBeNull();
    expect(refused.directives).toEqual(
      expect.arrayContaining(['connect-src', 'img-src', 'markup refused', 'eval refused']),
    );
    expect(refused.directives.some((name) => /^script-src|require-trusted-types-for/.test(name))).toBe(true);
  });

  it('shows an imported file’s words and never runs them', async () => {
    const bench = await open();
    const { page } = current() ?? expect.fail();
    const base = newExperiment('hostile', '2030-03-01T10:00:00.000Z');
    const [fork] = base.forks;
    const [place] = base.places;
    const hostile = {
      ...base,
      title: ATTACK,
      note: ATTACK,
      forks: [{ ...fork, id: ATTACK }],
      places: [{ ...place, name: ATTACK }],
      present: { ...base.present, forkId: ATTACK },
      lesson: { task: ATTACK, hideExpected: false, hideTheory: false, hideTruth: false },
      marks: [0.158, 0.492].map((lengthM, index) => ({
        id: `${ATTACK}${index}`,
        createdAt: ATTACK.slice(0, 40),
        forkId: ATTACK,
        placeId: 'place-1',
        ends: 'closed',
        lengthM,
        otherLengthM: null,
        evidence: {
          source: 'microphone',
          timeS: 1,
          riseDb: 10,
          aboveRoomDb: 20,
          confidence: 0.9,
          frequencyHz: 512,
          frequencyStandardUncertaintyHz: 0.1,
          reason: ATTACK,
          trace: null,
        },
        order: null,
        excluded: false,
        note: ATTACK,
      })),
    };
    const file = join(scratchFolder(), 'hostile.json');
    writeFileSync(file, JSON.stringify(hostile));
    await bench.goTo('Records');
    await page.getByLabel('Experiment file to open').setInputFiles(file);
    await expect.poll(() => page.getByRole('textbox', { name: 'Title' }).inputValue()).toBe(ATTACK);
    for (const view of VIEWS) {
      await bench.goTo(view);
      await page.waitForTimeout(300);
    }
    await page.getByRole('link', { name: 'Open the report' }).click();
    await page.waitForTimeout(1000);
    await bench.goTo('Measure');
    expect(await bench.marks.count()).toBe(2);
    expect(await page.evaluate(() => (window as { ran?: number }).ran ?? null)).toBeNull();
    expect(current()?.faults).toEqual([]);
  });
});
