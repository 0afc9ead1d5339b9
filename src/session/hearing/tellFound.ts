import type { Experiment } from '../../notebook/experiment.ts';
import { waitingMarks } from '../../notebook/markList.ts';
import type { Tell } from '../notice.ts';
import type { ListeningReport } from './listeningTypes.ts';

interface TellFoundOutside {
  experiment(): Experiment;
  tell: Tell;
}

/** Says what was found in a whole recording, once its marks are made. */
export function tellFound(report: ListeningReport, outside: TellFoundOutside): void {
  const resonances = report.resonances.length;
  const maybes = report.resonances.filter(({ certainty }) => certainty === 'maybe').length;
  if (resonances === 0) {
    outside.tell('problem', { code: 'none-in-recording', report });
    return;
  }
  const waits = (now: Experiment): boolean => waitingMarks(now).length > 0;
  const isWaiting = waits(outside.experiment());
  outside.tell(
    'info',
    { code: 'found-in-recording', resonances, maybes, isWaiting },
    isWaiting ? waits : undefined,
  );
}
