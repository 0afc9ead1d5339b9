import { describe, expect, it } from 'vitest';
import { solve } from '../../../src/solver/solve.ts';
import { solverWarningMessage } from '../../../src/words/solverWarnings.ts';
import type { SolverMark } from '../../../src/solver/solution.ts';

/** Lengths of one fork in a tube; `radiusM` null where the diameter wasn't noted. */
function marks(
  lengthsM: readonly number[],
  ends: 'closed' | 'open',
  radiusM: number | null = null,
): SolverMark[] {
  return lengthsM.map((lengthM, i) => ({
    key: `Mark ${i + 1}`,
    forkKey: 'fork',
    frequencyHz: 512,
    frequencyStandardUncertaintyHz: 0.5,
    ends,
    lengthM,
    otherLengthM: null,
    lengthStandardUncertaintyM: 0.001,
    radiusM,
    otherRadiusM: null,
    air: null,
    place: '',
    order: null,
  }));
}

const messages = (list: readonly SolverMark[]): string =>
  solve(list)
    .warnings.map((warning) => solverWarningMessage(warning, (key) => key))
    .join(' ');

describe('what the solver says of a speed that air doesn’t have', () => {
  it('names nothing that can’t be chosen there', () => {
    // Steps of 36 cm at 512 Hz are 369 m/s.
    const said = messages(marks([0.17, 0.53, 0.89], 'closed', 0.0175));
    expect(said).toMatch(/is outside of 325 to 364 m\/s/);
    expect(said).not.toMatch(/choose/);
  });
});

describe('what the solver says where nothing fits', () => {
  const nowhere = [0.1, 0.223, 0.311, 0.37, 0.45, 0.52, 0.61, 0.66, 0.78, 0.91];

  it('speaks of the diameter only where one is noted', () => {
    const without = messages(marks(nowhere, 'closed'));
    const withOne = messages(marks(nowhere, 'closed', 0.0175));
    expect(without).toMatch(/Most of these lengths fit no resonance/);
    expect(without).toContain('Check the unit of the lengths, the fork and the ends');
    expect(withOne).toContain('Check the unit of the lengths and of the diameter, the fork');
    expect(without).not.toContain('Check the zero of the rule, the diameter');
  });
});
