import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { describe, expect, inject, it } from 'vitest';
import type {} from '../../src/ui/appElement.ts';
import { words } from '../../src/words/inUse.ts';
import { exampleExperiment, exampleMark } from '../unit/notebook/exampleExperiment.ts';
import { eachBench } from './support/eachBench.ts';
import { SHARED_DATABASE, recordInStore, storeOfFirstVersion } from './support/storedRecords.ts';

const { open, current } = eachBench();

/** What became of each kind of element that is on the page while its kind alone can't be drawn. */
function breakEachKind(page: Page): Promise<Record<string, string>> {
  return page.evaluate(async () => {
    interface Part extends HTMLElement {
      requestUpdate(): void;
      updateComplete: Promise<boolean>;
    }
    const parts = (root: ParentNode): Part[] =>
      [...root.querySelectorAll('*')].flatMap((element) => [
        ...(element.localName.startsWith('bench-') ? [element as Part] : []),
        ...(element.shadowRoot === null ? [] : parts(element.shadowRoot)),
      ]);
    const panelOf = (part: Part): Element | null => part.shadowRoot?.querySelector('.failed') ?? null;
    const settle = async (): Promise<void> => {
      for (const part of parts(document)) await part.updateComplete;
    };
    const found: Record<string, string> = {};
    for (const tag of new Set(parts(document).map(({ localName }) => localName))) {
      const kind = customElements.get(tag)?.prototype as { render: () => unknown } | undefined;
      // Comes with the first file, or the first question.
      if (kind === undefined) continue;
      const { render } = kind;
      kind.render = () => {
        throw new RangeError('stampedHz must be 100..2100, got 4096');
      };
      const part = parts(document).find(({ localName }) => localName === tag);
      part?.requestUpdate();
      await settle();
      const panel = part === undefined ? null : panelOf(part);
      const others = parts(document).filter((other) => other.localName !== tag && panelOf(other) !== null);
      const words = panel?.textContent ?? '';
      kind.render = render;
      panel?.querySelector('button')?.click();
      await settle();
      const isBack = part !== undefined && panelOf(part) === null;
      found[tag] =
        !words.includes('This part of the page has failed') || words.includes('stampedHz')
          ? `said “${words}”`
          : others.length > 0
            ? `took ${others.map(({ localName }) => localName).join(', ')} along`
            : isBack
              ? 'said so in its place and came back'
              : 'did not come back';
    }
    return found;
  });
}

describe('a part of the page that throws', () => {
  it('says so in its own place and leaves all others working, whichever it is', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['15.8', '49.2']);
    const found: Record<string, string> = {};
    for (const view of ['Measure', 'Apparatus', 'Check', 'Working', 'Compare', 'Records']) {
      await bench.goTo(view);
      Object.assign(found, await breakEachKind(page));
    }
    for (const [link, heading] of [
      ['Open the report', 'Lab report'],
      ['open the class view', 'Class'],
    ] as const) {
      await bench.goTo('Records');
      await page.getByRole('link', { name: link }).click();
      await page.getByRole('region', { name: heading, exact: true }).waitFor();
      Object.assign(found, await breakEachKind(page));
    }
    expect(Object.entries(found).filter(([, what]) => what !== 'said so in its place and came back')).toEqual(
      [],
    );
    expect(Object.keys(found).length).toBeGreaterThan(45);
    await bench.goTo('Measure');
    await bench.addMarks(['82.7']);
    await expect.poll(() => bench.lengths()).toEqual(['15.8', '49.2', '82.7']);
  });

  it('offers to undo the step that brought it about, and the file', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['15.8']);
    await page.evaluate(() => {
      const kind = customElements.get('bench-column')?.prototype as {
        session: { experiment: { marks: unknown[] } };
        render: () => unknown;
      };
      const { render } = kind;
      kind.render = function () {
        if (this.session.experiment.marks.length > 1) throw new Error('two are too many');
        return render.call(this);
      };
    });
    await bench.addMarks(['49.2']);
    const panel = page.getByRole('alert').filter({ hasText: 'the picture of the column' });
    await panel.waitFor();
    // The rest goes on.
    expect((await bench.speed()).speedMps).toBeGreaterThan(300);
    const waiting = page.waitForEvent('download');
    await panel.getByRole('button', { name: 'Save the experiment’s file' }).click();
    const file = JSON.parse(readFileSync(await (await waiting).path(), 'utf8')) as { marks: unknown[] };
    expect(file.marks).toHaveLength(2);
    await panel.getByRole('button', { name: 'Undo the last step' }).click();
    await page.getByRole('img', { name: /column/i }).waitFor();
    expect(await panel.count()).toBe(0);
    expect(await bench.lengths()).toEqual(['15.8']);
    // Told to whoever looks into it, once.
    expect(current()?.faults.filter((fault) => fault.includes('two are too many'))).toHaveLength(1);
  });

  it('in the handler of a button or in a promise is told in plain words', async () => {
    const bench = await open();
    const { page } = bench;
    await bench.addMarks(['15.8']);
    await page.evaluate(() => {
      const session = document.querySelector('bench-app')?.session;
      if (session === undefined) throw new Error('no session');
      session.deleteMark = () => {
        throw new Error('inner words');
      };
    });
    await bench.deleteMark(1);
    const told = page.getByRole('alert').filter({ hasText: words.pageFault.action });
    await told.waitFor();
    expect(await told.innerText()).not.toContain('inner words');
    await page.getByRole('button', { name: 'Close' }).click();
    await page.evaluate(() => {
      void Promise.reject(new Error('other inner words'));
    });
    await told.waitFor();
    expect(await bench.lengths()).toEqual(['15.8']);
  });
});

describe('at the start', () => {
  const marked = { ...exampleExperiment([exampleMark('a', { lengthM: 0.158 })]), title: 'Marked' };
  const ids = ['marked', 'high', 'bad'] as const;
  const [good, high, bad] = ids.map((id) => ({ ...marked, id, title: `Title ${id}` }));

  it('a record that a part can’t show opens all the same, storage isn’t blamed, and all are listed', async () => {
    const bench = await open({ url: `${inject('pageUrl')}icon.svg` });
    const { page } = bench;
    if (good === undefined || high === undefined) throw new Error('no records');
    const forks = high.forks.map((fork) => ({ ...fork, nominalHz: 4096, standardUncertaintyHz: 4 }));
    await storeOfFirstVersion(page, [good, { ...high, forks }]);
    await page.goto(inject('pageUrl'));
    await expect.poll(() => bench.lengths()).toEqual(['15.8']);
    await bench.addMarks(['20']);
    await page.getByText('Saved', { exact: true }).waitFor();
    expect(await page.getByText('storage failed').count()).toBe(0);
    await bench.goTo('Records');
    const list = page.getByRole('region', { name: 'Experiments', exact: true });
    await list.getByText('Title high').waitFor();
    await list.getByRole('button', { name: 'Open Title marked' }).click();
    await list.getByText('open now').waitFor();
    await bench.goTo('Measure');
    await expect.poll(() => bench.lengths()).toEqual(['15.8']);
  });

  it('a record that the browser itself can’t give is named, and the others open', async () => {
    const bench = await open({
      url: `${inject('pageUrl')}icon.svg`,
      beforeScripts: `
        const { get, getAll } = IDBObjectStore.prototype;
        const broken = () => new DOMException('Failed to read large IndexedDB value', 'DataError');
        IDBObjectStore.prototype.getAll = function (...given) {
          if (this.name === 'experiments') throw broken();
          return getAll.apply(this, given);
        };
        IDBObjectStore.prototype.get = function (key) {
          if (this.name === 'experiments' && key === 'bad') throw broken();
          return get.call(this, key);
        };
      `,
    });
    const { page } = bench;
    if (good === undefined || bad === undefined) throw new Error('no records');
    await storeOfFirstVersion(page, [good, bad]);
    await page.goto(inject('pageUrl'));
    await page.getByRole('alert').filter({ hasText: 'couldn’t be read' }).waitFor();
    await bench.goTo('Records');
    const list = page.getByRole('region', { name: 'Experiments', exact: true });
    await list.getByText('A record that can’t be read').waitFor();
    await list.getByRole('button', { name: 'Open Title marked' }).click();
    await bench.goTo('Measure');
    await expect.poll(() => bench.lengths()).toEqual(['15.8']);
    await bench.addMarks(['20']);
    await page.getByText('Saved', { exact: true }).waitFor();
    expect(await recordInStore(page, SHARED_DATABASE, 'marked')).toMatchObject({
      marks: [{ lengthM: 0.158 }, { lengthM: 0.2 }],
    });
  });
});
