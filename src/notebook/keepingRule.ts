import { LONGEST } from '../limits/longest.ts';
import { LARGEST_RECORD_BYTES } from '../limits/sizes.ts';
import { columnFault } from './columnFault.ts';
import type { ColumnFault } from './columnFault.ts';
import type { Experiment, Fork, Place } from './experiment.ts';
import type { Mark } from '../marks/mark.ts';
import { readExperiment } from './readExperiment.ts';
import type { ReadItems } from './readExperiment.ts';
import type { RecordFault } from './recordFault.ts';
import { recordBytes } from './recordBytes.ts';
import type { KnownBytes } from './recordBytes.ts';

/** Lists that hold `LONGEST.list` items at most. */
const LISTS = ['marks', 'deletedMarks', 'forks', 'places'] as const;

/** Why a state of an experiment can't be kept. */
export type KeepingFault =
  | { readonly code: 'list-full'; readonly list: (typeof LISTS)[number]; readonly most: number }
  | { readonly code: 'no-column'; readonly fault: ColumnFault }
  /** What a reader of the record would find. */
  | { readonly code: 'unreadable'; readonly fault: RecordFault }
  | { readonly code: 'too-large'; readonly bytes: number; readonly mostBytes: number };

/**
 * Looks at each state of an experiment before it is kept: what couldn't be opened again must not come about. Whatever was
 * found good is not looked at again as long as it stays.
 */
export class KeepingRule {
  private readonly good = new WeakSet<object>();
  private readonly bytes: KnownBytes = new WeakMap();
  /** Read items are the ones that are there: nothing is copied. */
  private readonly readItems: ReadItems = {
    get: (source) => (this.good.has(source) ? (source as Fork | Place | Mark) : undefined),
    set: (source) => void this.good.add(source),
  };

  /**
   * Why this state can't be kept; null where it can.
   * @param before  the state that it follows: what is too large already may still be changed, only not grow
   */
  whyNot(experiment: Experiment, before: Experiment): KeepingFault | null {
    const full = LISTS.find((list) => experiment[list].length > LONGEST.list);
    if (full !== undefined) return { code: 'list-full', list: full, most: LONGEST.list };
    const fault = columnFault(experiment);
    if (fault !== null) return { code: 'no-column', fault };
    const reading = readExperiment(experiment, this.readItems);
    const [unreadable] = reading.kind === 'faults' ? reading.faults : [];
    if (unreadable !== undefined) return { code: 'unreadable', fault: unreadable };
    const bytes = recordBytes(experiment, this.bytes);
    if (bytes <= LARGEST_RECORD_BYTES || bytes <= recordBytes(before, this.bytes)) return null;
    return { code: 'too-large', bytes, mostBytes: LARGEST_RECORD_BYTES };
  }
}
