import type { Locator, Page } from 'playwright-core';
import type { Random } from '../bench/detector/random.ts';
import { pastedText } from './filesAtHand.ts';
import { typedText } from './typedTexts.ts';

/** What an action may use. */
export interface Hands {
  readonly page: Page;
  readonly random: Random;
  readonly files: readonly string[];
  /** Address of the site, without a hash. */
  readonly url: string;
}

/** Something a person may do. Gives what was done, in words for the log; null where it wasn't possible just then. */
export interface Action {
  readonly name: string;
  /** How often, beside the others. */
  readonly weight: number;
  readonly act: (hands: Hands) => Promise<string | null>;
}

/** No action waits longer for the page, ms: what can't be done at once is left. */
const PATIENCE_MS = 1500;
const VIEWS = [
  'measure',
  'apparatus',
  'check',
  'working',
  'compare',
  'records',
  'report',
  'microphone',
  'class',
];
const KEYS = ['l', 'm', 'm', 'e', 's', 'f', 'ArrowLeft', 'ArrowRight', '?', 'Escape', 'Tab', 'Enter', ' '];
const SIZES = [
  { width: 1280, height: 800 },
  { width: 820, height: 1180 },
  { width: 390, height: 844 },
];
/** Addresses as they arrive by mail or chat: cut off, of something else, with a bracket at the end. */
const ADDRESSES = ['#lesson=broken', '#lesson=', '#nowhere', '#measure)', '#%E0%A4%A'];
/** Keys that belong to the page, and the links that leave it: a new tab would be another person's. */
const TO_PRESS = 'button:not([disabled]), summary, input[type=radio], input[type=checkbox], nav a';
const TO_TYPE_IN = 'input:not([type]), input[type=text], textarea';

export const ACTIONS: readonly Action[] = [
  { name: 'press', weight: 30, act: press },
  { name: 'type', weight: 22, act: type },
  { name: 'add a mark', weight: 14, act: addMark },
  { name: 'choose', weight: 12, act: choose },
  { name: 'key', weight: 12, act: key },
  { name: 'view', weight: 12, act: view },
  { name: 'undo or redo', weight: 8, act: undoOrRedo },
  { name: 'file', weight: 5, act: dropFile },
  { name: 'paste', weight: 3, act: paste },
  { name: 'window', weight: 2, act: resize },
  { name: 'address', weight: 2, act: address },
];

/** One of what can be seen. @returns null where there is none */
async function oneOf(all: Locator, random: Random): Promise<Locator | null> {
  const visible = all.filter({ visible: true });
  const count = await visible.count();
  return count === 0 ? null : visible.nth(random.integer(0, count - 1));
}

/** How a person would name it. */
async function nameOf(element: Locator): Promise<string> {
  const name = await element.evaluate(
    (node) => node.ariaLabel ?? (node.textContent.trim() || node.getAttribute('name') || node.localName),
    null,
    { timeout: PATIENCE_MS },
  );
  return `“${name.replace(/\s+/g, ' ').slice(0, 60)}”`;
}

async function press({ page, random }: Hands): Promise<string | null> {
  const element = await oneOf(page.locator(TO_PRESS), random);
  if (element === null) return null;
  const name = await nameOf(element);
  await element.click({ timeout: PATIENCE_MS });
  return `press ${name}`;
}

async function type({ page, random }: Hands): Promise<string | null> {
  const field = await oneOf(page.locator(TO_TYPE_IN), random);
  if (field === null) return null;
  const name = await nameOf(field);
  const text = typedText(random);
  const end = random.pick(['Enter', 'Tab', 'Escape', '']);
  await field.fill(text, { timeout: PATIENCE_MS });
  if (end !== '') await field.press(end, { timeout: PATIENCE_MS });
  return `type ${JSON.stringify(text.slice(0, 40))} into ${name}${end === '' ? '' : `, ${end}`}`;
}

async function addMark({ page, random }: Hands): Promise<string | null> {
  const field = page.getByRole('textbox', { name: 'Length of a new mark' });
  if (!(await field.isVisible())) return null;
  const text = `${random.integer(50, 9999) / 100}`;
  await field.fill(text, { timeout: PATIENCE_MS });
  await field.press('Enter', { timeout: PATIENCE_MS });
  return `add a mark at ${text}`;
}

async function choose({ page, random }: Hands): Promise<string | null> {
  const select = await oneOf(page.locator('select'), random);
  if (select === null) return null;
  const name = await nameOf(select);
  const values = await select
    .locator('option')
    .evaluateAll((options) => options.map((option) => (option as HTMLOptionElement).value));
  if (values.length === 0) return null;
  const value = random.pick(values);
  await select.selectOption(value, { timeout: PATIENCE_MS });
  return `choose ${value.slice(0, 30)} in ${name}`;
}

async function key({ page, random }: Hands): Promise<string> {
  const one = random.pick(KEYS);
  await page.keyboard.press(one);
  return `key ${one}`;
}

async function view({ page, random }: Hands): Promise<string> {
  const id = random.pick(VIEWS);
  await page.evaluate((hash) => (location.hash = hash), `#${id}`);
  return `go to #${id}`;
}

async function undoOrRedo({ page, random }: Hands): Promise<string> {
  const keys = random.chance(0.7) ? 'Control+z' : 'Control+y';
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.keyboard.press(keys);
  return keys;
}

async function dropFile({ page, random, files }: Hands): Promise<string | null> {
  const input = page.locator('input[type=file]').first();
  if ((await input.count()) === 0) return null;
  const path = random.pick(files);
  await input.setInputFiles(path, { timeout: PATIENCE_MS });
  return `open the file ${path.split('/').at(-1) ?? ''}`;
}

async function paste({ page, random }: Hands): Promise<string> {
  const text = pastedText(random);
  await page.evaluate((pasted) => {
    const data = new DataTransfer();
    data.setData('text/plain', pasted);
    document.body.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData: data, bubbles: true, composed: true, cancelable: true }),
    );
  }, text);
  return `paste ${JSON.stringify(text.slice(0, 40))}`;
}

async function resize({ page, random }: Hands): Promise<string> {
  const size = random.pick(SIZES);
  await page.setViewportSize(size);
  return `window of ${size.width} × ${size.height}`;
}

async function address({ page, random }: Hands): Promise<string> {
  const hash = random.pick(ADDRESSES);
  await page.evaluate((to) => (location.hash = to), hash);
  return `address ${hash}`;
}
