import { describe, expect, it } from 'vitest';
import { airFromReadings } from '../../../src/air/airState.ts';
import { solve } from '../../../src/solver/solve.ts';
import { solverWarningWords } from '../../../src/words/solverWarnings.ts';
import { makeMarks } from '../solver/makeMarks.ts';

describe('a mark that can’t be used', () => {
  it('is named with the quantity that is out of range, in words and not in the code’s names', () => {
    const [first, second, third] = makeMarks([{ hz: 512, orders: [1, 2, 3] }]);
    const damp = { ...airFromReadings({ temperatureC: 20 }), humidityPct: 130 };
    const marks = [first, { ...second, air: damp }, { ...third, frequencyHz: -512 }];
    const said = solverWarningWords(solve(marks).warnings, () => 'Mark 2').join(' ');
    // From 0 to 100 % is what relative humidity can be.
    expect(said).toContain('Mark 2 is not used: its humidity must be 0 to 100 %, not 130 %.');
    expect(said).toMatch(/its frequency must be \d+ to \d+ Hz, not −512 Hz\./);
    expect(said).not.toMatch(/humidityPct|frequencyHz/);
  });
});
