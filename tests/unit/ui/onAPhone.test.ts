// @vitest-environment happy-dom
import { readFileSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { LengthField } from '../../../src/ui/parts/lengthField.ts';
import { NumberField } from '../../../src/ui/parts/numberField.ts';
import type { PartElement } from '../../../src/ui/parts/partElement.ts';
import { QUANTITIES } from '../../../src/ui/readQuantity.ts';
import type { QuantityKind } from '../../../src/ui/readQuantity.ts';
import { saveFile } from '../../../src/ui/saveFile.ts';

const UI = resolve(import.meta.dirname, '../../../src/ui');

afterEach(() => {
  document.body.replaceChildren();
  vi.useRealTimers();
});

async function onPage(part: PartElement) {
  document.body.append(part);
  await part.updateComplete;
  const input = part.renderRoot.querySelector('input') as HTMLInputElement;
  const key = part.renderRoot.querySelector<HTMLButtonElement>('.pad-key');
  const type = (text: string) => {
    input.value += text;
    input.dispatchEvent(new Event('input'));
  };
  return { input, key, type };
}

async function numberField(kind: QuantityKind, value: number | null) {
  const part = Object.assign(new NumberField(), { kind, value });
  const taken: number[] = [];
  part.addEventListener('quantity-change', ({ detail }) => taken.push(detail));
  return { ...(await onPage(part)), taken };
}

/** The number pad of a phone has digits and a decimal sign, and neither minus, dash nor Enter. */
describe('with a number pad alone', () => {
  it('a temperature below zero can be typed: the sign before the number, or after it', async () => {
    const first = await numberField(QUANTITIES.temperatureC, null);
    first.key?.click();
    expect(first.taken).toEqual([]);
    first.type('5');
    first.input.dispatchEvent(new Event('change'));
    expect(first.taken).toEqual([-5]);

    const after = await numberField(QUANTITIES.temperatureC, null);
    after.type('5,5');
    after.key?.click();
    expect(after.taken).toEqual([-5.5]);
  });

  it('the sign of what stands there is changed at once, both ways', async () => {
    const below = await numberField(QUANTITIES.zeroOffsetCm, 0.4);
    below.key?.click();
    const above = await numberField(QUANTITIES.zeroOffsetCm, -0.4);
    above.key?.click();
    expect([...below.taken, ...above.taken]).toEqual([-0.4, 0.4]);
  });

  it('what can’t be below zero has no such key', async () => {
    expect((await numberField(QUANTITIES.forkHz, 512)).key).toBeNull();
    expect((await numberField(QUANTITIES.humidityPct, 40)).key).toBeNull();
  });

  it('the two lengths of a bracket can be typed', async () => {
    const part = new LengthField();
    const taken: unknown[] = [];
    part.addEventListener('length-change', ({ detail }) => taken.push(detail));
    const { input, key, type } = await onPage(part);
    type('15.2');
    key?.click();
    type('16.4');
    expect(taken).toEqual([]);
    input.dispatchEvent(new Event('change'));
    expect(taken).toEqual([{ lengthM: 0.152, otherLengthM: 0.164 }]);
  });

  it('its keys don’t take the focus from the field', async () => {
    const { key } = await onPage(new LengthField());
    const press = new Event('mousedown', { cancelable: true });
    key?.dispatchEvent(press);
    expect(press.defaultPrevented).toBe(true);
  });
});

describe('on a phone', () => {
  const sheets = readdirSync(UI, { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => ({ path, text: readFileSync(join(UI, path), 'utf8') }));

  it('no field has letters under 16 px, at which a touch would zoom in', () => {
    const small = /[^{}]*\b(?:select|input|textarea)\b[^{}]*\{[^{}]*font-size:\s*var\(--text-small\)/;
    expect(sheets.filter(({ text }) => small.test(text)).map(({ path }) => path)).toEqual([]);
    const shared = sheets.find(({ path }) => path === 'sharedStyles.ts')?.text ?? '';
    expect(shared).toMatch(
      /\(pointer: coarse\)[^@]*select,\s+input,\s+textarea \{\s+font-size: max\(1em, 16px\)/,
    );
  });

  it('a long press selects no text of a button, in engines that want the prefix, too', () => {
    const unprefixed = sheets.filter(
      ({ text }) => /[^-]user-select/.test(text) && !text.includes('-webkit-user-select'),
    );
    expect(unprefixed.map(({ path }) => path)).toEqual([]);
  });

  it('no file field asks for films by type, for which a camera would be offered', () => {
    expect(sheets.filter(({ text }) => text.includes('video/*')).map(({ path }) => path)).toEqual([]);
  });

  it('a file is held for a minute, while the system may still ask where to save it', () => {
    vi.useFakeTimers();
    const revoke = vi.spyOn(URL, 'revokeObjectURL');
    saveFile('marks.csv', 'text/csv', 'a');
    vi.advanceTimersByTime(59_000);
    expect(revoke).not.toHaveBeenCalled();
    vi.advanceTimersByTime(2000);
    expect(revoke).toHaveBeenCalledOnce();
    revoke.mockRestore();
  });
});
