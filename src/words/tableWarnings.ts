import { OPTIONAL_COLUMNS } from '../marks/markColumns.ts';
import { listed } from './lists.ts';
import { short } from './numbers.ts';

/** What the reader of a solved table should know beside what the solver says of its marks. */
export type TableWarning =
  /** All places are one fit; `isReferred` where their speeds were brought to one temperature for it. */
  | { readonly code: 'several-places'; readonly placeCount: number; readonly isReferred: boolean }
  | { readonly code: 'columns-not-read'; readonly columns: readonly string[] }
  | (RowsWithout & {
      readonly code: 'length-uncertainty-assumed';
      readonly byEarM: number;
      readonly byCentreM: number;
    })
  /** The lengths are taken to be loudest places; `isTubeUnknown`: with the width that a usual tube's resonances have. */
  | (RowsWithout & { readonly code: 'located-by-assumed'; readonly isTubeUnknown: boolean })
  /** The tolerance is a part of the fork's frequency. */
  | (RowsWithout & { readonly code: 'fork-tolerance-assumed'; readonly assumedTolerance: number });

interface RowsWithout {
  readonly rowsWithout: number;
  readonly rowCount: number;
}

/** Of columns that were passed over so many are named. */
const MOST_COLUMNS = 8;

/** What `solve` says of it: the command line's own, in English. */
export function tableWarningWords(warning: TableWarning): string {
  switch (warning.code) {
    case 'several-places': {
      const referred = warning.isReferred ? ', referred to their mean temperature by theory' : '';
      return `The speed is one fit to all ${warning.placeCount} places together${referred}. Each place’s own is under "places".`;
    }
    case 'columns-not-read':
      return `Not read: ${warning.columns.slice(0, MOST_COLUMNS).join(', ')}. Optional columns are ${listed(OPTIONAL_COLUMNS)}.`;
    case 'length-uncertainty-assumed':
      return `No length_uncertainty_mm in ${warning.rowsWithout} of ${warning.rowCount} rows: ${short(warning.byEarM * 1000)} mm is taken for a length found by ear, ${short(warning.byCentreM * 1000)} mm where the page showed the centre. With three lengths or more, their scatter corrects it. Give it to do better.`;
    case 'located-by-assumed': {
      const usual = warning.isTubeUnknown ? ', as wide as in a usual tube' : '';
      return `No located_by in ${warning.rowsWithout} of ${warning.rowCount} rows: these lengths are taken as loudest places, which lie beside the resonances’ centres${usual}, all to one side. Write centre where the page showed the centre.`;
    }
    case 'fork-tolerance-assumed':
      return `No fork_uncertainty_hz in ${warning.rowsWithout} of ${warning.rowCount} rows: the frequency stamped on the fork is taken to be right within ±${short(100 * warning.assumedTolerance)} %. Measure the fork to do better.`;
  }
}
