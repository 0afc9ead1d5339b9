import type { ColumnEnds } from '../marks/mark.ts';
import { prepareMarks } from './prepareMarks.ts';
import { searchOrders } from './searchOrders.ts';
import type { OrderSearch, SpeedPrior } from './searchOrders.ts';
import type { SolverMark, SolverOptions } from './solution.ts';
import type { MistakenUnit } from './solverWarning.ts';

/** Misfit beyond which the other column type and other units are tried. */
const POOR_MISFIT = 8;

/** The column type whose marks would fit well as the other; null where there is none. */
export function betterColumnType(
  marks: readonly SolverMark[],
  options: SolverOptions,
  search: OrderSearch,
  prior: SpeedPrior,
): { readonly notedEnds: ColumnEnds; readonly fittingEnds: ColumnEnds } | null {
  if (search.misfit < POOR_MISFIT) return null;
  let best: ReturnType<typeof betterColumnType> = null;
  let lowest = search.misfit - 6;
  for (const [notedEnds, fittingEnds] of [
    ['closed', 'open'],
    ['open', 'closed'],
  ] as const) {
    if (!marks.some(({ ends }) => ends === notedEnds)) continue;
    const flipped = prepareMarks(
      marks.map((mark) => (mark.ends === notedEnds ? { ...mark, ends: fittingEnds, order: null } : mark)),
      options,
    );
    const { misfit } = searchOrders(flipped.rows, prior, flipped.end, false);
    if (misfit < lowest) {
      best = { notedEnds, fittingEnds };
      lowest = misfit;
    }
  }
  return best;
}

/** What people write without saying so, over the metre that was understood. */
export const MISTAKEN_UNITS = [
  { unit: 'millimetres', factor: 0.1 },
  { unit: 'inches', factor: 2.54 },
  { unit: 'centimetres', factor: 10 },
] as const satisfies readonly { readonly unit: MistakenUnit; readonly factor: number }[];

/** The unit in which the lengths' numbers fit, all of them and from the first resonances on; null where there is none. */
export function betterLengthUnit(
  marks: readonly SolverMark[],
  options: SolverOptions,
  search: OrderSearch,
  prior: SpeedPrior,
): MistakenUnit | null {
  if (search.misfit < POOR_MISFIT || marks.length < 2) return null;
  for (const { unit, factor } of MISTAKEN_UNITS) {
    const scaled = marks.map((mark) => ({
      ...mark,
      lengthM: mark.lengthM * factor,
      otherLengthM: mark.otherLengthM === null ? null : mark.otherLengthM * factor,
      order: null,
    }));
    const { rows, end } = prepareMarks(scaled, options);
    const found = searchOrders(rows, prior, end, false);
    const lowest = Math.min(...(found.candidates.at(0)?.orders ?? [Infinity]));
    if (found.misfit < Math.min(POOR_MISFIT, search.misfit - 6) && lowest <= 2) return unit;
  }
  return null;
}
