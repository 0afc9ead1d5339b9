import { ordersFound } from './ordersFound.ts';
import type { EndPrior, PreparedMark } from './prepareMarks.ts';

/** One assignment of orders to all marks, with the share of belief that it has. */
export interface OrderCandidate {
  readonly orders: readonly number[];
  /** 0..1; all candidates of a search add up to 1. */
  readonly share: number;
  /** Where on the search's grid it fits best. */
  readonly speedMps: number;
  readonly end: number;
}

export interface OrderSearch {
  /** Most believed first; at least one. */
  readonly candidates: readonly OrderCandidate[];
  /** Marks that the search looked at; of a long table a sample. */
  readonly sampled: number;
  /** Misfit of the best point, in units of χ²/2 with each mark's part capped; small means that everything fits. */
  readonly misfit: number;
  /** Its part that is the marks' own, without what a stretched limit costs. */
  readonly marksMisfit: number;
  /** Which of the prior's limits had to be given up to fit. */
  readonly stretched: 'none' | 'end' | 'speed';
}

export interface SpeedPrior {
  readonly lowestMps: number;
  readonly highestMps: number;
  /** Theory's speed where the temperature is known. */
  readonly expectedMps: number | null;
}

interface Region {
  readonly speeds: readonly number[];
  readonly ends: readonly number[];
  readonly penalty: number;
  readonly stretched: OrderSearch['stretched'];
}

/** A mark that misses by more counts this much and no more: it may be a blunder. */
export const CAPPED_MISFIT = 9;
/** Marks that miss by more than this on average lie anywhere, not on resonances. */
export const MISFIT_OF_NOISE = 4;
/** A whole set of marks with an impossible end correction is less likely than one blunder among them. */
const STRETCHED_END_PENALTY = 12;
const STRETCHED_SPEED_PENALTY = 14;
/** Each resonance that must have been passed over. */
const SKIPPED_ORDER_PENALTY = 0.3;
const MOST_ROWS = 40;
const MOST_CANDIDATES = 40;
/** Points worse than the best by this much can't change a share in its fourth digit. */
const FURTHEST_MISFIT = 16;

/**
 * Finds all assignments of orders that fit. The plane of speed and end correction is searched, not the assignments:
 * at each point every mark has one nearest order, so the work grows with the marks' number only. What is known of air
 * and tubes decides where to look and nothing else.
 * @param rows  at least one
 * @param mayStretch  whether to look beyond the usual limits where nothing within them fits
 */
export function searchOrders(
  rows: readonly PreparedMark[],
  speed: SpeedPrior,
  end: EndPrior,
  mayStretch = true,
): OrderSearch {
  const sample = spreadSample(rows, MOST_ROWS);
  const plausible: Region = {
    speeds: speedGrid(sample, speed.lowestMps * 0.985, speed.highestMps * 1.015, 400),
    ends: endGrid(sample, end.lowest - endSlack(end) * 3, end.highest + endSlack(end) * 3, 80),
    penalty: 0,
    stretched: 'none',
  };
  const table = { rows, sample, speed, end };
  let best = searchRegion(table, plausible);
  if (mayStretch && best.misfit > STRETCHED_END_PENALTY) {
    const quarterWave = Math.min(
      ...sample.map((row) => (row.halfWavePerSpeedS * speed.lowestMps) / row.endShape / 2),
    );
    const regions: Region[] = [
      {
        speeds: plausible.speeds,
        ends: endGrid(sample, Math.min(-quarterWave, end.lowest), Math.max(quarterWave, end.highest), 160),
        penalty: STRETCHED_END_PENALTY,
        stretched: 'end',
      },
      {
        speeds: speedGrid(sample, 120, 1500, 2500),
        ends: endGrid(sample, end.lowest, end.highest, 24),
        penalty: STRETCHED_SPEED_PENALTY,
        stretched: 'speed',
      },
    ];
    for (const region of regions) {
      const found = searchRegion(table, region);
      // Limits are given up for a place where most marks fit, not for a slightly better heap of misfits.
      const isFit = found.misfit - region.penalty < MISFIT_OF_NOISE * sample.length;
      if (isFit && found.misfit < best.misfit) best = found;
    }
  }
  return best;
}

/** Order whose resonance lies nearest, at least 1. */
export function nearestOrder(row: PreparedMark, speedMps: number, end: number): number {
  const halves = (row.lengthM + row.endShape * end) / (row.halfWavePerSpeedS * speedMps);
  return Math.max(1, Math.round(row.ends === 'closed' ? halves + 0.5 : halves));
}

/**
 * Own variance with what marks of one fork or setup have in common, as if it were independent: good enough to tell
 * orders apart.
 */
export function searchVariance(row: PreparedMark): number {
  return (
    row.variance + row.located.loudestUncertaintyM ** 2 + (row.lengthM * row.relativeForkUncertainty) ** 2
  );
}

/** What is searched, with what is known beforehand. */
interface SearchedTable {
  readonly rows: readonly PreparedMark[];
  /** The rows that are looked at. */
  readonly sample: readonly PreparedMark[];
  readonly speed: SpeedPrior;
  readonly end: EndPrior;
}

function searchRegion({ rows, sample, speed, end }: SearchedTable, region: Region): OrderSearch {
  const { speeds, ends } = region;
  const speedStep = speeds[1] - speeds[0];
  const endStep = ends[1] - ends[0];
  const misfits = new Float64Array(speeds.length * ends.length);
  // The rows' numbers side by side: the innermost loop runs over them a million times.
  const halfWavesPerSpeedS = Float64Array.from(sample, (row) => row.halfWavePerSpeedS);
  const lengthsM = Float64Array.from(sample, (row) => row.lengthM);
  const endShapes = Float64Array.from(sample, (row) => row.endShape);
  const offsets = Float64Array.from(sample, (row) => (row.ends === 'closed' ? 0.5 : 0));
  const setOrders = Float64Array.from(sample, (row) => row.mark.order ?? 0);
  const precisions = Float64Array.from(sample, (row) => {
    // Half a step of the grid must not look like a misfit.
    const coarse = ((row.lengthM / speeds[0]) * speedStep) ** 2 / 12 + (row.endShape * endStep) ** 2 / 12;
    return 0.5 / (searchVariance(row) + coarse);
  });

  let lowest = Infinity;
  for (const [i, speedMps] of speeds.entries()) {
    const speedPart = region.stretched === 'speed' ? 0 : speedMisfit(speedMps, speed);
    for (const [j, endValue] of ends.entries()) {
      let sum = speedPart + region.penalty + (region.stretched === 'end' ? 0 : endMisfit(endValue, end));
      for (let r = 0; r < sample.length && sum < lowest + FURTHEST_MISFIT; r += 1) {
        const halfWaveM = halfWavesPerSpeedS[r] * speedMps;
        const columnM = lengthsM[r] + endShapes[r] * endValue;
        const offset = offsets[r];
        const order =
          setOrders[r] > 0 ? setOrders[r] : Math.max(1, Math.floor(columnM / halfWaveM + offset + 0.5));
        const missM = columnM - (order - offset) * halfWaveM;
        sum += Math.min(missM * missM * precisions[r], CAPPED_MISFIT);
      }
      misfits[i * ends.length + j] = sum;
      if (sum < lowest) lowest = sum;
    }
  }

  const found = new Map<number | string, Accumulated>();
  const orders = sample.map(() => 0);
  let last: Accumulated | undefined;
  for (const [i, speedMps] of speeds.entries()) {
    for (const [j, endValue] of ends.entries()) {
      const misfit = misfits[i * ends.length + j];
      if (misfit > lowest + FURTHEST_MISFIT) continue;
      for (const [r, row] of sample.entries())
        orders[r] = row.mark.order ?? nearestOrder(row, speedMps, endValue);
      // Neighbours on the grid mostly agree, and a comparison is cheaper than a name.
      let known = last?.orders.every((order, r) => order === orders[r]) === true ? last : undefined;
      if (known === undefined) {
        const name = nameOf(orders);
        known = found.get(name);
        if (known === undefined) {
          const skips = SKIPPED_ORDER_PENALTY * skippedOrders(sample, orders);
          known = { orders: [...orders], skips, weight: 0, best: Infinity, speedMps, end: endValue };
          found.set(name, known);
        }
        last = known;
      }
      known.weight += Math.exp(lowest - misfit - known.skips);
      if (misfit < known.best) Object.assign(known, { best: misfit, speedMps, end: endValue });
    }
  }
  const sorted = [...found.values()]
    .sort((one, other) => other.weight - one.weight)
    .slice(0, MOST_CANDIDATES);
  const sum = sorted.reduce((total, { weight }) => total + weight, 0);
  return {
    misfit: lowest,
    marksMisfit: lowest - region.penalty,
    sampled: sample.length,
    stretched: region.stretched,
    candidates: sorted.map((candidate) => ({
      orders:
        sample.length === rows.length
          ? candidate.orders
          : rows.map((row) => row.mark.order ?? nearestOrder(row, candidate.speedMps, candidate.end)),
      share: candidate.weight / sum,
      speedMps: candidate.speedMps,
      end: candidate.end,
    })),
  };
}

interface Accumulated {
  readonly orders: number[];
  readonly skips: number;
  weight: number;
  best: number;
  speedMps: number;
  end: number;
}

/** A name that no other assignment has; a number where it fits into one, which is faster. */
function nameOf(orders: readonly number[]): number | string {
  if (orders.length > 8) return orders.join(' ');
  let name = 0;
  for (const order of orders) {
    if (order > 63) return orders.join(' ');
    name = name * 64 + order;
  }
  return name;
}

function speedMisfit(speedMps: number, prior: SpeedPrior): number {
  const slack = 0.004 * speedMps;
  const outside = Math.max(prior.lowestMps - speedMps, speedMps - prior.highestMps, 0) / slack;
  if (prior.expectedMps === null) return 0.5 * outside * outside;
  // The thermometer may have hung elsewhere: the rest of the range stays possible.
  const off = (speedMps - prior.expectedMps) / (0.008 * speedMps);
  return 0.5 * outside * outside - Math.log(0.9 * Math.exp(-0.5 * off * off) + 0.1);
}

function endMisfit(value: number, prior: EndPrior): number {
  const outside = Math.max(prior.lowest - value, value - prior.highest, 0) / endSlack(prior);
  return 0.5 * outside * outside;
}

function endSlack(prior: EndPrior): number {
  return 0.08 * (prior.highest - prior.lowest);
}

/** Resonances below the highest order of each fork and column type that no mark shows. */
export function skippedOrders(rows: readonly PreparedMark[], orders: readonly number[]): number {
  let skipped = 0;
  for (const series of ordersFound(rows, orders).values()) skipped += Math.max(...series) - series.size;
  return Math.min(skipped, 40);
}

/** Steps fine enough that the sharpest mark moves by less than its uncertainty. */
function speedGrid(rows: readonly PreparedMark[], lowest: number, highest: number, most: number): number[] {
  const finest = Math.min(
    ...rows.map((row) => (0.8 * Math.sqrt(searchVariance(row)) * lowest) / row.lengthM),
  );
  return evenly(lowest, highest, finest, most);
}

function endGrid(rows: readonly PreparedMark[], lowest: number, highest: number, most: number): number[] {
  const finest = Math.min(...rows.map((row) => (0.8 * Math.sqrt(searchVariance(row))) / row.endShape));
  return evenly(lowest, highest, finest, most);
}

function evenly(lowest: number, highest: number, step: number, most: number): number[] {
  const count = Math.min(Math.max(Math.ceil((highest - lowest) / step), 8), most);
  return Array.from({ length: count + 1 }, (_, i) => lowest + ((highest - lowest) * i) / count);
}

/** At most `most` rows, spread over forks, ends and lengths. */
function spreadSample(rows: readonly PreparedMark[], most: number): readonly PreparedMark[] {
  if (rows.length <= most) return rows;
  const sorted = [...rows].sort(
    (one, other) =>
      one.fork - other.fork || one.ends.localeCompare(other.ends) || one.lengthM - other.lengthM,
  );
  return Array.from({ length: most }, (_, i) => sorted[Math.floor((i * rows.length) / most)]);
}
