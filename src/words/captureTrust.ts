import type { ProcessingStep } from '../capture/processingSteps.ts';
import type { MarkDoubt } from '../marks/mark.ts';
import type { CaptureTrust } from '../session/hearing/captureTrust.ts';
import { words } from './inUse.ts';
import { clauses, listed } from './lists.ts';

/** What rests on the level: marks that are made, or a sweep's result. */
type RestsOnLevel = 'marks' | 'sweep';

/** How far levels can be trusted, why, and what to do. @param rests  what the level becomes */
export function trustWords({ reason }: Pick<CaptureTrust, 'reason'>, rests: RestsOnLevel = 'marks'): string {
  const said = words.captureTrust;
  switch (reason.code) {
    case 'nothing-processes':
      return said.nothingProcesses;
    case 'processing-on':
      return said.processingOn[rests](stepNames(reason.steps));
    case 'check-failed':
      return said.checkFailed[rests];
    case 'check-passed':
      return said.checkPassed;
    case 'sounds-processed':
      return said.soundsProcessed[rests];
    case 'processing-off':
      return said.processingOff;
    case 'processing-unsaid':
      return said.processingUnsaid(stepNames(reason.steps));
  }
}

/** What speaks against a mark; null where nothing does. */
export function doubtWords(doubts: readonly MarkDoubt[] | undefined): string | null {
  if (doubts === undefined || doubts.length === 0) return null;
  const { inDoubt, reasons } = words.markDoubt;
  return inDoubt(clauses(doubts.map((doubt) => reasons[doubt])));
}

function stepNames(steps: readonly ProcessingStep[]): string {
  return listed(steps.map((step) => words.stepNames[step]));
}
