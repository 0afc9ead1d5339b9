import { modelLengthM } from './fitMarks.ts';
import type { PreparedMark } from './prepareMarks.ts';
import { seriesOf } from './ordersFound.ts';
import { nearestOrder, searchVariance } from './searchOrders.ts';
import type { OutlierCause, OutlierExplanation, RuleSlipM } from './outlierCause.ts';

const SLIPS_M: readonly RuleSlipM[] = [0.01, 0.05, 0.1, 0.2, 0.5, 1];

/** Columns hold few more resonances than these. */
const MOST_ORDERS_MEANT = 8;

/** What the rows of one solution say about where a length may belong; worked out once for all rows that are off. */
export interface RowsInUse {
  /** One row for each fork and its frequency. */
  readonly forks: readonly PreparedMark[];
  /** Orders near which lengths were marked, by fork and ends. */
  readonly markedOrders: ReadonlyMap<string, ReadonlySet<number>>;
}

/** @param rows  all rows of one solution */
export function rowsInUse(rows: readonly PreparedMark[], speedMps: number, end: number): RowsInUse {
  const forks = new Map<string, PreparedMark>();
  const markedOrders = new Map<string, Set<number>>();
  for (const row of rows) {
    const forkName = `${row.fork} ${row.mark.frequencyHz} ${row.halfWavePerSpeedS}`;
    if (!forks.has(forkName)) forks.set(forkName, row);
    const orders = markedOrders.get(seriesOf(row)) ?? new Set();
    markedOrders.set(seriesOf(row), orders.add(nearestOrder(row, speedMps, end)));
  }
  return { forks: [...forks.values()], markedOrders };
}

/** A row that is off, with the speed and the end parameter against which it is. */
export interface OffRow {
  readonly row: PreparedMark;
  /** Measured minus fitted. */
  readonly residualM: number;
  readonly speedMps: number;
  readonly end: number;
  /** Of all rows, this one among them. */
  readonly inUse: RowsInUse;
}

/** What may have gone wrong with a mark that doesn't fit. */
export function likelyCause({ row, residualM, speedMps, end, inUse }: OffRow): OutlierCause {
  const toleranceM = 3 * Math.sqrt(searchVariance(row)) + 0.0005;
  const explanations: OutlierExplanation[] = [];
  const slipM = SLIPS_M.find(
    (sizeM) => Math.abs(Math.abs(residualM) - sizeM) < Math.min(toleranceM, 0.3 * sizeM),
  );
  if (slipM !== undefined) explanations.push({ code: 'misread', slipM });
  else {
    const meantM = meantLengthsM(row, speedMps, end, inUse);
    if (meantM.some((lengthM) => swappedDigits(row.lengthM, lengthM, toleranceM)))
      explanations.push({ code: 'swapped-digits' });
    else if (meantM.some((lengthM) => slippedPoint(row.lengthM, lengthM, toleranceM)))
      explanations.push({ code: 'slipped-point' });
  }

  const flipped: PreparedMark = {
    ...row,
    ends: row.ends === 'closed' ? 'open' : 'closed',
    endShape: row.ends === 'closed' ? 2 * row.endShape : row.endShape / 2,
  };
  const flippedOrder = nearestOrder(flipped, speedMps, end);
  if (Math.abs(row.lengthM - modelLengthM(flipped, flippedOrder, speedMps, end)) < toleranceM) {
    explanations.push({ code: 'other-column', ends: flipped.ends, order: flippedOrder });
  }
  const rival = inUse.forks.find((other) => {
    const asOther = { ...row, halfWavePerSpeedS: other.halfWavePerSpeedS };
    const expectedM = modelLengthM(asOther, nearestOrder(asOther, speedMps, end), speedMps, end);
    return other.fork !== row.fork && Math.abs(row.lengthM - expectedM) < toleranceM;
  });
  if (rival !== undefined) {
    const order = nearestOrder({ ...row, halfWavePerSpeedS: rival.halfWavePerSpeedS }, speedMps, end);
    explanations.push({ code: 'other-fork', frequencyHz: rival.mark.frequencyHz, order });
  }
  return { code: 'length-off', residualM, explanations };
}

/** Lengths that may have been meant: a large slip ends near another order's, but hardly from one that was marked too. */
function meantLengthsM(row: PreparedMark, speedMps: number, end: number, inUse: RowsInUse): number[] {
  const marked = inUse.markedOrders.get(seriesOf(row));
  const nearest = nearestOrder(row, speedMps, end);
  return Array.from({ length: MOST_ORDERS_MEANT }, (_, i) => i + 1)
    .filter((order) => order === nearest || marked?.has(order) !== true)
    .map((order) => modelLengthM(row, order, speedMps, end));
}

/** Whether the length is ten times too long or too short. */
function slippedPoint(lengthM: number, fittedM: number, toleranceM: number): boolean {
  return Math.abs(10 * lengthM - fittedM) < toleranceM || Math.abs(lengthM / 10 - fittedM) < toleranceM;
}

/** Whether swapping two neighbouring digits of the length in millimetres gives the fitted one. */
function swappedDigits(lengthM: number, fittedM: number, toleranceM: number): boolean {
  const digits = String(Math.round(lengthM * 1000));
  for (let i = 0; i + 1 < digits.length; i += 1) {
    const swapped = digits.slice(0, i) + digits.charAt(i + 1) + digits.charAt(i) + digits.slice(i + 2);
    if (swapped !== digits && Math.abs(Number(swapped) / 1000 - fittedM) < toleranceM) return true;
  }
  return false;
}
