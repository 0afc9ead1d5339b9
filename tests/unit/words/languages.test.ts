import { afterEach, describe, expect, it } from 'vitest';
import { speakEnglish } from '../../../src/words/english.ts';
import { speakFirst, speakLater } from '../../../src/words/inUse.ts';
import { LANGUAGES, LANGUAGE_TAGS } from '../../../src/words/language.ts';
import { FIRST_TEXTS, LATER_TEXTS } from '../../../src/words/loadTexts.ts';
import { fixed, fullCentimetres, roundPair, short, signed } from '../../../src/words/numbers.ts';
import { either, listed } from '../../../src/words/lists.ts';

afterEach(() => speakEnglish());

describe('each language', () => {
  // Source: the engine's own data (Unicode CLDR).
  it.each(LANGUAGE_TAGS)('%s has the decimal sign of CLDR', (tag) => {
    const part = new Intl.NumberFormat(tag).formatToParts(0.5).find(({ type }) => type === 'decimal');
    expect(LANGUAGES[tag].decimalSign).toBe(part?.value);
  });

  it.each(LANGUAGE_TAGS)('%s has a name of its own', (tag) => {
    const own = new Intl.DisplayNames(tag, { type: 'language' }).of(tag) ?? '';
    expect(LANGUAGES[tag].name.toLowerCase()).toBe(own.toLowerCase());
  });

  it.each(LANGUAGE_TAGS)('%s writes numbers in its own form, with a true minus sign', async (tag) => {
    speakFirst(tag, (await FIRST_TEXTS[tag]()).first);
    speakLater((await LATER_TEXTS[tag]()).later);
    const sign = LANGUAGES[tag].decimalSign;
    expect(fixed(-15.84, 1)).toBe(`−15${sign}8`);
    expect(signed(0.25, 2)).toBe(`+0${sign}25`);
    expect(signed(0, 1)).toBe(`0${sign}0`);
    expect(short(341.333)).toBe(`341${sign}33`);
    expect(fullCentimetres(0.158)).toBe(`15${sign}8`);
    expect(roundPair(343.6149, 1.234)).toEqual({ value: `343${sign}6`, uncertainty: `1${sign}2` });
  });
});

describe('lists', () => {
  it('are written as English writes them', () => {
    expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
    expect(either(['a', 'b'])).toBe('a or b');
    expect(listed([])).toBe('');
  });
});
