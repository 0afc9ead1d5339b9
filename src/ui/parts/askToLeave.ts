import type { Session } from '../../session/session.ts';
import { leavingWords } from '../../words/page/leaving.ts';
import { saveExperiment } from '../saveFile.ts';
import type { AskElement } from './askElement.ts';
import './askElement.ts';
import { storageFaultWords } from '../../words/storageFaults.ts';
import { titleWords } from '../../words/titles.ts';

/** Asks whether the open experiment may go, though it is in this tab's memory only. */
export function askToLeave(asking: AskElement, { experiment, saveState }: Session): Promise<boolean> {
  return asking.ask({
    heading: leavingWords.heading(titleWords(experiment)),
    message: leavingWords.message(saveState.kind === 'refused' ? storageFaultWords(saveState.why) : null),
    no: leavingWords.no,
    first: { words: leavingWords.saveFirst, act: () => saveExperiment(experiment) },
    yes: leavingWords.yes,
  });
}
