import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { catalogueTexts } from './catalogueFiles.ts';
import type { CatalogueText } from './catalogueFiles.ts';

/*
 * The glossary in the words' README, held against the texts: what is called by a name of it is called so everywhere.
 */

const README = readFileSync('src/words/README.md', 'utf8');
const [HEADING = [], , ...ROWS] = README.split('\n')
  .filter((line) => line.startsWith('|') && line.split('|').length === 9)
  .map((line) =>
    line
      .split('|')
      .slice(1, -1)
      .map((cell) => cell.trim()),
  );
const TAGS: Readonly<Record<string, string>> = {
  German: 'de',
  French: 'fr',
  Spanish: 'es',
  'Brazilian Portuguese': 'pt-BR',
  Polish: 'pl',
};

/** Terms of physics and of metrology, which leave no choice of words. */
const TERMS = [
  'end correction',
  'wavelength',
  'speed of sound',
  'standard uncertainty',
  'expanded uncertainty',
  'uncertainty budget',
  'degrees of freedom',
  'zero offset',
] as const;

const texts = catalogueTexts();
const nameOf = ({ path }: CatalogueText): string => path.join('.');
const saidBy = ({ said }: CatalogueText): string => said.join(' … ').replaceAll('\u00a0', ' ');

/** The names that a cell of the glossary allows. */
function namesIn(cell: string): readonly string[] {
  return cell
    .split(/[,/]/)
    .map((name) => name.replace(/\(.*\)/, '').trim())
    .filter((name) => name !== '');
}

/** A name in any of its forms: each word may end differently, and other words may stand between. */
function anyForm(name: string): RegExp {
  const stems = name.split(/\s+/).map((word) => (word.length > 5 ? word.slice(0, -2) : word));
  return new RegExp(
    stems.map((stem) => stem.replace(/[.*+?^${}()|[\]\\]/g, '\\$&')).join('\\S*(\\s+\\S+){0,2}\\s+'),
    'iu',
  );
}

describe('the glossary', () => {
  it('has forty terms in six languages', () => {
    expect(HEADING.slice(2).map((name) => TAGS[name] ?? name)).toEqual(Object.values(TAGS));
    expect(ROWS.length).toBeGreaterThanOrEqual(40);
    for (const row of ROWS)
      expect({ row, empty: row.filter((cell, at) => at !== 1 && cell === '') }).toEqual({ row, empty: [] });
  });

  const avoided = ROWS.flatMap(([, cell = '']) => namesIn(cell));

  it('names words to avoid', () => expect(avoided.length).toBeGreaterThan(8));

  it.each(avoided)('English doesn’t say “%s”', (word) => {
    const pattern = new RegExp(`(?<![\\w-])${word}(?![\\w-])`, 'i');
    const found = texts.filter((text) => text.language === 'en' && pattern.test(saidBy(text)));
    expect(found.map((text) => `${nameOf(text)}: ${saidBy(text)}`)).toEqual([]);
  });

  const languages = Object.entries(TAGS).map(([language], at) => ({ language, column: at + 2 }));

  it.each(languages)('$language says its own name for each term of physics', ({ language, column }) => {
    const own = new Map(
      texts.filter((text) => text.language === TAGS[language]).map((text) => [nameOf(text), saidBy(text)]),
    );
    expect(own.size).toBeGreaterThan(500);
    const other = TERMS.flatMap((term) => {
      const row = ROWS.find(([english = '']) =>
        namesIn(english).some((name) => `${name} `.startsWith(`${term} `)),
      );
      const forms = namesIn(row?.[column] ?? '').map(anyForm);
      expect({ term, forms: forms.length }).not.toEqual({ term, forms: 0 });
      return texts
        .filter((text) => text.language === 'en' && new RegExp(`\\b${term}s?\\b`, 'i').test(saidBy(text)))
        .map((text) => ({ name: nameOf(text), said: own.get(nameOf(text)) ?? '' }))
        .filter(({ said }) => !forms.some((form) => form.test(said)))
        .map(({ name, said }) => `${term}: ${name}: ${said}`);
    });
    expect(other).toEqual([]);
  });
});
