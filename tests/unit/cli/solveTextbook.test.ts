import { describe, expect, it } from 'vitest';
import { resonantLengthM } from '../../../src/air/columnResonance.ts';
import type { MouthShape } from '../../../src/air/mouth.ts';
import { solveTable } from '../../../src/cli/solveTable.ts';
import type { SolvedTable } from '../../../src/cli/solveTable.ts';
import { airTemperature } from '../../../src/solver/airTemperature.ts';
import { solve } from '../../../src/solver/solve.ts';
import { makeMarks, solved } from '../solver/makeMarks.ts';
import { FIT_TOLERANCES } from '../solver/tolerances.ts';

/** Solves rows of fork_hz, ends, length_cm, as a textbook gives them: neither walls nor, unless said, mouths. */
function solveRows(
  rows: readonly string[],
  extraColumns = '',
  mouth: MouthShape | '' = 'ideal',
): SolvedTable {
  const text = [`fork_hz,ends,length_cm${extraColumns},mouth`, ...rows.map((row) => `${row},${mouth}`)].join(
    '\n',
  );
  const answer = solveTable(text);
  if ('error' in answer) throw new Error(answer.error);
  return answer;
}

const near = (actual: number, expected: number, tolerance: number): void =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);

describe('OpenStax College Physics 2e and University Physics 1, section 17.5, example', () => {
  it('a closed tube of 0.672 m at 22.0 °C with 128 Hz as its fundamental: 344 m/s', () => {
    const answer = solveRows(['128,closed,67.2,22.0'], ',temperature_c');
    near(answer.speedMps, 344, FIT_TOLERANCES.textbookMps);
    expect(answer.marks[0]?.order).toBe(1);
    // Theory at 22.0 °C lies well within the interval.
    expect(Math.abs(answer.agreement?.normalisedError ?? 9)).toBeLessThan(0.5);
  });
});

describe('OpenStax University Physics 1, section 17.4, problems', () => {
  it('512 Hz, piston at 115.50 cm then 82.50 cm: 337.92 m/s, orders 4 and 3, e = 0, the next at 49.50 cm (computed)', () => {
    const answer = solveRows(['512,closed,115.50', '512,closed,82.50']);
    near(answer.speedMps, 337.92, 1e-6);
    near(answer.endCorrectionM, 0, 1e-9);
    expect(answer.marks.map(({ order }) => order)).toEqual([4, 3]);
    const next = {
      order: 2,
      ends: 'closed',
      speedMps: answer.speedMps,
      frequencyHz: 512,
      endCorrectionM: 0,
    } as const;
    near(resonantLengthM(next), 0.495, 1e-9);
  });

  it('256 Hz resonates first at 0.336 m: air of 22.0 °C; the second resonance is at 1.01 m', () => {
    const answer = solveRows(['256,closed,33.6']);
    near(answer.speedMps, 344.06, FIT_TOLERANCES.textbookMps);
    near(
      airTemperature({ speedMps: answer.speedMps, standardUncertaintyMps: 1 }, 0)?.temperatureC ?? 0,
      22,
      1,
    );
    const both = solveRows(['256,closed,33.6', '256,closed,101']);
    expect(both.marks.map(({ order }) => order)).toEqual([1, 2]);
    near(both.speedMps / 344.06, 1, FIT_TOLERANCES.threeDigits);
  });
});

describe('OpenStax College Physics 2e, section 17.5, problem', () => {
  it('a closed tube of 0.334 m has 256 Hz at 18.0 °C', () => {
    const answer = solveRows(['256,closed,33.4,18.0'], ',temperature_c');
    near(answer.speedMps / 342, 1, FIT_TOLERANCES.threeDigits);
    expect(answer.marks[0]?.order).toBe(1);
  });
});

describe('OpenStax University Physics 1, chapter 17, problem', () => {
  it('a closed tube of 4.0 m has its fundamental at 21.51 Hz where sound goes at 344.08 m/s', () => {
    // Lower than any fork, which tables hold: the solver itself takes it.
    const [row] = makeMarks([{ hz: 21.51, orders: [1] }], {
      temperatureC: 22,
      radiusM: null,
      lengthM: 4,
      mouth: 'ideal',
    });
    const answer = solved(solve([row]));
    // The book prints hundredths of a hertz: 4 · 4 m · 0.005 Hz.
    near(answer.speedMps, 344.08, 0.0801);
    expect(answer.marks[0]?.order).toBe(1);
    // At 22 °C, as the chapter's rule 331·√(T/273) has it for that speed.
    near(answer.theory?.speedMps ?? 0, 344.08, 1.2);
  });
});

describe('CK-12 Physics, sound', () => {
  it('512 Hz at 16.8 cm: 344 m/s', () => {
    near(solveRows(['512,closed,16.8']).speedMps, 344, FIT_TOLERANCES.textbookMps);
  });

  it('at its 23.3 °C theory says more: its rule 330 + 0.6 T is 1.3 m/s low', () => {
    const answer = solveRows(['512,closed,16.8,23.3,0'], ',temperature_c,humidity_pct');
    // Dry air at 23.3 °C by Cramer 1993 (computed): 345.28 m/s.
    near(answer.theory?.speedMps ?? 0, 345.28, 0.005);
    near(answer.agreement?.differenceMps ?? 0, 344 - 345.28, FIT_TOLERANCES.textbookMps);
  });
});

describe('common exercises, no source', () => {
  it('first two lengths 0.100 m and 0.350 m: e = 0.025 m', () => {
    const answer = solveRows(['680,closed,10.0', '680,closed,35.0'], '', '');
    near(answer.endCorrectionM, 0.025, 1e-9);
    near(answer.speedMps, 340, 1e-6);
  });

  it('d = 4 cm, 512 Hz, first resonance at 15.2 cm: 336 m/s in the tube', () => {
    const answer = solveRows(['512,closed,15.2,40'], ',diameter_mm', 'thin-rim');
    // The book's e = 0.3 d is 12.0 mm, theory's 12.2; free air is 0.36 % faster than the wave in this tube.
    near(answer.endCorrectionM, 0.012, 0.0003);
    near(answer.speedMps * (1 - 0.00357), 336, FIT_TOLERANCES.textbookMps);
  });
});
