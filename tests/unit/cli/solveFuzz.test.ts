import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { solveTable } from '../../../src/cli/solveTable.ts';

/** A result or a reason, and no number that isn't one. */
function expectSoundAnswer(text: string): void {
  const answer = solveTable(text);
  if ('error' in answer) {
    expect(answer.error.length).toBeGreaterThan(10);
    // What stands between quotes is the user's own text, given back.
    expect(answer.error.replace(/“[^”]*”/g, '')).not.toMatch(/NaN|undefined|null|\bat .*\.ts:/);
    return;
  }
  // JSON has no NaN and no infinity: they would turn into null.
  const { theory, agreement, repeatability, ...numbers } = answer;
  const budget = numbers.budget.map((line) => ({ ...line, sensitivity: line.sensitivity ?? 0 }));
  const marks = numbers.marks.map((mark) => ({ ...mark, cause: mark.cause ?? '' }));
  const working = numbers.working.map((step) => ({ ...step, why: step.why ?? '' }));
  const plain = {
    ...numbers,
    budget,
    marks,
    working,
    places: [],
    theory: theory ?? 0,
    agreement: agreement ?? 0,
    repeatability: repeatability ?? 0,
  };
  const json = JSON.stringify(plain);
  expect(json).not.toMatch(/:null|NaN|undefined|Infinity/);
  expect(answer.speedMps).toBeGreaterThan(0);
  expect(answer.standardUncertaintyMps).toBeGreaterThan(0);
  expect(answer.expandedUncertaintyMps).toBeGreaterThan(answer.standardUncertaintyMps);
  for (const mark of answer.marks) {
    expect(Number.isInteger(mark.order) && mark.order >= 1).toBe(true);
    expect(mark.orderConfidence).toBeGreaterThanOrEqual(0);
    expect(mark.orderConfidence).toBeLessThanOrEqual(1);
  }
}

const row = fc.record({
  fork: fc.oneof(fc.constantFrom(256, 341.3, 512, 1024), fc.double({ min: 20, max: 20_000, noNaN: true })),
  ends: fc.constantFrom('closed', 'open'),
  length: fc.oneof(
    fc.double({ min: 1, max: 1000, noNaN: true }),
    fc.double({ min: 10, max: 120, noNaN: true }),
    fc.constant(15.8),
  ),
  diameter: fc.option(fc.double({ min: 2, max: 500, noNaN: true }), { nil: '' }),
  temperature: fc.option(fc.double({ min: -30, max: 60, noNaN: true }), { nil: '' }),
  humidity: fc.option(fc.integer({ min: 0, max: 100 }), { nil: '' }),
  pressure: fc.option(fc.integer({ min: 500, max: 1100 }), { nil: '' }),
  place: fc.constantFrom('', 'hall', 'yard'),
  order: fc.option(fc.integer({ min: 1, max: 200 }), { nil: '', freq: 8 }),
  lengthU: fc.option(fc.double({ min: 0.01, max: 200, noNaN: true }), { nil: '' }),
  forkU: fc.option(fc.double({ min: 0, max: 4, noNaN: true }), { nil: '' }),
});
const HEADING =
  'fork_hz,ends,length_cm,diameter_mm,temperature_c,humidity_pct,pressure_hpa,place,order,length_uncertainty_mm,fork_uncertainty_hz';

describe('any table', () => {
  it('of rows within range gets a result without a hole in it', { timeout: 120_000 }, () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 1, maxLength: 12 }), (rows) => {
        expectSoundAnswer([HEADING, ...rows.map((one) => Object.values(one).join(','))].join('\n'));
      }),
      { numRuns: 60, seed: 4 },
    );
  });

  it('of hostile cells gets a result or a reason', { timeout: 120_000 }, () => {
    const cell = fc.oneof(
      fc.constantFrom(
        '',
        '0',
        '-1',
        '512',
        'closed',
        'open',
        '15,8',
        '"15,8"',
        '1e308',
        '1e-300',
        'NaN',
        'Infinity',
      ),
      fc.constantFrom('"', '""', '"a""b"', '=1+1', '٣', '−5', '15.8 cm', '0.158 m', '\u0000', ' '),
      fc.string({ maxLength: 8 }),
    );
    const line = fc.array(cell, { minLength: 1, maxLength: 6 }).map((cells) => cells.join(','));
    const heading = fc.constantFrom(
      'fork_hz,ends,length_cm',
      'fork_hz;ends;length_cm',
      HEADING,
      'ends,length_cm',
    );
    fc.assert(
      fc.property(
        heading,
        fc.array(line, { maxLength: 8 }),
        fc.constantFrom('\n', '\r\n', '\r'),
        (top, lines, end) => {
          expectSoundAnswer([top, ...lines].join(end));
        },
      ),
      { numRuns: 400, seed: 5 },
    );
  });

  it('of any text at all gets a result or a reason', { timeout: 120_000 }, () => {
    fc.assert(fc.property(fc.string({ maxLength: 200, unit: 'binary' }), expectSoundAnswer), {
      numRuns: 200,
      seed: 6,
    });
  });
});

describe('a long table', () => {
  it.each([
    ['one fork', () => 512],
    ['a thousand forks', (i: number) => 256 + i / 2],
  ])('of 1000 marks of %s is solved in seconds', (_name, pitchOf) => {
    const rows = Array.from({ length: 1000 }, (_, i) => {
      const hz = pitchOf(i);
      const lengthCm = ((1 + 2 * (i % 3)) * 100 * 343) / (4 * hz) - 0.9 + 0.05 * Math.sin(12.9898 * i);
      return `${hz},closed,${lengthCm.toFixed(2)},30`;
    });
    const started = performance.now();
    const answer = solveTable(['fork_hz,ends,length_cm,diameter_mm', ...rows].join('\n'));
    // About 0.2 s on an idle machine; ten times that still tells a search that explodes.
    expect(performance.now() - started).toBeLessThan(3000);
    expect('error' in answer).toBe(false);
    if ('error' in answer) return;
    expect(answer.marks.every((mark, i) => mark.order === 1 + (i % 3))).toBe(true);
  });
});
