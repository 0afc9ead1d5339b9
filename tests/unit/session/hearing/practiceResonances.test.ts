import { describe, expect, it } from 'vitest';
import { PracticeColumn } from '../../../../src/capture/practice/practiceColumn.ts';
import { practiceResonances } from '../../../../src/session/hearing/practiceResonances.ts';
import { readingsBesideTruth } from '../../../../src/session/hearing/practiceVerdict.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../../notebook/exampleExperiment.ts';

/** Level of the simulated steady sound over the direct sound alone. */
function size(column: PracticeColumn, lengthM: number): number {
  const { re, im } = column.responseAt(lengthM);
  return Math.hypot(re, im);
}

/** The loudest place within 2 cm by a scan in steps of 2 µm. */
function scannedM(column: PracticeColumn, nearM: number): number {
  let best = nearM;
  for (let step = -10_000; step <= 10_000; step += 1) {
    const lengthM = nearM + step * 2e-6;
    if (lengthM > 0 && size(column, lengthM) > size(column, best)) best = lengthM;
  }
  return best;
}

/** Half widths from resonance to the loudest place of |1 + m e^{iθ}/(1 + ix)|, by a scan. */
function onePoleOffset(m: number, angleRad: number): number {
  const loudness = (x: number): number => {
    const part = m / Math.sqrt(1 + x * x);
    return 1 + 2 * part * Math.cos(angleRad - Math.atan(x)) + part * part;
  };
  let best = 0;
  for (let x = -2; x <= 2; x += 1e-4) if (loudness(x) > loudness(best)) best = x;
  return best;
}

describe.each([
  { stampedHz: 512, diameterM: 0.035, ends: 'closed' },
  { stampedHz: 256, diameterM: 0.044, ends: 'closed' },
  { stampedHz: 341.3, diameterM: 0.025, ends: 'open' },
  { stampedHz: 1024, diameterM: 0.035, ends: 'open' },
] as const)('practiceResonances, $ends, $stampedHz Hz, $diameterM m', (apparatus) => {
  const column = new PracticeColumn({ ...apparatus, forkHz: apparatus.stampedHz }, 1);
  const resonances = practiceResonances(column);

  it('have the resonant lengths of the simulation', () => {
    expect(resonances.map(({ lengthM }) => lengthM)).toEqual(column.resonantLengthsM);
    expect(resonances.length).toBeGreaterThan(0);
  });

  it('are loudest where a scan of the simulated level finds it', () => {
    for (const { lengthM, loudestM } of resonances) {
      expect(Math.abs(loudestM - scannedM(column, lengthM))).toBeLessThan(3e-6);
      expect(size(column, loudestM)).toBeGreaterThan(size(column, lengthM));
    }
  });
});

describe('the loudest place of the usual practice column', () => {
  const column = new PracticeColumn({ forkHz: 512 }, 1);

  // By an independent computation from walls and radiation for 35 mm at 512 Hz, rounded to 0.1 mm.
  it('stands beside a half width of 1.4, 2.7 and 4.1 mm at orders 1 to 3', () => {
    const offsMm = [1.4, 2.7, 4.1].map((mm, i) => 1000 * practiceResonances(column)[i].halfWidthM - mm);
    for (const offMm of offsMm) expect(Math.abs(offMm)).toBeLessThan(0.1);
  });

  // Losses that grow along a tube, and its other resonances, aren't in one pole: 0.02 half widths.
  it('lies where direct sound and one pole have it, 60° apart (columnModel: the coupling’s angle)', () => {
    for (const { lengthM, halfWidthM, loudestM } of practiceResonances(column)) {
      const { re, im } = column.responseAt(lengthM);
      const offset = onePoleOffset(Math.hypot(re - 1, im), Math.PI / 3);
      expect(Math.abs((loudestM - lengthM) / halfWidthM - offset)).toBeLessThan(0.02);
    }
  });

  // Greatest offset over all angles for each rise, by an independent numerical study, half widths.
  it('lies within what any angle allows, always to the same side', () => {
    const most = [
      [6, 0.58],
      [8, 0.44],
      [10, 0.33],
      [14, 0.2],
      [20, 0.1],
    ] as const;
    for (const { lengthM, halfWidthM, loudestM } of practiceResonances(column)) {
      const riseDb = 20 * Math.log10(size(column, loudestM));
      const bound = most.findLast(([db]) => db <= riseDb);
      const offset = (loudestM - lengthM) / halfWidthM;
      expect(offset).toBeGreaterThan(0.03);
      expect(offset).toBeLessThanOrEqual(bound?.[1] ?? NaN);
    }
  });
});

describe('readingsBesideTruth', () => {
  const column = new PracticeColumn({ forkHz: 512 }, 1);
  const resonances = practiceResonances(column);
  const third = resonances[2];
  const verdictAt = (lengthM: number, zeroOffsetM = 0) => {
    const experiment = exampleExperiment([exampleMark('a', { lengthM, evidence: EXAMPLE_EVIDENCE })]);
    const ruled = { ...experiment, rule: { ...experiment.rule, zeroOffsetM } };
    return readingsBesideTruth(ruled, resonances).map(({ verdict }) => verdict);
  };

  it('are read well at the resonance and at the loudest place, not beside them', () => {
    expect(verdictAt(third.lengthM)).toEqual(['resonance']);
    expect(verdictAt(third.loudestM)).toEqual(['loudest']);
    expect(verdictAt(third.loudestM + 0.005)).toEqual(['too-long']);
    expect(verdictAt(third.lengthM - 0.005)).toEqual(['too-short']);
    expect(verdictAt(third.lengthM + 0.012, 0.012)).toEqual(['resonance']);
  });

  it('leave out other forks, other ends, marks of real columns and what the user left out', () => {
    const lengthM = third.lengthM;
    const experiment = exampleExperiment([
      exampleMark('fork', { lengthM, forkId: 'fork-2' }),
      exampleMark('ends', { lengthM, ends: 'open' }),
      exampleMark('real', { lengthM, evidence: { ...EXAMPLE_EVIDENCE, source: 'microphone' } }),
      exampleMark('by hand, beside real ones', { lengthM }),
      exampleMark('excluded', { lengthM, excluded: true, evidence: EXAMPLE_EVIDENCE }),
      exampleMark('waiting', { evidence: EXAMPLE_EVIDENCE }),
      exampleMark('kept', { lengthM, evidence: EXAMPLE_EVIDENCE }),
    ]);
    expect(readingsBesideTruth(experiment, resonances).map(({ key }) => key)).toEqual(['kept']);
  });
});
