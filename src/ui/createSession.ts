import { NotebookStore } from '../notebook/notebookStore.ts';
import { TabHold } from '../notebook/tabHold.ts';
import { siteScope } from '../notebook/siteScope.ts';
import { siteStorage } from '../notebook/siteStorage.ts';
import type { AskElsewhere } from '../session/experiment/answers.ts';
import { solveExperiment } from '../session/experiment/solveExperiment.ts';
import { Session } from '../session/session.ts';
import { mendedNote } from '../words/mended.ts';
import { resonanceReason } from '../words/resonances.ts';
import { LateListening } from './lateListening.ts';
import type { AnswersInWorker } from './answers/answersInWorker.ts';

/** The session of this page, joined to the browser's clock, storage and sources of chance. */
export function createSession(): Session {
  const scope = siteScope();
  const { tabMemory, draftPlace } = siteStorage(scope);
  const listening = new LateListening();
  return new Session({
    now: () => new Date().toISOString(),
    newId,
    openStore: (onGone) => NotebookStore.open(scope, onGone),
    createHold: (handlers) => new TabHold(handlers, scope),
    tabMemory,
    draftPlace,
    createListening: (order) => listening.create(order),
    loadListening: () => listening.load(),
    reasonOf: resonanceReason,
    writeMended: mendedNote,
    solve: solveExperiment,
    onFault: (error) => console.error(error),
    answerElsewhere: lateWorker(),
  });
}

/** The worker that answers what takes time; it comes with the first such question. */
function lateWorker(): AskElsewhere {
  let worker: Promise<AnswersInWorker> | null = null;
  return async (question) => {
    worker ??= import('./answers/answersInWorker.ts').then((loaded) => new loaded.AnswersInWorker());
    return (await worker).ask(question);
  };
}

/** 128 random bits; `crypto.randomUUID` is missing on plain http, where practice must still work. */
function newId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(16));
  return [...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('');
}
