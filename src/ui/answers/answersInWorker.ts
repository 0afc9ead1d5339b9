import { trustedAddress } from '../../offline/trustedAddress.ts';
import type { Questions, Question, QuestionKind } from '../../session/experiment/questions.ts';
import type { AnswerMessage, AskMessage } from './answerMessages.ts';
import workerUrl from './answerWorker.ts?worker&url';

interface Waiting {
  readonly resolve: (answer: unknown) => void;
  readonly reject: (reason: Error) => void;
}

/** Questions to a worker of the page, which is started with the first one and kept. */
export class AnswersInWorker {
  private readonly waiting = new Map<number, Waiting>();
  private readonly worker: Worker;
  private count = 0;

  /** @throws where the browser lets no worker start */
  constructor() {
    this.worker = new Worker(trustedAddress('bench-answers', workerUrl), { type: 'module' });
    this.worker.onmessage = ({ data }: MessageEvent<AnswerMessage>) => this.take(data);
    this.worker.onerror = () => this.fail();
    this.worker.onmessageerror = () => this.fail();
  }

  /** Rejects where the worker fails. */
  ask<K extends QuestionKind>(question: Question<K>): Promise<Questions[K]['answer']> {
    const id = (this.count += 1);
    return new Promise((resolve, reject) => {
      this.waiting.set(id, { resolve: resolve as Waiting['resolve'], reject });
      const message: AskMessage = { id, question };
      this.worker.postMessage(message);
    });
  }

  private take(message: AnswerMessage): void {
    const waiting = this.waiting.get(message.id);
    this.waiting.delete(message.id);
    if ('fault' in message) waiting?.reject(new Error(message.fault));
    else waiting?.resolve(message.answer);
  }

  private fail(): void {
    for (const { reject } of this.waiting.values()) reject(new Error('answerWorker.ts has failed'));
    this.waiting.clear();
  }
}
