import { fitMarks } from './fitMarks.ts';
import type { MarksFit } from './fitMarks.ts';
import { likelyCause, rowsInUse } from './likelyCause.ts';
import type { RowsInUse } from './likelyCause.ts';
import type { OutlierCause } from './outlierCause.ts';
import { oneEndCorrectionM } from './prepareMarks.ts';
import type { Preparation, PreparedMark } from './prepareMarks.ts';
import { nearestOrder } from './searchOrders.ts';
import type { OrderSearch } from './searchOrders.ts';
import type { SolvedMark } from './solution.ts';

/** Confidence that is left where air's or tubes' usual limits had to be given up. */
const STRETCHED_CONFIDENCE = { none: 1, end: 0.8, speed: 0.5 } as const;

/** What a table of marks was found to mean. */
interface JudgedFit {
  readonly preparation: Preparation;
  readonly search: OrderSearch;
  readonly orders: readonly number[];
  readonly fit: MarksFit;
  readonly outliers: readonly boolean[];
}

/** Each mark with its order, how sure that is, what it is off, and why where it is an outlier. */
export function judgeMarks({ preparation, search, orders, fit, outliers }: JudgedFit): SolvedMark[] {
  const { rows } = preparation;
  const everyRow = rows.map(() => true);
  // What each of the next assignments would mean, fitted only where somebody will read it.
  const rivals = search.candidates
    .filter(
      (candidate) => candidate.share > 0.001 && candidate.orders.some((order, i) => order !== orders[i]),
    )
    .slice(0, 6)
    .map((candidate) => ({ ...candidate, fit: fitMarks(preparation, candidate.orders, everyRow) }));

  const inUse = outliers.includes(true) ? rowsInUse(rows, fit.speedMps, fit.end) : null;
  return rows.map((row, i): SolvedMark => {
    const order = orders[i];
    const residualM = fit.residualsM[i];
    const outlier = outliers[i];
    const agreeing = search.candidates.reduce(
      (sum, candidate) => (candidate.orders[i] === order ? sum + candidate.share : sum),
      0,
    );
    // Halfway between two resonances either order is as good.
    const quarterWaveM = (row.halfWavePerSpeedS * fit.speedMps) / 2;
    const between = Math.min(Math.abs(residualM) / quarterWaveM, 1);
    const rival = rivals.find((candidate) => candidate.orders[i] !== order);
    const rivalFit = rival?.fit ?? null;
    return {
      key: row.mark.key,
      order,
      orderConfidence:
        row.mark.order === order
          ? 1
          : Math.min(agreeing, 1) * (1 - 0.5 * between * between) * STRETCHED_CONFIDENCE[search.stretched],
      runnerUp:
        rival === undefined || rivalFit === null
          ? null
          : {
              order: rival.orders[i],
              speedMps: rivalFit.speedMps,
              endCorrectionM: oneEndCorrectionM(row, rivalFit.end),
              share: rival.share,
            },
      residualM,
      outlier,
      cause: outlier && inUse !== null ? causeOf(row, { order, residualM, fit, inUse }) : null,
    };
  });
}

interface RowInFit {
  readonly order: number;
  readonly residualM: number;
  readonly fit: MarksFit;
  readonly inUse: RowsInUse;
}

function causeOf(row: PreparedMark, { order, residualM, fit, inUse }: RowInFit): OutlierCause {
  const { speedMps, end } = fit;
  const nearest = nearestOrder(row, speedMps, end);
  return row.mark.order !== null && nearest !== order
    ? { code: 'set-order', setOrder: order, fittingOrder: nearest }
    : likelyCause({ row, residualM, speedMps, end, inUse });
}
