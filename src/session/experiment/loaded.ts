import type { Experiment } from '../../notebook/experiment.ts';
import type { History } from '../../notebook/history.ts';
import type { RecordFault } from '../../notebook/recordFault.ts';
import type { StorageFault } from '../../notebook/storageFault.ts';

/** What came of looking for a stored experiment. */
export type Loaded =
  | { readonly kind: 'there'; readonly history: History<Experiment>; readonly revision: number }
  | { readonly kind: 'missing' }
  | { readonly kind: 'unreadable'; readonly faults: readonly RecordFault[] }
  | { readonly kind: 'refused'; readonly fault: StorageFault };

/** Why it isn't there to be opened. */
export type NotLoaded = Exclude<Loaded, { readonly kind: 'there' }>;
