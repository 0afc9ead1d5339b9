import type { Mark, MarkEvidence } from '../../../src/marks/mark.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { newExperiment } from '../../../src/notebook/newExperiment.ts';

export const EXAMPLE_TIME = '2030-03-01T10:00:00.000Z';

/** What was heard of a resonance in practice, without its trace. */
export const EXAMPLE_EVIDENCE: MarkEvidence = {
  source: 'practice',
  timeS: 2.2,
  riseDb: 12,
  aboveRoomDb: 20,
  confidence: 0.9,
  frequencyHz: null,
  frequencyStandardUncertaintyHz: null,
  reason: '',
  trace: null,
};

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
