import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { LANGUAGE_TAGS } from '../../../src/words/language.ts';
import { catalogueTexts } from './catalogueFiles.ts';

/** The columns of the table in `src/words/README.md`. */
const COLUMNS: readonly string[] = ['en', 'not', 'de', 'fr', 'es', 'pt-BR', 'pl'];

const table = readFileSync('src/words/README.md', 'utf8')
  .split('\n')
  .filter((line) => line.startsWith('|'))
  .map((line) =>
    line
      .slice(1, -1)
      .split('|')
      .map((cell) => cell.trim()),
  )
  .filter((cells) => cells.length === COLUMNS.length)
  .slice(2);
const texts = catalogueTexts();
const saidIn = (tag: string): string =>
  texts
    .filter(({ language }) => language === tag)
    .flatMap(({ said }) => said)
    .join('\n')
    .toLowerCase();

/** The words of a cell, without what explains them. */
const words = (cell: string): readonly string[] =>
  cell
    .replace(/\(.*?\)/g, '')
    .split(/[,/→:]/)
    .map((word) => word.trim().toLowerCase())
    .filter((word) => word !== '');

describe('the glossary', () => {
  it('has forty things and more, each with a word in every language', () => {
    expect(table.length).toBeGreaterThanOrEqual(40);
    for (const cells of table) {
      for (const tag of LANGUAGE_TAGS) expect(cells[COLUMNS.indexOf(tag)], cells[0]).not.toBe('');
    }
  });

  it('names no thing in English by a word that it has left', () => {
    const left = table.flatMap((cells) => words(cells[COLUMNS.indexOf('not')] ?? ''));
    expect(left.length).toBeGreaterThan(5);
    const found = texts
      .filter(({ language }) => language === 'en')
      .flatMap(({ path, said }) =>
        left
          .filter((word) => new RegExp(`\\b${word}`, 'i').test(said.join(' ')))
          .map((word) => `${path.join('.')}: ${word}`),
      );
    expect(found).toEqual([]);
  });

  // Endings change with case and number: the beginning of each word of a term has to be there.
  it.each(LANGUAGE_TAGS)('is what the texts of %s go by', (tag) => {
    const said = saidIn(tag);
    const unsaid = table
      .flatMap((cells) => words(cells[COLUMNS.indexOf(tag)] ?? ''))
      .filter((term) =>
        term.split(/[\s’-]+/).some((word) => !said.includes(word.slice(0, Math.max(3, word.length - 3)))),
      );
    expect(unsaid).toEqual([]);
  });
});
