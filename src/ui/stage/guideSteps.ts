import type { Experiment } from '../../notebook/experiment.ts';
import type { RecentLevels } from '../../session/hearing/recentLevels.ts';
import { areReadingsNoted } from '../../session/hearing/practiceReadings.ts';
import type { PracticeReadings } from '../../session/hearing/practiceReadings.ts';

export interface GuideStep {
  readonly id: 'listen' | 'strike' | 'slide' | 'back' | 'read' | 'second';
  readonly isDone: boolean;
}

/**
 * The way from the door to a speed of sound on the practice column, step by step. What is done follows from the
 * experiment itself, so steps may be taken in any order.
 */
export function guideSteps(
  experiment: Experiment,
  trace: RecentLevels,
  isListening: boolean,
  readings: PracticeReadings,
): readonly GuideStep[] {
  const heard = trace.soundings.length > 0;
  const marks = experiment.marks.filter((mark) => !mark.excluded);
  const lengths = marks.flatMap((mark) => (mark.lengthM === null ? [] : [mark.lengthM]));
  const spreadM = lengths.length === 0 ? 0 : Math.max(...lengths) - Math.min(...lengths);
  const fork = experiment.forks.find((candidate) => candidate.id === experiment.present.forkId);
  const isTwo = spreadM > leastStepM(fork?.nominalHz ?? 512);
  return [
    {
      id: 'listen',
      isDone: isListening || heard || marks.length > 0,
    },
    { id: 'strike', isDone: heard || marks.length > 0 },
    {
      id: 'slide',
      isDone: marks.length > 0,
    },
    {
      id: 'back',
      isDone: lengths.length > 0,
    },
    {
      id: 'read',
      isDone: areReadingsNoted(experiment, readings),
    },
    {
      id: 'second',
      isDone: isTwo,
    },
  ];
}

/** Two different resonances are at least this far apart: more than half of half a wavelength, m. */
function leastStepM(forkHz: number): number {
  return Math.min(0.05, 100 / forkHz);
}
