// @vitest-environment happy-dom
import { html, render } from 'lit';
import { readFileSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, describe, expect, it } from 'vitest';
import { newMark } from '../../../src/notebook/newMark.ts';
import { highestOrderOf, offeredOrders } from '../../../src/ui/measure/offeredOrders.ts';
import { choice } from '../../../src/ui/parts/choice.ts';

afterEach(() => {
  document.body.replaceChildren();
});

const OPTIONS = ['a', 'b', 'c'].map((value) => ({ value, name: value.toUpperCase() }));

describe('a choice', () => {
  /** A select on the page; `now` is what is in use, `draw` draws it as an element does. */
  function drawn(start: string, isTaken: (value: string) => boolean = () => true) {
    const state = { now: start };
    const place = document.createElement('div');
    document.body.append(place);
    const draw = (): void => {
      render(
        html`<p>
          ${choice({
            options: OPTIONS,
            now: () => state.now,
            choose: (value) => {
              if (isTaken(value)) state.now = value;
            },
          })}
        </p>`,
        place,
      );
    };
    draw();
    const select = place.querySelector('select');
    if (select === null) throw new Error('no select');
    const choose = (value: string): void => {
      select.value = value;
      select.dispatchEvent(new Event('change'));
      draw();
    };
    return { state, draw, select, choose };
  }

  it('shows what is in use from the start', () => {
    expect(drawn('b').select.value).toBe('b');
  });

  for (const [from, chosen] of [
    ['a', 'c'],
    ['c', 'a'],
    ['b', 'c'],
  ] as const) {
    it(`shows ${from} again where the choice of ${chosen} is undone`, () => {
      const { state, draw, select, choose } = drawn(from);
      choose(chosen);
      expect(select.value).toBe(chosen);
      state.now = from;
      draw();
      expect(select.value).toBe(from);
      expect([...select.options].filter((option) => option.selected).map(({ value }) => value)).toEqual([
        from,
      ]);
    });
  }

  it('goes back at once where the choice is refused, without being drawn anew', () => {
    const { select } = drawn('a', () => false);
    select.value = 'c';
    select.dispatchEvent(new Event('change'));
    expect(select.value).toBe('a');
  });

  it('is what every select of the page is made of', () => {
    const folder = resolve(import.meta.dirname, '../../../src/ui');
    const selects = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
      (path) => path.endsWith('.ts') && /<select|\?selected/.test(readFileSync(join(folder, path), 'utf8')),
    );
    expect(selects).toEqual([join('parts', 'choice.ts')]);
  });
});

describe('orders to choose from', () => {
  const present = { forkId: 'f', placeId: 'p', ends: 'closed' } as const;
  const mark = (id: string, order: number | null) => ({ ...newMark(present, id, '', null), order });

  it('hold the real order, however high, and two beyond it', () => {
    expect(highestOrderOf([mark('a', 3), mark('b', 17), mark('c', null)], { places: [] })).toBe(17);
    expect(offeredOrders(17).at(-1)).toBe(19);
    expect(offeredOrders(17)).toContain(17);
    expect(offeredOrders(0)).toEqual([1, 2, 3, 4, 5, 6, 7, 8]);
    expect(offeredOrders(100).at(-1)).toBe(100);
  });
});
