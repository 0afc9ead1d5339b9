import { afterEach, describe, expect, it } from 'vitest';
import { speakEnglish } from '../../../src/words/english.ts';
import { speakFirst, speakLater } from '../../../src/words/inUse.ts';
import { dayAndTime } from '../../../src/words/dates.ts';
import { LANGUAGES, LANGUAGE_TAGS } from '../../../src/words/language.ts';
import { FIRST_TEXTS, LATER_TEXTS } from '../../../src/words/loadTexts.ts';
import {
  fixed,
  fullCentimetres,
  megabytes,
  roundPair,
  short,
  signed,
  tidy,
} from '../../../src/words/numbers.ts';
import { stemLabel } from '../../../src/words/page/columnPicture.ts';
import { clauses, either, listed } from '../../../src/words/lists.ts';

afterEach(() => speakEnglish());

describe('each language', () => {
  // Source: the engine's own data (Unicode CLDR).
  it.each(LANGUAGE_TAGS)('%s has the decimal sign of CLDR', (tag) => {
    const part = new Intl.NumberFormat(tag).formatToParts(0.5).find(({ type }) => type === 'decimal');
    expect(LANGUAGES[tag].decimalSign).toBe(part?.value);
  });

  it.each(LANGUAGE_TAGS)('%s has no full stop before another sign in the label of a mark', async (tag) => {
    speakFirst(tag, await FIRST_TEXTS[tag]());
    const label = stemLabel({ order: 2, lengthM: 0.158, isUnsure: true, passes: 3 });
    expect(label).toContain(`15${LANGUAGES[tag].decimalSign}8 · 3×?`);
    expect(label).toMatch(/^\D*2/);
    expect(label).not.toMatch(/[.:] [·:]/);
  });

  it.each(LANGUAGE_TAGS)('%s has a name of its own', (tag) => {
    const own = new Intl.DisplayNames(tag, { type: 'language' }).of(tag) ?? '';
    expect(LANGUAGES[tag].name.toLowerCase()).toBe(own.toLowerCase());
  });

  it.each(LANGUAGE_TAGS)('%s writes numbers in its own form, with a true minus sign', async (tag) => {
    speakFirst(tag, await FIRST_TEXTS[tag]());
    speakLater(await LATER_TEXTS[tag]());
    const sign = LANGUAGES[tag].decimalSign;
    expect(fixed(-15.84, 1)).toBe(`−15${sign}8`);
    expect(signed(0.25, 2)).toBe(`+0${sign}25`);
    expect(signed(0, 1)).toBe(`0${sign}0`);
    expect(short(341.333)).toBe(`341${sign}33`);
    expect(fullCentimetres(0.158)).toBe(`15${sign}8`);
    expect(roundPair(343.6149, 1.234)).toEqual({ value: `343${sign}6`, uncertainty: `1${sign}2` });
    expect(tidy(0.1 + 0.2)).toBe(`0${sign}3`);
  });

  // Sources: the engine's own data (Unicode CLDR) for month and order, whose versions differ in dots and commas; ISO 8601 for what a record holds.
  it.each([
    ['de', /^01\.03\.2030\W+00:05$/],
    ['en', /^1 Mar 2030\W+00:05$/],
    ['es', /^1 mar\.? 2030\W+0?0:05$/],
    ['fr', /^1 mars 2030\W+00:05$/],
    ['pl', /^1 mar\.? 2030\W+00:05$/],
    ['pt-BR', /^1 de mar\.? de 2030\W+00:05$/],
  ] as const)(
    '%s writes a stored time in its own form, the same in every time zone',
    async (tag, expected) => {
      speakFirst(tag, await FIRST_TEXTS[tag]());
      expect(dayAndTime('2030-03-01T00:05:59.000Z')).toMatch(expected);
      expect(dayAndTime('this morning')).toBe('this morning');
    },
  );

  it('in French has a space before a semicolon, and counts octets', async () => {
    speakFirst('fr', await FIRST_TEXTS.fr());
    expect(clauses(['a', 'b'])).toBe('a\u00a0; b');
    expect(megabytes(2_500_000)).toBe('2,5 Mo');
    speakEnglish();
    expect(clauses(['a', 'b'])).toBe('a; b');
    expect(megabytes(2_500_000)).toBe('2.5 MB');
  });
});

describe('counts', () => {
  // Source: Unicode CLDR, plural rules of cardinals: Polish one (1), few (2–4, 22–24 …), many (0, 5–21, 25 …).
  it.each([
    ['de', ['1 Marke', '2 Marken', '5 Marken', '22 Marken']],
    ['en', ['1 mark', '2 marks', '5 marks', '22 marks']],
    ['es', ['1 marca', '2 marcas', '5 marcas', '22 marcas']],
    ['fr', ['1 repère', '2 repères', '5 repères', '22 repères']],
    ['pl', ['1 znacznik', '2 znaczniki', '5 znaczników', '22 znaczniki']],
    ['pt-BR', ['1 marca', '2 marcas', '5 marcas', '22 marcas']],
  ] as const)('have the plural forms of %s', async (tag, forms) => {
    const later = await LATER_TEXTS[tag]();
    for (const [at, count] of [1, 2, 5, 22].entries()) {
      expect(later.experiments.counts(count, 1)).toContain(forms[at] ?? '?');
    }
  });
});

describe('lists', () => {
  // Source: Unicode CLDR, list patterns.
  it.each([
    ['de', 'a, b und c', 'a oder b'],
    ['es', 'a, b y c', 'a o b'],
    ['fr', 'a, b et c', 'a ou b'],
    ['pl', 'a, b i c', 'a lub b'],
    ['pt-BR', 'a, b e c', 'a ou b'],
  ] as const)('are written as %s writes them', async (tag, all, one) => {
    speakFirst(tag, await FIRST_TEXTS[tag]());
    expect(listed(['a', 'b', 'c'])).toBe(all);
    expect(either(['a', 'b'])).toBe(one);
  });

  it('are written as English writes them', () => {
    expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
    expect(either(['a', 'b'])).toBe('a or b');
    expect(listed([])).toBe('');
  });
});
