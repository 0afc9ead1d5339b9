// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import { NumberField } from '../../../src/ui/parts/numberField.ts';
import { QUANTITIES } from '../../../src/ui/readQuantity.ts';

/** A rectangle of ±0.5 % around 512 Hz, as the standard deviation that the GUM (4.3.7) gives it: half width over √3. */
const STAMP_U_HZ = (0.005 * 512) / Math.sqrt(3);

afterEach(() => document.body.replaceChildren());

async function fieldWith(value: number) {
  const part = Object.assign(new NumberField(), { kind: QUANTITIES.uncertaintyHz, value });
  const taken: unknown[] = [];
  part.addEventListener('quantity-change', ({ detail }) => taken.push(detail));
  document.body.append(part);
  await part.updateComplete;
  const input = part.renderRoot.querySelector('input');
  if (input === null) throw new Error('no field');
  const type = (text: string) => {
    input.value = text;
    input.dispatchEvent(new Event('change'));
  };
  return { input, type, taken };
}

describe('a number with more digits than its field shows', () => {
  it('is shown with three digits where it is an uncertainty', async () => {
    expect((await fieldWith(STAMP_U_HZ)).input.value).toBe('1.48');
  });

  it('isn’t rounded by leaving the field, and is changed by typing another', async () => {
    const { type, taken } = await fieldWith(STAMP_U_HZ);
    type('1.48');
    expect(taken).toEqual([]);
    type('1.5');
    expect(taken).toEqual([1.5]);
  });
});
