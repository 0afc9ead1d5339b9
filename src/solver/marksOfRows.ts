import { airOrNone } from '../air/airState.ts';
import type { AirState } from '../air/airState.ts';
import type { MarkRow } from '../marks/markRow.ts';
import { readingTaken } from '../marks/readingTaken.ts';
import {
  centreStandardUncertaintyHalfWidths,
  stampStandardUncertaintyHz,
} from '../marks/usualUncertainties.ts';
import { alikeForks } from './alikeForks.ts';
import type { NamedFork } from './alikeForks.ts';
import { copiesOf } from './copies.ts';
import type { SolverMark } from './solution.ts';

/**
 * Rows of a table as the solver takes them, with what is usual where a cell is empty. Their keys are the rows' numbers.
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,diameter_mm\n512,closed,15.8,30\n512,closed,49.25,30');
 * marksOfRows(rows).map(({ lengthM }) => lengthM) // → [0.158, 0.4925]
 */
export function marksOfRows(rows: readonly MarkRow[]): readonly SolverMark[] {
  // Rows of equal air share one object, so that its speed is worked out once.
  const airs = new Map<string, AirState | null>();
  const airOf = (row: MarkRow): AirState | null => {
    const { temperatureC, humidityPct, pressurePa, co2MoleFraction } = row;
    const readings = {
      filling: row.filling ?? 'air',
      temperatureC,
      temperatureStandardUncertaintyC: row.temperatureUncertaintyC,
      humidityPct,
      pressurePa,
      co2MoleFraction,
    };
    const name = JSON.stringify(readings);
    const known = airs.get(name);
    if (known !== undefined) return known;
    const air = airOrNone(readings);
    airs.set(name, air);
    return air;
  };
  const forks = rows.map(({ forkHz, forkUncertaintyHz }) => ({
    frequencyHz: forkHz,
    standardUncertaintyHz: forkUncertaintyHz ?? stampStandardUncertaintyHz(forkHz),
  }));
  const forkKeys = forkKeysOf(rows, forks);
  const copies = copiesOf(rows.map((row) => JSON.stringify({ ...row, row: 0 })));
  return rows.map((row, i) => ({
    key: String(row.row),
    forkKey: forkKeys[i],
    frequencyHz: row.forkHz,
    frequencyStandardUncertaintyHz: forks[i].standardUncertaintyHz,
    copies: copies[i],
    ends: row.ends,
    lengthM: row.lengthM,
    otherLengthM: row.otherLengthM,
    ...readingTaken(row.lengthUncertaintyM, row.locatedBy),
    radiusM: row.diameterM === null ? null : row.diameterM / 2,
    // A closed column has one open end only.
    otherRadiusM: row.ends === 'closed' || row.otherDiameterM === null ? null : row.otherDiameterM / 2,
    mouth: row.mouth,
    air: airOf(row),
    place: row.place,
    order: row.order,
    locatedBy: row.locatedBy ?? 'loudest',
    riseDb: row.riseDb,
    centreStandardUncertaintyHalfWidths: centreStandardUncertaintyHalfWidths(
      row.centreStandardUncertaintyHalfWidths,
    ),
  }));
}

/** Which rows are of one fork: those of one name; those without a name by their frequencies. */
function forkKeysOf(rows: readonly MarkRow[], forks: readonly NamedFork[]): readonly string[] {
  const alike = alikeForks(forks.filter((_, i) => rows[i].forkId === ''));
  let unnamed = 0;
  return rows.map(({ forkId }) => {
    // No frequency begins so.
    if (forkId !== '') return `named ${forkId}`;
    unnamed += 1;
    return alike[unnamed - 1];
  });
}
