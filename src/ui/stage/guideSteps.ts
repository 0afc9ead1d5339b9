import type { Experiment } from '../../notebook/experiment.ts';
import { waitingMarks } from '../../notebook/markList.ts';
import { areReadingsNoted } from '../../session/hearing/practiceReadings.ts';
import type { PracticeReadings } from '../../session/hearing/practiceReadings.ts';
import type { PracticeDeeds } from '../../session/hearing/practiceRun.ts';

export interface GuideStep {
  readonly id: 'listen' | 'strike' | 'slide' | 'back' | 'type' | 'rest' | 'read';
  readonly isDone: boolean;
}

/** What the guide says: the step that comes next, or what stands in its way. */
export type GuideSays = GuideStep['id'] | 'slideAgain' | 'faintSliding' | 'faint';

/** End correction and speed need two resonances. */
const WANTED = 2;

/**
 * The fastest way from the door to a speed of sound on the practice column: one slide past all resonances, then back to
 * each and its length typed. What is done follows from what the student's hands did and from the experiment, never from
 * a noise in the room; steps may be taken in any order.
 */
export function guideSteps(
  experiment: Experiment,
  deeds: PracticeDeeds,
  isListening: boolean,
  readings: PracticeReadings,
): readonly GuideStep[] {
  const marks = experiment.marks.filter((mark) => !mark.excluded);
  const isWaiting = waitingMarks(experiment).length > 0;
  const lengths = marks.flatMap((mark) => (mark.lengthM === null ? [] : [mark.lengthM]));
  const isOne = lengths.length > 0;
  const spreadM = isOne ? Math.max(...lengths) - Math.min(...lengths) : 0;
  const fork = experiment.forks.find((candidate) => candidate.id === experiment.present.forkId);
  const isEnough = deeds.resonances < WANTED ? isOne : spreadM > leastStepM(fork?.nominalHz ?? 512);
  return [
    { id: 'listen', isDone: isListening || deeds.isStruck || marks.length > 0 },
    { id: 'strike', isDone: deeds.isStruck || marks.length > 0 },
    { id: 'slide', isDone: isOne || (deeds.hasPassedAll && marks.length >= wanted(deeds)) },
    { id: 'back', isDone: isOne || (marks.length > 0 && deeds.isAtResonance) },
    { id: 'type', isDone: isOne },
    { id: 'rest', isDone: isEnough && !isWaiting },
    { id: 'read', isDone: areReadingsNoted(experiment, readings) },
  ];
}

/**
 * What to say now; null once all is done.
 * @param isWaiting  whether a mark waits for its length
 */
export function guideSays(
  steps: readonly GuideStep[],
  deeds: PracticeDeeds,
  isListening: boolean,
  isWaiting: boolean,
): GuideSays | null {
  const undone = steps.find((step) => !step.isDone)?.id ?? null;
  // Whoever stopped at the first resonance has no next mark to go back to: the others come with the slide.
  const next = undone === 'rest' && !isWaiting ? 'slide' : undone;
  const needsFork = next === 'slide' || next === 'back' || next === 'rest';
  if (next === 'slide' && deeds.hasPassedAll) return 'slideAgain';
  if (!needsFork || !isListening || deeds.isForkFresh) return next;
  return next === 'slide' ? 'faintSliding' : 'faint';
}

const wanted = ({ resonances }: PracticeDeeds): number => Math.max(1, Math.min(WANTED, resonances));

/** Two different resonances are at least this far apart: more than half of half a wavelength, m. */
function leastStepM(forkHz: number): number {
  return Math.min(0.05, 100 / forkHz);
}
