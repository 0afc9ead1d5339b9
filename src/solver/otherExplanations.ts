import { SCHOOL_FORKS_HZ } from '../marks/usualForks.ts';
import { USUAL_AIR } from '../air/airState.ts';
import { speedOfSound } from '../air/speedOfSound.ts';
import { MISTAKEN_UNITS } from './betterTable.ts';
import { GASES, speedInGasMps } from '../air/gases.ts';
import { prepareMarks } from './prepareMarks.ts';
import type { Preparation } from './prepareMarks.ts';
import { searchOrders, skippedOrders } from './searchOrders.ts';
import type { OrderSearch, SpeedPrior } from './searchOrders.ts';
import type { SolverMark, SolverOptions } from './solution.ts';
import type { OtherExplanation } from './solverWarning.ts';

/** A table's marks with what the solver made of them as they are noted. */
export interface NotedTable {
  readonly marks: readonly SolverMark[];
  readonly options: SolverOptions;
  readonly preparation: Preparation;
  readonly search: OrderSearch;
  readonly prior: SpeedPrior;
  /** Relative standard uncertainty of the speed as the marks give it. */
  readonly speedUncertainty: number;
}

/** What speaks against a table's numbers being what they are noted as, in units of χ²/2, costs; judgements. */
const COST = {
  /** A unit, fork or gas that isn't the noted one: odds of 20 to 1, 20 to 1 and 50 to 1 against. */
  unit: 3,
  fork: 3,
  gas: 4,
  /** Each resonance that must have been passed over: odds of e to 1. */
  skippedOrder: 1,
} as const;
/** A speed may be as odd as it likes: no more than odds of 3000 to 1 against. */
const ODDEST_SPEED = 8;
/** Of usual air where nobody read a thermometer: give or take 7 K, at 0.6 m/s for each (Cramer 1993). */
const ROOM_SPEED_SPREAD = 0.012;
/** Of the speed that a thermometer stands for, end correction and fork included. */
const READ_SPEED_SPREAD = 0.005;
/** A fork within this part is the noted one; a gas within this part of air's speed sounds like air. */
const SAME_FORK = 0.01;
const LIKE_AIR = 0.03;
/** No column is shorter, m. */
const SHORTEST_M = 0.005;
/** Less likely ones aren't worth a word. */
const LEAST_SHARE = 0.05;
const MOST_NAMED = 3;

/**
 * Other units, forks and gases under which the same numbers make sense, with their odds against what is noted.
 * @returns best first; empty where what is noted stands alone
 */
export function otherExplanations(table: NotedTable): {
  readonly shareAsNoted: number;
  readonly explanations: readonly OtherExplanation[];
} {
  const asNoted = costOf(table.preparation, table.search, table);
  const alternatives = [...otherUnits(table), ...otherForks(table), ...otherGases(table)];
  const least = Math.min(asNoted, ...alternatives.map(({ cost }) => cost));
  const weightOf = (cost: number): number => Math.exp(least - cost);
  const whole = alternatives.reduce((sum, { cost }) => sum + weightOf(cost), weightOf(asNoted));
  const explanations = alternatives
    .map(({ cost, meaning }): OtherExplanation => ({ ...meaning, share: weightOf(cost) / whole }))
    .filter(({ share }) => share >= LEAST_SHARE)
    .sort((one, other) => other.share - one.share)
    .slice(0, MOST_NAMED);
  return { shareAsNoted: weightOf(asNoted) / whole, explanations };
}

interface Alternative {
  readonly cost: number;
  readonly meaning: OtherMeaning;
}

type OtherMeaning = OtherExplanation extends infer One
  ? One extends unknown
    ? Omit<One, 'share'>
    : never
  : never;

function otherUnits(table: NotedTable): Alternative[] {
  return MISTAKEN_UNITS.flatMap(({ unit, factor }) => {
    const marks = table.marks.map((mark) => ({
      ...mark,
      lengthM: mark.lengthM * factor,
      otherLengthM: mark.otherLengthM === null ? null : mark.otherLengthM * factor,
    }));
    return tried({ ...table, marks }, COST.unit, { kind: 'unit', unit });
  });
}

function otherForks(table: NotedTable): Alternative[] {
  const noted = new Map(table.marks.map(({ forkKey, frequencyHz }) => [forkKey, frequencyHz]));
  // Of several forks the others show which one is wrong: its marks lie off.
  if (noted.size !== 1) return [];
  const [notedHz] = noted.values();
  return SCHOOL_FORKS_HZ.filter((hz) => Math.abs(hz / notedHz - 1) > SAME_FORK).flatMap((fittingHz) => {
    const marks = table.marks.map((mark) => ({ ...mark, frequencyHz: fittingHz }));
    return tried({ ...table, marks }, COST.fork, { kind: 'fork', notedHz, fittingHz });
  });
}

function otherGases(table: NotedTable): Alternative[] {
  const { temperatureC, filling } = table.preparation.air ?? USUAL_AIR;
  // Who says which gas it is knows that it isn't air.
  if (filling !== 'air') return [];
  const airMps = speedOfSound({ ...USUAL_AIR, temperatureC }).speedMps;
  return GASES.flatMap((gas) => {
    const speedMps = speedInGasMps(gas, temperatureC);
    if (Math.abs(speedMps / airMps - 1) < LIKE_AIR) return [];
    const prior = { lowestMps: 0.97 * speedMps, highestMps: 1.03 * speedMps, expectedMps: speedMps };
    return tried({ ...table, prior }, COST.gas, { kind: 'gas', gas: gas.id });
  });
}

/** What these marks cost under another meaning; nothing where their lengths can't be meant so. */
function tried(table: NotedTable, cost: number, meaning: OtherMeaning): Alternative[] {
  const { marks, options, prior } = table;
  if (marks.some(({ lengthM }) => lengthM < SHORTEST_M)) return [];
  const preparation = prepareMarks(marks, options);
  const search = searchOrders(preparation.rows, prior, preparation.end, false);
  return [{ cost: cost + costOf(preparation, search, table), meaning }];
}

/** How badly the best assignment of orders fits, with what its passed-over resonances and its speed cost. */
function costOf(
  { rows, air }: Preparation,
  search: OrderSearch,
  { prior: { expectedMps }, speedUncertainty }: Pick<NotedTable, 'prior' | 'speedUncertainty'>,
): number {
  const [best] = search.candidates;
  if (best === undefined) return Infinity;
  const expected = expectedMps ?? speedOfSound(USUAL_AIR).speedMps;
  const known = air === null ? ROOM_SPEED_SPREAD : READ_SPEED_SPREAD;
  const spread = Math.hypot(known, speedUncertainty) * expected;
  const oddSpeed = Math.min(((best.speedMps - expected) / spread) ** 2 / 2, ODDEST_SPEED);
  return search.marksMisfit + COST.skippedOrder * skippedOrders(rows, best.orders) + oddSpeed;
}
