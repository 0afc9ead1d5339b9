// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { Session } from '../../../src/session/session.ts';
import { HomeScreenElement } from '../../../src/ui/records/homeScreenElement.ts';
import { isClearedTab } from '../../../src/ui/records/clearedTab.ts';
import { forgetRead } from '../../../src/ui/records/homeScreen.ts';
import { StoredElement } from '../../../src/ui/records/storedElement.ts';
import { benchInTest } from '../session/benchInTest.ts';

afterEach(() => {
  document.body.replaceChildren();
  forgetRead();
  vi.unstubAllGlobals();
});

async function shown(session: Session, part: HomeScreenElement | StoredElement = new HomeScreenElement()) {
  document.body.append(Object.assign(part, { session }));
  await part.updateComplete;
  return { part, text: () => part.renderRoot.textContent ?? '' };
}

/** A session whose first mark is saved. */
function withSavedMark(): Session {
  const session = benchInTest();
  session.addMarkByHand(0.158);
  session.keeping.saveState = { kind: 'saved' };
  return session;
}

const ADVICE = /erases what this page has saved .* seven days.*first add this page to the home screen/s;

describe('a tab whose storage the browser clears', () => {
  it('is one of an iPhone or iPad, not an app on its home screen, and no other browser', () => {
    expect(isClearedTab({ standalone: false })).toBe(true);
    expect(isClearedTab({ standalone: true })).toBe(false);
    expect(isClearedTab({})).toBe(false);
  });

  it('is told of with the first mark that is saved, not before', async () => {
    const { text } = await shown(benchInTest());
    expect(text()).not.toMatch(ADVICE);
    expect((await shown(withSavedMark())).text()).toMatch(ADVICE);
  });

  it('is told of until it was read, over visits', async () => {
    const { part, text } = await shown(withSavedMark());
    const [, read] = part.renderRoot.querySelectorAll('button');
    read?.click();
    await part.updateComplete;
    expect(text()).not.toMatch(ADVICE);
    expect((await shown(withSavedMark())).text()).not.toMatch(ADVICE);
  });

  it('is told of among what is stored, as long as it is one', async () => {
    expect((await shown(benchInTest(), new StoredElement())).text()).not.toMatch(ADVICE);
    vi.stubGlobal('navigator', Object.assign(Object.create(navigator) as Navigator, { standalone: false }));
    expect((await shown(benchInTest(), new StoredElement())).text()).toMatch(ADVICE);
  });
});
