import type { BenchQuestions, Question, QuestionKind } from '../../session/benchQuestions.ts';

/** A question on its way to the worker, with the number that its answer will bear. */
export interface AskMessage {
  readonly id: number;
  readonly question: Question<QuestionKind>;
}

export type AnswerMessage =
  | { readonly id: number; readonly answer: BenchQuestions[QuestionKind]['answer'] }
  | { readonly id: number; readonly fault: string };
