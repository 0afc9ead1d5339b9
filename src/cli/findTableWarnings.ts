import type { MarkRow } from '../marks/markRow.ts';
import {
  FOUND_BY_EAR_STANDARD_UNCERTAINTY_M,
  STAMP_TOLERANCE,
  USUAL_LENGTH_STANDARD_UNCERTAINTY_M,
} from '../marks/usualUncertainties.ts';
import type { TableWarning } from '../words/tableWarnings.ts';

/**
 * What the table itself leaves open.
 * @param passedOver  columns that weren't read
 */
export function findTableWarnings(rows: readonly MarkRow[], passedOver: readonly string[]): TableWarning[] {
  const warnings: TableWarning[] = [];
  const placeCount = new Set(rows.map(({ place }) => place)).size;
  if (placeCount > 1) {
    const isReferred = new Set(rows.map(({ temperatureC }) => temperatureC)).size > 1;
    warnings.push({ code: 'several-places', placeCount, isReferred });
  }
  if (passedOver.length > 0) warnings.push({ code: 'columns-not-read', columns: passedOver });
  const rowCount = rows.length;
  const withoutLength = rows.filter(({ lengthUncertaintyM }) => lengthUncertaintyM === null).length;
  if (withoutLength > 0) {
    warnings.push({
      code: 'length-uncertainty-assumed',
      rowsWithout: withoutLength,
      rowCount,
      byEarM: FOUND_BY_EAR_STANDARD_UNCERTAINTY_M,
      byCentreM: USUAL_LENGTH_STANDARD_UNCERTAINTY_M,
    });
  }
  const withoutWay = rows.filter(({ locatedBy }) => locatedBy === null).length;
  if (withoutWay > 0) {
    const isTubeUnknown = rows.every(({ diameterM }) => diameterM === null);
    warnings.push({ code: 'located-by-assumed', rowsWithout: withoutWay, rowCount, isTubeUnknown });
  }
  const withoutFork = rows.filter(({ forkUncertaintyHz }) => forkUncertaintyHz === null).length;
  if (withoutFork > 0) {
    const assumedTolerance = STAMP_TOLERANCE;
    warnings.push({
      code: 'fork-tolerance-assumed',
      rowsWithout: withoutFork,
      rowCount,
      assumedTolerance,
    });
  }
  return warnings;
}
