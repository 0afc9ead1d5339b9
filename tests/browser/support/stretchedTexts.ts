import type { Page } from 'playwright-core';
import * as first from '../../../src/words/en/first.ts';
import * as later from '../../../src/words/en/later.ts';

/** Before the page is opened: English with accents and 40 % more letters in place of English, as other languages have. */
export async function stretchTexts(page: Page): Promise<void> {
  await page.route(/texts-en-(first|later)-[^/]*\.js$/, async (route) => {
    const texts = route.request().url().includes('texts-en-first') ? first : later;
    const sections = Object.keys(texts).map((name) => `export const ${name} = stretched(plain.${name});`);
    await route.fulfill({
      contentType: 'text/javascript',
      body: [
        `import * as plain from ${JSON.stringify(`${route.request().url()}?plain`)};`,
        STRETCH,
        ...sections,
      ].join('\n'),
    });
  });
}

const STRETCH = `
const ACCENTS = { a: 'á', e: 'é', i: 'ï', o: 'ö', u: 'ü', n: 'ñ', c: 'ç', s: 'š', A: 'Â', E: 'É', O: 'Ö', U: 'Ü', S: 'Š' };
// Of words only: numbers and units stay, and a word grows at its end as endings do.
const longer = (text) => text.replace(/\\p{L}{4,}/gu, (word) =>
  [...word].map((letter) => ACCENTS[letter] ?? letter).join('') + 'eniñéšt'.slice(0, Math.ceil(word.length * 0.4)));
function stretched(value) {
  if (typeof value === 'string') return longer(value);
  if (typeof value === 'function') return (...values) => stretched(value(...values));
  if (Array.isArray(value)) return value.map(stretched);
  if (typeof value === 'object' && value !== null)
    return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, stretched(inner)]));
  return value;
}`;
