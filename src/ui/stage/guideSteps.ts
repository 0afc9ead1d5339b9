import type { Experiment } from '../../notebook/experiment.ts';
import type { RecentLevels } from '../../session/hearing/recentLevels.ts';
import { areReadingsNoted } from '../../session/hearing/practiceReadings.ts';
import type { PracticeReadings } from '../../session/hearing/practiceReadings.ts';

export interface GuideStep {
  readonly id: string;
  readonly words: string;
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
      words: 'Press Listen and wait a moment.',
      isDone: isListening || heard || marks.length > 0,
    },
    { id: 'strike', words: 'Strike the fork.', isDone: heard || marks.length > 0 },
    {
      id: 'slide',
      words: 'Drag the handle slowly to the right until the page flashes: the column answered.',
      isDone: marks.length > 0,
    },
    {
      id: 'back',
      words:
        'Go back until the dot lies in the ring (strike again if it fades), read the round window, type the length below.',
      isDone: lengths.length > 0,
    },
    {
      id: 'read',
      words: 'Read the instruments beside the fork’s buttons: press “Note these readings”.',
      isDone: areReadingsNoted(experiment, readings),
    },
    {
      id: 'second',
      words:
        'Slide on, about half a wavelength further, to the second resonance; read and type that one too.',
      isDone: isTwo,
    },
  ];
}

/** Two different resonances are at least this far apart: more than half of half a wavelength, m. */
function leastStepM(forkHz: number): number {
  return Math.min(0.05, 100 / forkHz);
}
