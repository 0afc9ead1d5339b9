import { LONGEST } from '../limits/longest.ts';
import { LARGEST_RECORD_BYTES } from '../limits/sizes.ts';
import { columnFault, columnFaultWords } from './columnFault.ts';
import type { Experiment, Fork, Place } from './experiment.ts';
import type { Mark } from '../marks/mark.ts';
import { readExperiment } from './readExperiment.ts';
import type { ReadItems } from './readExperiment.ts';
import { recordBytes } from './recordBytes.ts';
import type { KnownBytes } from './recordBytes.ts';

/** What each list is called, and what makes room in it. */
const LISTS = [
  { list: 'marks', name: 'marks', instead: 'Begin another experiment for more (Records).' },
  {
    list: 'deletedMarks',
    name: 'deleted marks',
    instead: 'Bring some back, or begin another experiment (Records).',
  },
  { list: 'forks', name: 'forks', instead: 'Remove one that has no marks.' },
  { list: 'places', name: 'places', instead: 'Remove one that has no marks.' },
] as const;

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
   * Why this state can't be kept and what to do, in whole sentences; null where it can.
   * @param before  the state that it follows: what is too large already may still be changed, only not grow
   */
  whyNot(experiment: Experiment, before: Experiment): string | null {
    for (const { list, name, instead } of LISTS) {
      if (experiment[list].length > LONGEST.list)
        return `An experiment holds ${LONGEST.list} ${name} at most. ${instead}`;
    }
    const fault = columnFault(experiment);
    if (fault !== null) return columnFaultWords(experiment, fault);
    const reading = readExperiment(experiment, this.readItems);
    if (reading.kind === 'faults') return `That can’t be kept: ${reading.faults.at(0) ?? ''}`;
    const bytes = recordBytes(experiment, this.bytes);
    if (bytes <= LARGEST_RECORD_BYTES || bytes <= recordBytes(before, this.bytes)) return null;
    return `The experiment would have ${(bytes / 1e6).toFixed(1)} MB; its file may have ${LARGEST_RECORD_BYTES / 1e6} MB. Begin another one for more (Records), or shorten its notes.`;
  }
}
