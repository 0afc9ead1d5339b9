import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { LANGUAGE_TAGS } from '../../../src/words/language.ts';
import { catalogueTexts } from './catalogueFiles.ts';

/*
 * The compiler sees to it that each language has every text of English, and no other, and that no caller hands over
 * what a text doesn't take. What it can't see stands here.
 */

const texts = catalogueTexts();

/** The code that may use a text: all but the languages' own files. */
const code = readdirSync('src', { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .filter((file) => !LANGUAGE_TAGS.some((tag) => file.startsWith(join('words', tag))))
  .map((file) => ({ file, text: readFileSync(join('src', file), 'utf8') }));
const allCode = code.map(({ text }) => text).join('\n');

describe('the catalogue', () => {
  it.each(LANGUAGE_TAGS)('of %s has as many texts as that of English', (tag) => {
    const count = texts.filter(({ language }) => language === tag).length;
    expect(count).toBeGreaterThan(500);
    expect(count).toBe(texts.filter(({ language }) => language === 'en').length);
  });

  it('says in every language what it is told to say', () => {
    const unsaid = texts
      .filter(({ parameters, used }) => used.length < parameters.length)
      .map(({ language, path, parameters, used }) => ({
        text: `${language}: ${path.join('.')}`,
        unsaid: parameters.filter((name) => !used.includes(name)),
      }));
    expect(unsaid).toEqual([]);
  });

  it('takes in every language what English takes', () => {
    const english = new Map(
      texts
        .filter(({ language }) => language === 'en')
        .map(({ path, parameters }) => [path.join('.'), parameters.length]),
    );
    const fewer = texts
      .filter(({ path, parameters }) => (english.get(path.join('.')) ?? 0) !== parameters.length)
      .map(({ language, path }) => `${language}: ${path.join('.')}`);
    expect(fewer).toEqual([]);
  });

  it('has no section that nothing uses', () => {
    const sections = new Set(texts.map(({ path }) => path[0] ?? ''));
    const unused = [...sections].filter(
      (name) => !new RegExp(`\\b(w|laterW)ords\\.${name}\\b`).test(allCode),
    );
    expect(unused).toEqual([]);
  });

  it('has no text that nothing asks for by its name', () => {
    const last = new Set(
      texts.filter(({ language }) => language === 'en').map(({ path }) => path.at(-1) ?? ''),
    );
    const unused = [...last].filter(
      // A number is a place in a list, which is gone through.
      (name) => !/^\d+$/.test(name) && !new RegExp(`(?<![\\w-])${name}(?![\\w-])`).test(allCode),
    );
    expect(unused).toEqual([]);
  });
});
