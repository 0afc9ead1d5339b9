import { describe, expect, it } from 'vitest';
import { airFromReadings } from '../../../src/air/airState.ts';
import { solve } from '../../../src/solver/solve.ts';
import { workingStepWords } from '../../../src/words/workingSteps.ts';
import { letterWords } from '../../../src/words/workingLetters.ts';
import type { SolverMark } from '../../../src/solver/solution.ts';
import { makeMarks, solved } from '../solver/makeMarks.ts';

/** Letters that stand alone, with a mark such as ² or ₙ: no words and units. Student's t is a name. */
function lettersIn(text: string): readonly string[] {
  const bare = text
    .replace('γRT', 'γ R T')
    .replaceAll(/Student’s t|m\/s|°C|\d (cm|mm|m|Hz|hPa|%|dB)(?![a-z/])/g, ' ');
  return [...bare.matchAll(/(?<![\p{L}’])(Eₙ|χ²|\p{L})(?![\p{L}’])/gu)].map(([letter]) => letter);
}

const WAYS: readonly (readonly [string, Partial<SolverMark>, readonly number[]])[] = [
  ['closed, at the loudest places', { locatedBy: 'loudest' }, [1, 2, 3]],
  ['closed, at the centres', { locatedBy: 'centre' }, [1, 2, 3]],
  ['one mark', {}, [1]],
  ['open', { ends: 'open' }, [1, 2]],
  ['in helium', { air: airFromReadings({ filling: 'helium', temperatureC: 20 }) }, [1, 2]],
];

describe('the key to the letters of the working', () => {
  it.each(WAYS)('has each letter that stands there, and no other: %s', (_way, change, orders) => {
    const { working } = solved(solve(makeMarks([{ hz: 512, orders }], change)));
    const texts = working
      .map(workingStepWords)
      .map(({ formula, numbers, result }) => `${formula} ; ${numbers} ; ${result}`);
    const shown = new Set(texts.flatMap(lettersIn));
    const key = letterWords(working);
    expect([...shown].sort()).toEqual(key.map(({ letter }) => letter).sort());
    for (const { meaning } of key) expect(meaning.length).toBeGreaterThan(3);
  });

  it('tells no two things by one letter', () => {
    const { working } = solved(solve(makeMarks([{ hz: 512, orders: [1, 2, 3] }])));
    const meanings = letterWords(working).map(({ meaning }) => meaning);
    expect(new Set(meanings).size).toBe(meanings.length);
  });
});
