import { describe, expect, it } from 'vitest';
import { BUDGETS } from '../bench/budgets.ts';
import { LANGUAGE_TAGS } from '../../src/words/language.ts';
import { siteBytes } from '../bench/siteBytes.ts';

/** The site that the browser tests are run on. */
const SITE = 'dist';

describe('the built site’s script', () => {
  const bytes = siteBytes(SITE);

  it('keeps within the budget until the page can be used', () => {
    expect(bytes.firstLoad).toBeGreaterThan(50_000);
    expect(bytes.firstLoad).toBeLessThanOrEqual(BUDGETS.firstLoadBytes);
  });

  it('has each language’s texts by themselves, none beyond what one may cost', () => {
    expect(Object.keys(bytes.texts).sort()).toEqual([...LANGUAGE_TAGS].sort());
    for (const [language, { first, later }] of Object.entries(bytes.texts)) {
      expect(first, language).toBeGreaterThan(3000);
      expect(later, language).toBeGreaterThan(5000);
      expect(first, language).toBeLessThanOrEqual(BUDGETS.textsBytes);
      expect(later, language).toBeLessThanOrEqual(BUDGETS.textsBytes);
    }
  });

  it('keeps within it for what comes later', () => {
    expect(bytes.strip).toBeGreaterThan(10_000);
    expect(bytes.strip).toBeLessThanOrEqual(BUDGETS.stripBytes);
    expect(bytes.listening).toBeGreaterThan(10_000);
    expect(bytes.listening).toBeLessThanOrEqual(BUDGETS.listeningBytes);
    expect(bytes.answers).toBeGreaterThan(10_000);
    expect(bytes.answers).toBeLessThanOrEqual(BUDGETS.answersBytes);
    expect(bytes.largestView.bytes, bytes.largestView.name).toBeLessThanOrEqual(BUDGETS.viewBytes);
  });
});
