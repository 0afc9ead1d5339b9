import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LANGUAGE_TAGS } from '../../../src/words/language.ts';

/** What the installed page is called, by language. */
function manifestOf(tag: string): Record<string, unknown> {
  const name = tag === 'en' ? 'site.webmanifest' : `site.${tag}.webmanifest`;
  return JSON.parse(readFileSync(`public/${name}`, 'utf8')) as Record<string, unknown>;
}

describe('the manifests', () => {
  it.each(LANGUAGE_TAGS.filter((tag) => tag !== 'en'))(
    'of %s differs from that of English in words alone',
    (tag) => {
      const words = ['lang', 'name', 'short_name', 'description'];
      const english = manifestOf('en');
      const own = manifestOf(tag);
      expect(Object.keys(own)).toEqual(Object.keys(english));
      const alike = Object.keys(english).filter(
        (key) => JSON.stringify(own[key]) === JSON.stringify(english[key]),
      );
      expect(alike).toEqual(Object.keys(english).filter((key) => !words.includes(key)));
    },
  );
});
