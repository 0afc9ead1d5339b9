import type { Session } from '../../session/session.ts';
import { saveExperiment } from '../saveFile.ts';
import type { AskElement } from './askElement.ts';
import './askElement.ts';
import { laterWords } from '../../words/inUse.ts';
import { storageFaultWords } from '../../words/storageFaults.ts';
import { titleWords } from '../../words/titles.ts';

/** Asks whether the open experiment may go, though it is in this tab's memory only. */
export function askToLeave(asking: AskElement, { experiment, saveState }: Session): Promise<boolean> {
  return asking.ask({
    heading: laterWords.leaving.heading(titleWords(experiment)),
    message:
      saveState.kind === 'refused'
        ? laterWords.leaving.messageWith(storageFaultWords(saveState.why))
        : laterWords.leaving.message,
    no: laterWords.leaving.no,
    first: { words: laterWords.leaving.saveFirst, act: () => saveExperiment(experiment) },
    yes: laterWords.leaving.yes,
  });
}
