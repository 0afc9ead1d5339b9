import { resonanceWidthM } from '../../../src/air/columnResonance.ts';
import { describe, expect, it } from 'vitest';
import { wallLoss } from '../../../src/air/wallLoss.ts';
import type { SolverMark } from '../../../src/solver/solution.ts';
import { solve } from '../../../src/solver/solve.ts';
import { solveAll } from '../../../src/solver/solveAll.ts';
import { workingStepWords } from '../../../src/words/workingSteps.ts';
import { causeOf, makeMarks, messageOf, shift, solved, trueSpeedMps } from './makeMarks.ts';
import { FIT_TOLERANCES } from './tolerances.ts';

const ordersOf = (marks: readonly SolverMark[]): number[] =>
  solved(solve(marks)).marks.map(({ order }) => order);
const codesOf = (marks: readonly SolverMark[]): string[] => solve(marks).warnings.map(({ code }) => code);
const CLOSED = [{ hz: 512, orders: [1, 2, 3, 4] }];

describe('orders', () => {
  it.each([
    ['two neighbours of a closed column', [{ hz: 512, orders: [1, 2] }]],
    ['a missed resonance', [{ hz: 512, orders: [1, 3, 4] }]],
    ['the first ones missed', [{ hz: 480, orders: [3, 4] }]],
    ['an open column', [{ hz: 384, ends: 'open' as const, orders: [1, 2, 3] }]],
    [
      'several forks',
      [
        { hz: 256, orders: [1] },
        { hz: 341.3, orders: [1, 2] },
        { hz: 512, orders: [2, 4] },
      ],
    ],
    [
      'closed and open together',
      [
        { hz: 512, orders: [1, 2] },
        { hz: 512, ends: 'open' as const, orders: [1, 3] },
      ],
    ],
    ['one mark', [{ hz: 512, orders: [2] }]],
  ])('are found for %s, and the speed with them', (_name, wanted) => {
    const marks = makeMarks(wanted);
    const solution = solved(solve(marks));
    expect(solution.marks.map(({ order }) => order)).toEqual(wanted.flatMap(({ orders }) => orders));
    for (const { orderConfidence } of solution.marks) expect(orderConfidence).toBeGreaterThan(0.95);
    expect(Math.abs(solution.speedMps / trueSpeedMps() - 1)).toBeLessThan(FIT_TOLERANCES.exact);
  });

  it('that were passed over are named', () => {
    const answer = solve(makeMarks([{ hz: 512, orders: [1, 3, 4] }]));
    expect(messageOf(answer, 'skipped-orders')).toContain('order 2 (512 Hz, closed)');
  });

  it('that are ambiguous are said to be so: a long column, no thermometer, no diameter, one mark', () => {
    const marks = makeMarks([{ hz: 1024, orders: [25] }], { air: null }).map((mark) => ({
      ...mark,
      radiusM: null,
    }));
    const solution = solved(solve(marks));
    expect(solution.marks[0]?.orderConfidence).toBeLessThan(0.9);
    expect(solution.marks[0]?.runnerUp?.speedMps).toBeGreaterThan(300);
    expect(codesOf(marks)).toContain('order-ambiguous');
  });

  it('that the user set are kept, and doubted where they fit no air', () => {
    const marks = makeMarks(CLOSED);
    const set = marks.map((mark, i) => (i === 2 ? { ...mark, order: 2 } : mark));
    const solution = solved(solve(set));
    expect(solution.marks[2]).toMatchObject({ order: 2, outlier: true });
    expect(causeOf(solution, 2)).toContain('fits order 3');
    expect(codesOf(set)).toContain('order-doubtful');
    expect(Math.abs(solution.speedMps / trueSpeedMps() - 1)).toBeLessThan(FIT_TOLERANCES.exact);
  });

  it('of the other column type are suggested where these fit', () => {
    const asOpen = makeMarks(CLOSED).map((mark) => ({ ...mark, ends: 'open' as const }));
    expect(codesOf(asOpen)).toContain('column-type');
    const asClosed = makeMarks([{ hz: 384, ends: 'open', orders: [1, 2, 3] }]).map((mark) => ({
      ...mark,
      ends: 'closed' as const,
    }));
    expect(codesOf(asClosed)).toContain('column-type');
    expect(codesOf(makeMarks(CLOSED))).not.toContain('column-type');
  });
});

describe('fit', () => {
  it('finds speed and end correction of exact marks and agrees with theory', () => {
    const solution = solved(solve(makeMarks(CLOSED)));
    expect((solution.endCorrectionOfMarks?.endCorrectionM ?? 0) / 0.015).toBeCloseTo(0.61, 2);
    expect(solution.endCorrectionM / 0.015).toBeCloseTo(0.61, 2);
    expect(Math.abs(solution.agreement?.normalisedError ?? 9)).toBeLessThan(1e-6);
  });

  it('tells an end correction that the marks give from one that was known before', () => {
    expect(solved(solve(makeMarks(CLOSED, { mouth: null }))).endCorrectionSource).toBe('measured');
    expect(solved(solve(makeMarks(CLOSED, { mouth: 'thin-rim' }))).endCorrectionSource).toBe('theory');
  });

  it('takes the end correction from theory for one mark and says so', () => {
    const solution = solved(solve(makeMarks([{ hz: 512, orders: [1] }])));
    expect(solution.endCorrectionSource).toBe('theory');
    expect(solution.warnings.map(({ code }) => code)).toEqual(
      expect.arrayContaining(['too-few-marks', 'end-correction-from-theory']),
    );
  });

  it('is not pulled by the thermometer: a wrong temperature changes the comparison, not the speed', () => {
    const marks = makeMarks(CLOSED);
    const right = solved(solve(marks));
    const wrong = solved(
      solve(
        makeMarks(CLOSED, {}).map((mark, i) => ({
          ...(marks[i] ?? mark),
          air: mark.air && { ...mark.air, temperatureC: 28 },
        })),
      ),
    );
    // Only the walls' slowing and the mouth's weak dependence on ka know the temperature.
    expect(Math.abs(wrong.speedMps / right.speedMps - 1)).toBeLessThan(2e-4);
    expect(wrong.warnings.map(({ code }) => code)).toContain('differs-from-theory');
  });

  it('refers marks in different air to their mean air', () => {
    const cold = makeMarks([{ hz: 512, orders: [1, 2] }], { temperatureC: 10 });
    const warm = makeMarks([{ hz: 512, orders: [1, 2] }], { temperatureC: 30 }).map((mark) => ({
      ...mark,
      key: `warm ${mark.key}`,
    }));
    const solution = solved(solve([...cold, ...warm]));
    expect(Math.abs(solution.speedMps / trueSpeedMps(20) - 1)).toBeLessThan(2e-5);
  });

  it('of many repeats is that of plain least squares: errors common to all marks widen it and do not pull it', () => {
    // The mouth's constraint weighs next to nothing beside 400 readings. Closed form of a straight line, L = v·(n − ½)/2f − e (any textbook). Weighting by errors in proportion to the
    // measured lengths would give less: D'Agostini 1994, Nucl. Instrum. Methods A 346, 306.
    const orders = Array.from({ length: 400 }, (_, i) => 1 + (i % 4));
    const marks = makeMarks([{ hz: 512, orders }], { frequencyStandardUncertaintyHz: 1.5 }).map(
      (mark, i) => ({
        ...mark,
        lengthM: mark.lengthM + 0.0009 * Math.sin(12.9898 * i),
      }),
    );
    const x = orders.map((order) => (order - 0.5) / (2 * 512));
    const meanOf = (values: readonly number[]): number =>
      values.reduce((sum, value) => sum + value, 0) / values.length;
    const [meanX, meanL] = [meanOf(x), meanOf(marks.map(({ lengthM }) => lengthM))];
    const slope =
      meanOf(marks.map(({ lengthM }, i) => ((x[i] ?? 0) - meanX) * (lengthM - meanL))) /
      meanOf(x.map((value) => (value - meanX) ** 2));
    const slowing = wallLoss(0.015, 512, 20, trueSpeedMps()).speedRatio;
    expect(Math.abs(solved(solve(marks)).speedMps / (slope / slowing) - 1)).toBeLessThan(
      FIT_TOLERANCES.outweighed,
    );
  });

  it('takes a bracket as its middle, uncertain by its width over √12', () => {
    const marks = makeMarks([{ hz: 512, orders: [1, 2] }]);
    const bracketed = marks.map((mark) => ({
      ...mark,
      lengthM: mark.lengthM - 0.01,
      otherLengthM: mark.lengthM + 0.01,
    }));
    const [narrow, wide] = [solved(solve(marks)), solved(solve(bracketed))];
    expect(Math.abs(wide.speedMps / narrow.speedMps - 1)).toBeLessThan(FIT_TOLERANCES.exact);
    const reading = (of: typeof wide): number =>
      of.budget.find(({ unit }) => unit === 'm')?.standardUncertainty ?? 0;
    expect(
      Math.max(
        ...wide.budget.filter(({ source }) => source === 'reading').map((line) => line.standardUncertainty),
      ),
    ).toBeCloseTo(Math.hypot(0.02 / Math.sqrt(12), 0.0007 / Math.SQRT2), 9);
    expect(reading(wide)).toBeGreaterThan(0);
  });

  it('knows two different mouths of a telescoping tube', () => {
    // One mouth is 40 mm wide instead of 30 mm: by Levine & Schwinger its correction is larger by 0.6133 · 5 mm, less
    // 1 % for ka = 0.14 (Dalmont, Nederveen & Joly 2001).
    const same = makeMarks([{ hz: 384, ends: 'open', orders: [1, 2] }]);
    const wider = same.map((mark) => ({ ...mark, lengthM: mark.lengthM - 0.6133 * 0.005 * 0.992 }));
    const known = solved(solve(wider.map((mark) => ({ ...mark, otherRadiusM: 0.02 }))));
    const unknown = solved(solve(wider));
    expect(Math.abs(known.speedMps / trueSpeedMps() - 1)).toBeLessThan(2e-4);
    expect(Math.abs(unknown.speedMps / trueSpeedMps() - 1)).toBeGreaterThan(2e-3);
  });
});

describe('uncertainty', () => {
  it('of two marks of one fork is the textbook’s: u² = (2f·√2·u(L))² + (c·u(f)/f)² and small parts', () => {
    const marks = makeMarks([{ hz: 512, orders: [1, 2] }]);
    const options = { rule: { zeroStandardUncertaintyM: 0, scaleStandardUncertainty: 0 } };
    const solution = solved(solve(marks, options));
    const wall = solution.budget.find(({ source }) => source === 'wall')?.contributionMps ?? 0;
    // The walls' slowing of 1.63 m/s, known to a tenth.
    expect(wall).toBeCloseTo(0.163, 2);
    const slowed = trueSpeedMps() / (trueSpeedMps() - 1.63);
    const fork = 0.001 * trueSpeedMps();
    const free = Math.hypot(2 * 512 * Math.SQRT2 * 0.0007 * slowed, fork, wall);
    // Without knowledge of the mouth, or nearly: as good as none is a tube of which nothing is said.
    const unsaid = makeMarks([{ hz: 512, orders: [1, 2] }], { mouth: null });
    const unconstrained = solved(solve(unsaid, options)).standardUncertaintyMps;
    expect(unconstrained / free).toBeLessThan(1);
    expect(unconstrained / free).toBeGreaterThan(0.85);
    // With it: L = x·v − e with e known to u(e) = 0.03 radii. Information of two unknowns adds up (Gauss & Markov):
    // [Σx²/u², −Σx/u²; −Σx/u², 2/u² + 1/u(e)²], whose inverse holds u²(v).
    const [x1, x2] = [0.5 / 1024 / slowed, 1.5 / 1024 / slowed];
    const [precision, known] = [1 / 0.0007 ** 2, 1 / (0.03 * 0.015) ** 2];
    const ofEnd = 2 * precision + known;
    const ofSpeed = (x1 * x1 + x2 * x2) * precision - ((x1 + x2) * precision) ** 2 / ofEnd;
    const expected = Math.hypot(Math.sqrt(1 / ofSpeed), fork, wall);
    expect(Math.abs(solution.standardUncertaintyMps / expected - 1)).toBeLessThan(0.01);
  });

  it('budget adds up in squares to the standard uncertainty', () => {
    const { budget, standardUncertaintyMps } = solved(
      solve(makeMarks([...CLOSED, { hz: 384, orders: [1, 2] }])),
    );
    const sum = Math.sqrt(budget.reduce((total, { contributionMps: u }) => total + u * u, 0));
    expect(sum).toBeCloseTo(standardUncertaintyMps, 12);
    for (const { sensitivity, standardUncertainty, contributionMps } of budget) {
      if (sensitivity !== null) expect(sensitivity * standardUncertainty).toBeCloseTo(contributionMps, 12);
    }
  });

  it('of one fork’s pitch does not shrink with more marks of that fork, and does with more forks', () => {
    const forkPart = (marks: readonly SolverMark[]): number =>
      Math.hypot(
        ...solved(solve(marks))
          .budget.filter(({ source }) => source === 'fork')
          .map((line) => line.contributionMps),
      );
    const one = forkPart(makeMarks([{ hz: 512, orders: [1, 2] }]));
    const more = forkPart(makeMarks([{ hz: 512, orders: [1, 1, 2, 2, 3, 3, 4] }]));
    expect(more).toBeCloseTo(one, 6);
    const forks = forkPart(makeMarks([256, 288, 320, 384, 480, 512].map((hz) => ({ hz, orders: [1, 2] }))));
    expect(forks).toBeLessThan(0.6 * one);
  });

  it('of loudest places is what moving every length to one side by its own part of a half width does', () => {
    const wanted = [{ hz: 512, orders: [1, 2, 3] }];
    const stated = { locatedBy: 'loudest', riseDb: 8 } as const;
    const solution = solved(solve(makeMarks(wanted, stated)));
    const line = solution.budget.find(({ source }) => source === 'loudest');
    // 0.30 half widths at 8 dB, root mean square over all angles; the widths are those of theory (tests of air).
    const moved = makeMarks(wanted, stated).map((mark) => {
      const { attenuationNpPerM } = wallLoss(0.015, 512, 20, trueSpeedMps());
      const column = { ends: mark.ends, lengthM: mark.lengthM, radiusM: 0.015, frequencyHz: 512 };
      const widthM = resonanceWidthM({ ...column, speedMps: trueSpeedMps(), attenuationNpPerM });
      return { ...mark, lengthM: mark.lengthM + (0.3 * widthM) / 2 };
    });
    const byHand = Math.abs(solved(solve(moved)).speedMps - solution.speedMps);
    // 0.30 has two digits.
    expect(Math.abs((line?.contributionMps ?? 0) / byHand - 1)).toBeLessThan(0.02);
    expect(line?.unit).toBe('m');
    expect(solution.speedMps).toBeCloseTo(trueSpeedMps(), 6);
  });

  it('of a shown centre counts for each length by itself: 0.15 half widths, the reading and no more', () => {
    const wanted = [{ hz: 512, orders: [1, 2, 3] }];
    const shown = solved(solve(makeMarks(wanted, { centreStandardUncertaintyHalfWidths: 0.15 })));
    const exact = solved(solve(makeMarks(wanted)));
    expect(shown.budget.some(({ source }) => source === 'loudest')).toBe(false);
    const ratio = shown.expandedUncertaintyMps / exact.expandedUncertaintyMps;
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1.25);
  });

  it('without a word on how lengths were found is that of loudest places; the value hardly moves', () => {
    const wanted = [{ hz: 512, orders: [1, 2, 3] }];
    const unstated = makeMarks(wanted).map((mark) => {
      const { locatedBy, centreStandardUncertaintyHalfWidths, ...rest } = mark;
      return { rest, locatedBy, centreStandardUncertaintyHalfWidths }.rest;
    });
    const solution = solved(solve(unstated));
    expect(solution.speedMps).toBeCloseTo(trueSpeedMps(), 6);
    expect(solution.budget.some(({ source }) => source === 'loudest')).toBe(true);
    const place = solution.working.find(({ kind }) => kind === 'place');
    expect(place).toMatchObject({ locatedBy: 'loudest', markCount: 3, isRiseAssumed: true });
  });

  it('is widened where the lengths scatter, with fewer degrees of freedom', () => {
    const marks = makeMarks([{ hz: 512, orders: [1, 1, 1, 2, 2, 2, 3, 3, 3] }]);
    const scatterMm = [4, -3, 1, -4, 3, -2, 4, 0, -4];
    const rough = marks.map((mark, i) => ({ ...mark, lengthM: mark.lengthM + (scatterMm[i] ?? 0) / 1000 }));
    const [calm, widened] = [solved(solve(marks)), solved(solve(rough))];
    expect(widened.scatterFactor).toBeGreaterThan(3);
    const readingOf = ({ budget }: typeof calm): number =>
      budget.find(({ source }) => source === 'reading')?.contributionMps ?? 0;
    expect(readingOf(widened)).toBeGreaterThan(2 * readingOf(calm));
    expect(widened.standardUncertaintyMps).toBeGreaterThan(1.5 * calm.standardUncertaintyMps);
    expect(widened.coverageFactor).toBeGreaterThan(calm.coverageFactor);
    expect(widened.marks.some(({ outlier }) => outlier)).toBe(false);
    expect(widened.warnings.map(({ code }) => code)).toContain('scatter');
  });
});

describe('a result', () => {
  it('widens without a step as the lengths get rougher, from the first excess on', () => {
    const marks = makeMarks([{ hz: 512, orders: [1, 2, 3] }], { frequencyStandardUncertaintyHz: 0 });
    const widths = Array.from({ length: 60 }, (_, i) => {
      const rough = marks.map((mark, j) => ({ ...mark, lengthM: mark.lengthM + (j === 1 ? i * 3e-5 : 0) }));
      return solved(solve(rough)).expandedUncertaintyMps;
    });
    for (const [i, width] of widths.entries()) {
      const before = widths[i - 1] ?? width;
      expect(width / before).toBeGreaterThan(0.999);
      expect(width / before).toBeLessThan(1.1);
    }
    // χ² of the roughest is 4.4 for its lengths, with one degree of freedom of theirs and one of the mouth's.
    expect((widths.at(-1) ?? 0) / (widths[0] ?? 1)).toBeGreaterThan(1.2);
  });
});

describe('judgement', () => {
  it.each([
    [0.1, 'misread by 10 cm?'],
    [-0.1, 'misread by 10 cm?'],
    [0.01, 'misread by 1 cm?'],
    [0.023, 'read it again'],
  ])('finds a length that is %s m off and says: %s', (byM, cause) => {
    const solution = solved(solve(shift(makeMarks([...CLOSED, { hz: 480, orders: [1, 2] }]), 1, byM)));
    expect(solution.marks.map(({ outlier }) => outlier)).toEqual([false, true, false, false, false, false]);
    expect(causeOf(solution, 1)).toContain(cause);
    expect(Math.abs(solution.speedMps / trueSpeedMps() - 1)).toBeLessThan(FIT_TOLERANCES.exact);
  });

  it('sees two digits swapped', () => {
    const marks = makeMarks([{ hz: 512, orders: [1, 2, 3, 4, 1] }]).map((mark) => ({
      ...mark,
      lengthM: Math.round(mark.lengthM * 1000) / 1000,
    }));
    const third = marks[2]?.lengthM ?? 0;
    const [a, b, c] = String(Math.round(third * 1000));
    const swapped = Number(`${a}${c}${b}`) / 1000;
    const solution = solved(solve(marks.map((mark, i) => (i === 2 ? { ...mark, lengthM: swapped } : mark))));
    expect(solution.marks[2]).toMatchObject({ outlier: true });
    expect(causeOf(solution, 2)).toMatch(/two digits swapped|misread/);
  });

  it('sees digits swapped and a slipped point that end near another order', () => {
    const marks = makeMarks(CLOSED);
    const causeAt = (lengthM: number): string =>
      causeOf(solved(solve(marks.map((mark, i) => (i === 1 ? { ...mark, lengthM } : mark)))), 1);
    // Order 2 lies at 49.3 cm: 94.3 lies nearer to order 3, and 4.93 to order 1.
    expect(Math.abs((marks[1]?.lengthM ?? 0) - 0.493)).toBeLessThan(0.002);
    expect(causeAt(0.943)).toContain('digits swapped');
    expect(causeAt(0.0493)).toContain('decimal point');
  });

  it('sees a mark of another fork, and one of another column type', () => {
    const marks = makeMarks([...CLOSED, { hz: 426.6, orders: [1, 2, 3] }]);
    const strange = marks.map((mark, i) => (i === 5 ? { ...mark, forkKey: '512', frequencyHz: 512 } : mark));
    expect(causeOf(solved(solve(strange)), 5)).toContain('order 2 of the 426.6 Hz fork');
    const open = makeMarks([{ hz: 512, ends: 'open', orders: [2] }]).map((mark) => ({
      ...mark,
      key: 'open',
      ends: 'closed' as const,
    }));
    expect(causeOf(solved(solve([...makeMarks(CLOSED), ...open])), 4)).toContain('order 2 of an open column');
  });

  it('blames nobody where the marks can’t tell who is wrong', () => {
    const solution = solved(solve(shift(makeMarks([{ hz: 512, orders: [1, 2, 3] }]), 1, 0.004)));
    expect(solution.marks.some(({ outlier }) => outlier)).toBe(false);
    expect(solution.warnings.map(({ code }) => code)).toContain('inconsistent');
  });

  it('names a rule whose zero is off by its end correction', () => {
    const marks = makeMarks(CLOSED).map((mark) => ({ ...mark, lengthM: mark.lengthM + 0.03 }));
    const solution = solved(solve(marks));
    expect(solution.warnings.map(({ code }) => code)).toContain('end-correction-implausible');
    expect(solution.marks.map(({ order }) => order)).toEqual([1, 2, 3, 4]);
    // The mouth's constraint gives way, and bends the speed by less than a tenth of what a thermometer can tell.
    expect(Math.abs(solution.speedMps / trueSpeedMps() - 1)).toBeLessThan(1e-4);
  });

  it('names a speed that air does not have, and takes it where a gas is chosen', () => {
    // A 384 Hz fork noted as 512 Hz: a speed of 458 m/s.
    const marks = makeMarks([{ hz: 384, orders: [1, 2, 3] }]).map((mark) => ({ ...mark, frequencyHz: 512 }));
    expect(codesOf(marks)).toContain('speed-implausible');
    const chosen = solved(solve(marks, { speedRangeMps: [420, 500] }));
    expect(chosen.marks.map(({ order }) => order)).toEqual([1, 2, 3]);
    expect(chosen.warnings.map(({ code }) => code)).not.toContain('speed-implausible');
  });
});

describe('a slip in the whole table', () => {
  const scaled = (factor: number): SolverMark[] =>
    makeMarks(CLOSED).map((mark) => ({ ...mark, lengthM: mark.lengthM * factor }));

  it.each([
    ['millimetres', 10],
    ['inches', 1 / 2.54],
    ['centimetres', 0.1],
  ])('of lengths in %s is named by their unit', (name, factor) => {
    expect(messageOf(solve(scaled(factor)), 'length-unit')).toContain(name);
    expect(codesOf(scaled(1))).not.toContain('length-unit');
  });

  it('of the rule’s zero is no heap of misfits', () => {
    const codes = codesOf(makeMarks(CLOSED).map((mark) => ({ ...mark, lengthM: mark.lengthM + 0.1 })));
    expect(codes).toContain('end-correction-implausible');
    expect(codes).not.toContain('nothing-fits');
  });

  it('of the fork’s pitch is told by the pitch that would agree', () => {
    const answer = solve(
      makeMarks([{ hz: 512, orders: [1, 2, 3] }]).map((mark) => ({ ...mark, frequencyHz: 480 })),
    );
    expect(messageOf(answer, 'differs-from-theory')).toContain('of 512 Hz');
  });

  it('of the diameter yields to marks that agree among each other', () => {
    const marks = makeMarks([{ hz: 512, orders: [1, 2, 3] }]).map((mark) => ({ ...mark, radiusM: 0.004 }));
    const solution = solved(solve(marks));
    expect(solution.endCorrectionSource).toBe('measured');
    expect(solution.endCorrectionM * 1000).toBeCloseTo(9.1, 0);
    expect(codesOf(marks)).toContain('end-correction-implausible');
  });

  it('of one order that was set is doubted', () => {
    const [one, two] = makeMarks([{ hz: 512, orders: [1, 2] }]);
    if (one === undefined || two === undefined) throw new Error('two marks were asked for');
    expect(codesOf([{ ...one, order: 2 }])).toContain('order-doubtful');
    expect(codesOf([one, { ...two, order: 3 }])).toContain('order-doubtful');
    expect(codesOf([one, { ...two, order: 2 }])).not.toContain('order-doubtful');
  });

  it('of temperatures left out is told', () => {
    const marks = makeMarks(CLOSED).map((mark, i) => (i === 0 ? { ...mark, air: null } : mark));
    expect(codesOf(marks)).toContain('some-temperatures-missing');
    expect(codesOf(makeMarks(CLOSED))).not.toContain('some-temperatures-missing');
  });

  it('of no diameter at all stays within the stated uncertainty in tubes of 20 to 50 mm', () => {
    for (const radiusM of [0.01, 0.0125, 0.015, 0.02, 0.025]) {
      const exact = { frequencyStandardUncertaintyHz: 0, lengthStandardUncertaintyM: 1e-4, radiusM };
      const marks = makeMarks([{ hz: 256, orders: [1, 2] }], exact).map((mark) => ({
        ...mark,
        radiusM: null,
      }));
      const solution = solved(solve(marks));
      expect(Math.abs(solution.speedMps - trueSpeedMps())).toBeLessThan(solution.expandedUncertaintyMps);
    }
  });
});

describe('lengths that lie anywhere', () => {
  it('are said to fit nothing, with no sure order among them', () => {
    const pattern = makeMarks([{ hz: 512, orders: [1] }])[0];
    if (pattern === undefined) throw new Error('no mark');
    const anywhere = [0.21, 0.27, 0.33, 0.38, 0.43, 0.55, 0.6, 0.66, 0.71, 0.77];
    const solution = solved(solve(anywhere.map((lengthM, i) => ({ ...pattern, key: `m${i}`, lengthM }))));
    expect(solution.warnings.map(({ code }) => code)).toContain('nothing-fits');
    expect(solution.expandedUncertaintyMps).toBeGreaterThan(30);
  });
});

describe('bad marks', () => {
  it('are named and left out', () => {
    const marks = makeMarks(CLOSED);
    const broken = marks.map((mark, i) => (i === 0 ? { ...mark, lengthM: NaN } : mark));
    const solution = solved(solve(broken));
    expect(solution.warnings[0]).toMatchObject({ code: 'bad-mark' });
    expect(solution.marks).toHaveLength(3);
  });

  it('alone give no solution but a reason', () => {
    expect(solve([])).toMatchObject({ speedMps: null, warnings: [{ code: 'no-marks' }] });
    const upsideDown = makeMarks([{ hz: 512, orders: [1, 2] }]).map((mark, i) => ({ ...mark, order: 2 - i }));
    expect(solve(upsideDown)).toMatchObject({ speedMps: null, warnings: [{ code: 'contradiction' }] });
  });
});

describe('places', () => {
  it('are solved each by itself, in their order', () => {
    const hall = makeMarks([{ hz: 512, orders: [1, 2] }], { place: 'hall', temperatureC: 20 });
    const yard = makeMarks([{ hz: 512, orders: [1, 2] }], { place: 'yard', temperatureC: 5 });
    const [first, second] = solveAll([...hall, ...yard]);
    expect(first?.place).toBe('hall');
    expect(second?.speedMps).toBeCloseTo(trueSpeedMps(5), 6);
  });
});

describe('working', () => {
  it('shows each step with its numbers and units', () => {
    const working = solved(solve(makeMarks([{ hz: 512, orders: [1, 2] }]))).working.map(workingStepWords);
    expect(working.map(({ title }) => title)).toEqual([
      'Half a wavelength from the difference of two lengths',
      'Wavelength',
      'Speed of the wave in the tube',
      'End correction',
      'All marks and the mouth together',
      'Free air: the walls slow the wave',
      'Standard uncertainty',
      'Expanded uncertainty, 95 %',
      'Predicted speed',
      'Difference from the prediction',
    ]);
    // λ/2 = (343.99 − 1.63)/(2 · 512) m.
    expect(working[0]).toMatchObject({ formula: 'λ/2 = (L₂ − L₁)/(n₂ − n₁)', result: 'λ/2 = 33.43 cm' });
    expect(working[5]?.result).toBe('c = 343.99 m/s');
  });

  it('of one open mark starts from its column', () => {
    const working = solved(solve(makeMarks([{ hz: 384, ends: 'open', orders: [1] }]))).working.map(
      workingStepWords,
    );
    expect(working[0]).toMatchObject({ formula: 'ℓ = L + 2e' });
    expect(working[1]).toMatchObject({ formula: 'λ = 2ℓ/n' });
  });
});

it('orders of marks in any sequence are the same', () => {
  const marks = makeMarks([
    { hz: 512, orders: [1, 2, 4] },
    { hz: 384, orders: [2, 3] },
  ]);
  const reversed = [...marks].reverse();
  expect(ordersOf(reversed)).toEqual([...ordersOf(marks)].reverse());
});
