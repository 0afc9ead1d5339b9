import { airFromReadings } from '../air/airState.ts';
import type { AirState } from '../air/airState.ts';
import type { MarkRow } from '../marks/marksTable.ts';
import type { SolverMark } from './solution.ts';

/** Standard uncertainty of a length that states none: a rule read to a millimetre, a resonance found by ear, m. */
export const DEFAULT_LENGTH_UNCERTAINTY_M = 0.0007;
/** A stamped frequency is taken to be within this part of the true one, from memory. */
export const DEFAULT_FORK_TOLERANCE = 0.005;
/** Its relative standard uncertainty: a rectangle, JCGM 100:2008, 4.3.7. */
export const DEFAULT_FORK_UNCERTAINTY = DEFAULT_FORK_TOLERANCE / Math.sqrt(3);

/**
 * Rows of a table as the solver takes them, with what is usual where a cell is empty. Their keys are the rows' numbers.
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,diameter_mm\n512,closed,15.8,30\n512,closed,49.25,30');
 * marksOfRows(rows).map(({ lengthM }) => lengthM) // → [0.158, 0.4925]
 */
export function marksOfRows(rows: readonly MarkRow[]): readonly SolverMark[] {
  // Rows of equal air share one object, so that its speed is worked out once.
  const airs = new Map<string, AirState>();
  const airOf = ({ temperatureC, humidityPct, pressurePa }: MarkRow): AirState | null => {
    if (temperatureC === null) return null;
    const name = `${temperatureC} ${humidityPct} ${pressurePa}`;
    const known = airs.get(name) ?? airFromReadings({ temperatureC, humidityPct, pressurePa });
    airs.set(name, known);
    return known;
  };
  return rows.map((row) => ({
    key: String(row.row),
    forkKey: String(row.forkHz),
    frequencyHz: row.forkHz,
    frequencyStandardUncertaintyHz: row.forkUncertaintyHz ?? row.forkHz * DEFAULT_FORK_UNCERTAINTY,
    ends: row.ends,
    lengthM: row.lengthM,
    otherLengthM: row.otherLengthM,
    lengthStandardUncertaintyM: row.lengthUncertaintyM ?? DEFAULT_LENGTH_UNCERTAINTY_M,
    radiusM: row.diameterM === null ? null : row.diameterM / 2,
    otherRadiusM: null,
    air: airOf(row),
    place: row.place,
    order: row.order,
  }));
}
