import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { browserFloor, buildTarget, newerMethods } from '../../../build/browserFloor.ts';
import config from '../../../vite.config.ts';

const text = (name: string): string =>
  readFileSync(resolve(import.meta.dirname, '../../..', name), 'utf8').replace(/\s+/g, ' ');

describe('the oldest browsers', () => {
  it('are those that have class static blocks and constructable style sheets, which the page needs', () => {
    // First versions with both, from memory of the published compatibility data: static blocks are in Chrome 94,
    // Firefox 93 and Safari 16.4, constructable sheets in Chrome 73, Firefox 101 and Safari 16.4.
    const needed = { chrome: 94, edge: 94, firefox: 101, safari: 16.4, ios_saf: 16.4 };
    const floor = browserFloor();
    expect([...floor.keys()].sort()).toEqual(Object.keys(needed).sort());
    for (const [name, version] of Object.entries(needed))
      expect(floor.get(name)).toBeGreaterThanOrEqual(version);
  });

  it('are the build’s target, and stand in the README and in the page that no script has filled', () => {
    expect((config as { build: { target: unknown } }).build.target).toEqual(buildTarget());
    const floor = browserFloor();
    const at = (name: string): string => String(floor.get(name));
    expect(text('README.md')).toContain(
      `Safari and iPadOS from ${at('ios_saf')}, Firefox from ${at('firefox')}, Chrome and Edge from ${at('chrome')}.`,
    );
    const unfilled = /<bench-app>(.*)<\/bench-app>/.exec(text('index.html'))?.[1] ?? '';
    expect(unfilled).toContain(
      `Safari ${at('safari')}, iPadOS ${at('ios_saf')}, Firefox ${at('firefox')}, Chrome ${at('chrome')} or Edge ${at('edge')}`,
    );
    expect([at('safari'), at('chrome')]).toEqual([at('ios_saf'), at('edge')]);
  });
});

describe('the words in the page that no script has filled', () => {
  it('vanish when the page’s element starts: it has a shadow root, and no slot shows them in it', () => {
    const source = text('src/ui/appElement.ts');
    expect(source).toContain('class AppElement extends PartElement');
    expect(source).not.toMatch(/<slot|createRenderRoot/);
    expect(text('src/ui/parts/partElement.ts')).not.toMatch(/<slot|createRenderRoot/);
  });
});

describe('what a build uses', () => {
  const floor = new Map([
    ['chrome', 98],
    ['firefox', 104],
    ['safari', 16.4],
  ]);

  it('may be no method that came after the oldest browsers', () => {
    expect(newerMethods('a.toSorted(b);Object.groupBy(c,d);structuredClone(e)', floor)).toEqual([
      'toSorted',
      'groupBy',
    ]);
    expect(newerMethods('a.findLast(b);this.myGroupBy(c);mygroupBy(d)', floor)).toEqual([]);
    expect(newerMethods('a.findLast(b)', new Map([...floor, ['firefox', 101]]))).toEqual(['findLast']);
  });
});
