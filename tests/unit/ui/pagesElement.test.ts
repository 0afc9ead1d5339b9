// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { pageOf, pageStart } from '../../../src/ui/parts/pagesElement.ts';

afterEach(() => document.body.replaceChildren());

/** The element as it stands on a page. */
async function pages(total: number, from: number, size: number) {
  const element = document.createElement('bench-pages');
  Object.assign(element, { total, from, size, list: 'marks' });
  document.body.append(element);
  await element.updateComplete;
  const root = element.renderRoot as ShadowRoot;
  const wanted: number[] = [];
  element.addEventListener('page-change', ({ detail }) => wanted.push(detail));
  const [previous, next] = [...root.querySelectorAll('button')];
  return { element, root, wanted, previous, next };
}

describe('pageStart and pageOf', () => {
  it('keep to the list: no page begins before it or behind it', () => {
    expect(pageStart(120, 60, 50)).toBe(50);
    expect(pageStart(120, 500, 50)).toBe(100);
    expect(pageStart(120, -3, 50)).toBe(0);
    expect(pageStart(0, 50, 50)).toBe(0);
    expect(pageOf([1, 2, 3, 4, 5], 4, 2)).toEqual([5]);
    expect(pageOf([1, 2, 3], 90, 2)).toEqual([3]);
  });
});

describe('bench-pages', () => {
  it('shows nothing where all of a list is shown', async () => {
    const { root } = await pages(50, 0, 50);
    expect(root.querySelector('nav')).toBeNull();
  });

  it('says which part of how much is shown, and goes to any other', async () => {
    const { root, wanted, previous, next } = await pages(3000, 100, 50);
    expect(root.querySelector('nav')?.textContent.replace(/\s+/g, ' ')).toContain('of 3000 marks');
    const select = root.querySelector('select') as HTMLSelectElement;
    expect(select.options).toHaveLength(60);
    // happy-dom loses which option is selected when options are inserted: what is asked for stands in the attribute.
    const chosen = [...select.options].filter((option) => option.hasAttribute('selected'));
    expect(chosen.map((option) => option.textContent.trim())).toEqual(['101 to 150']);
    next?.click();
    previous?.click();
    select.value = '2950';
    select.dispatchEvent(new Event('change'));
    expect(wanted).toEqual([150, 50, 2950]);
  });

  it('has no way beyond the first and the last page', async () => {
    const first = await pages(120, 0, 50);
    expect([first.previous?.disabled, first.next?.disabled]).toEqual([true, false]);
    const last = await pages(120, 100, 50);
    expect([last.previous?.disabled, last.next?.disabled]).toEqual([false, true]);
  });
});
