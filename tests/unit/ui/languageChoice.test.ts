// @vitest-environment happy-dom
import { readFileSync } from 'node:fs';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import {
  chooseLanguage,
  forgetLanguage,
  offeredLanguage,
  startLanguage,
} from '../../../src/ui/languageChoice.ts';
import { speakEnglish } from '../../../src/words/english.ts';
import { laterWords, words } from '../../../src/words/inUse.ts';
import { LANGUAGE_TAGS, language } from '../../../src/words/language.ts';

beforeEach(() => {
  document.head.innerHTML = '<link rel="manifest" href="./site.webmanifest" />';
});

afterEach(() => {
  forgetLanguage();
  vi.unstubAllGlobals();
  speakEnglish();
});

describe('the language that the page begins in', () => {
  const begin = async (...languages: string[]): Promise<string> => {
    vi.stubGlobal('navigator', { languages });
    await startLanguage(document);
    return language;
  };

  it.each([
    [['de-AT', 'en'], 'de'],
    [['nl', 'fr-CA', 'en'], 'fr'],
    [['es-419'], 'es'],
    [['pl'], 'pl'],
    [['pt-PT'], 'pt-BR'],
    [['en-GB', 'de'], 'en'],
  ] as const)('is the first of the browser’s that it has: of %j', async (wanted, begun) => {
    expect(await begin(...wanted)).toBe(begun);
  });

  it('is the one chosen here, whatever the browser asks for', async () => {
    await chooseLanguage('pl', document);
    expect(await begin('de-AT')).toBe('pl');
  });

  it('is English where it has none of them', async () => {
    expect(await begin('nl', 'ja-JP')).toBe('en');
  });
});

describe('choosing a language', () => {
  it.each(LANGUAGE_TAGS)(
    '%s is spoken by all that says something, the document’s title and manifest, too',
    async (tag) => {
      await chooseLanguage(tag, document);
      expect(document.documentElement.lang).toBe(tag);
      expect(document.title).toBe(words.frame.heading);
      expect(laterWords.handIn.heading).not.toBe('');
      const href = document.querySelector('link')?.getAttribute('href') ?? '';
      const manifest = JSON.parse(readFileSync(`public/${href.slice(2)}`, 'utf8')) as Record<string, unknown>;
      expect(manifest).toMatchObject({ lang: tag, name: words.frame.heading, id: './', start_url: './' });
    },
  );

  it('goes by the tag, or by its first part', () => {
    expect(offeredLanguage('EN')).toBe('en');
    expect(offeredLanguage('en-GB-oxendict')).toBe('en');
    expect(offeredLanguage('')).toBeNull();
    expect(offeredLanguage('english')).toBeNull();
  });
});
