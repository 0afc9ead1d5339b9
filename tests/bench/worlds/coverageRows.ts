import { resonances } from '../../support/column/independentColumn.ts';
import { seeded } from './random.ts';
import { saidOf, solveWorld } from './solveWorld.ts';
import { drawWorldTable, USUAL_WORLD } from './worldTable.ts';
import type { World, WorldTable } from './worldTable.ts';

/** What a run of tables of one kind showed. Errors in % of the true speed. */
export interface CoverageRow {
  readonly tables: number;
  readonly coveragePct: number;
  /** Half of the 95 % interval. */
  readonly medianExpandedPct: number;
  readonly biasPct: number;
  readonly biasStandardErrorPct: number;
  /** Marks whose order is right. */
  readonly ordersRightPct: number;
  /** Good tables of which something was said to be off. */
  readonly alarmedPct: number;
  /** Textbook: two lengths of one fork, v = 2fΔL/Δn, orders given; no walls. */
  readonly difference: Rival | null;
  /** Textbook: one length of a closed column with 0.3 d, order given; no walls. */
  readonly single: Rival | null;
}

export interface Rival {
  readonly tables: number;
  readonly biasPct: number;
  /** Root of the mean squared error. */
  readonly errorPct: number;
  /** The bench's own in the same tables. */
  readonly benchErrorPct: number;
}

const TWO = { fewest: 2, most: 2 };
const ONE = { fewest: 1, most: 1 };
/** Whatever a mouth may be, from a thin rim to a hand close to it. */
const ANY: Pick<World, 'mouth'> = { mouth: [0.58, 0.83] };
/** Wide rims, a flange, a hand or the fork close to the mouth. */
const WIDE: Pick<World, 'mouth'> = { mouth: [0.8, 0.83] };

/** The kinds of tables that the interval must hold for. */
export const COVERAGE_WORLDS: readonly (readonly [title: string, world: World])[] = [
  ['e/a 0.58-0.66, forks 0.1 %, 3-8 marks', USUAL_WORLD],
  ['any mouth (e/a 0.58-0.83), two marks', { ...USUAL_WORLD, ...ANY, ...TWO }],
  ['any mouth, one mark', { ...USUAL_WORLD, ...ANY, ...ONE }],
  ['wide rim, hand, flange (e/a 0.80-0.83), 3-8 marks', { ...USUAL_WORLD, ...WIDE }],
  ['wide rim, hand, flange, two marks', { ...USUAL_WORLD, ...WIDE, ...TWO }],
  ['wide rim, hand, flange, one mark', { ...USUAL_WORLD, ...WIDE, ...ONE }],
  ['any mouth, no diameter, two marks', { ...USUAL_WORLD, ...ANY, ...TWO, hasDiameter: false }],
  ['any mouth, no diameter, one mark', { ...USUAL_WORLD, ...ANY, ...ONE, hasDiameter: false }],
  [
    'two marks found to 3 mm, nothing stated',
    { ...USUAL_WORLD, ...TWO, readingMm: 3, statedReadingMm: null },
  ],
];

/** Draws and solves `count` tables of one kind. */
export function measureCoverage(world: World, count: number, seed: number): CoverageRow {
  const random = seeded(seed);
  const find = resonances();
  const errors: number[] = [];
  const expanded: number[] = [];
  const difference: Pair[] = [];
  const single: Pair[] = [];
  let [covered, right, marks, alarmed] = [0, 0, 0, 0];
  for (let i = 0; i < count; i += 1) {
    const table = drawWorldTable(random, world, find);
    const answer = solveWorld(table.rows);
    if (saidOf(answer).isAlarmed) alarmed += 1;
    if (answer === null || answer.speedMps === null) throw new Error('a good table got no speed');
    const errorPct = percentOff(answer.speedMps, table);
    const expandedPct = (100 * answer.expandedUncertaintyMps) / answer.speedMps;
    errors.push(errorPct);
    expanded.push(expandedPct);
    if (Math.abs(answer.speedMps - table.trueSpeedMps) <= answer.expandedUncertaintyMps) covered += 1;
    marks += table.rows.length;
    right += answer.marks.filter(({ order }, j) => order === table.trueOrders[j]).length;
    const byDifference = differenceMps(table);
    if (byDifference !== null) difference.push([percentOff(byDifference, table), errorPct]);
    const bySingle = singleMps(table);
    if (bySingle !== null) single.push([percentOff(bySingle, table), errorPct]);
  }
  const bias = mean(errors);
  return {
    tables: count,
    coveragePct: (100 * covered) / count,
    medianExpandedPct: [...expanded].sort((one, other) => one - other)[Math.floor(count / 2)],
    biasPct: bias,
    biasStandardErrorPct: Math.sqrt(mean(errors.map((error) => (error - bias) ** 2)) / (count - 1)),
    ordersRightPct: (100 * right) / marks,
    alarmedPct: (100 * alarmed) / count,
    difference: rivalOf(difference),
    single: rivalOf(single),
  };
}

/** A textbook method's error and the bench's in the same table, %. */
type Pair = readonly [rival: number, bench: number];

function percentOff(speedMps: number, table: WorldTable): number {
  return 100 * (speedMps / table.trueSpeedMps - 1);
}

function differenceMps({ rows, trueOrders }: WorldTable): number | null {
  for (const [i, one] of rows.entries()) {
    const j = rows.findIndex((row, k) => k > i && row.forkHz === one.forkHz && row.ends === one.ends);
    if (j < 0) continue;
    const lengthM = (rows[j].lengthCm - one.lengthCm) / 100;
    return (2 * one.forkHz * lengthM) / (trueOrders[j] - trueOrders[i]);
  }
  return null;
}

function singleMps({ rows, trueOrders }: WorldTable): number | null {
  const i = rows.findIndex(({ ends, diameterMm }) => ends === 'closed' && diameterMm !== null);
  if (i < 0) return null;
  const { forkHz, lengthCm, diameterMm } = rows[i];
  return (2 * forkHz * (lengthCm / 100 + 0.0003 * (diameterMm ?? 0))) / (trueOrders[i] - 0.5);
}

function rivalOf(pairs: readonly Pair[]): Rival | null {
  if (pairs.length === 0) return null;
  const rootMeanSquare = (values: readonly number[]): number =>
    Math.sqrt(mean(values.map((value) => value * value)));
  return {
    tables: pairs.length,
    biasPct: mean(pairs.map(([rival]) => rival)),
    errorPct: rootMeanSquare(pairs.map(([rival]) => rival)),
    benchErrorPct: rootMeanSquare(pairs.map(([, bench]) => bench)),
  };
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
