import type { Questions, Question, QuestionKind } from '../../session/experiment/questions.ts';

/** A question on its way to the worker, with the number that its answer will bear. */
export interface AskMessage {
  readonly id: number;
  readonly question: Question<QuestionKind>;
}

export type AnswerMessage =
  | { readonly id: number; readonly answer: Questions[QuestionKind]['answer'] }
  | { readonly id: number; readonly fault: string };
