import type { Mark } from '../../../src/marks/mark.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { newExperiment } from '../../../src/notebook/newExperiment.ts';

export const EXAMPLE_TIME = '2030-03-01T10:00:00.000Z';

/** A mark of the example's fork and place; `change` says what differs. */
export function exampleMark(id: string, change: Partial<Mark> = {}): Mark {
  return {
    id,
    createdAt: EXAMPLE_TIME,
    forkId: 'fork-1',
    placeId: 'place-1',
    ends: 'closed',
    lengthM: null,
    otherLengthM: null,
    evidence: null,
    order: null,
    excluded: false,
    note: '',
    ...change,
  };
}

/** A 512 Hz fork over a closed column, with these marks. */
export function exampleExperiment(marks: readonly Mark[] = []): Experiment {
  return { ...newExperiment('example', EXAMPLE_TIME), marks };
}
