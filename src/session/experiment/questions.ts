import type { Experiment } from '../../notebook/experiment.ts';
import type { NextMark } from '../../solver/plan.ts';
import type { UnknownFork } from '../../solver/unknownFork.ts';
import type { CompareAsk, CompareFindings } from './comparedGroups.ts';
import type { Outcome } from './outcome.ts';
import type { MeasuredTube } from './measuredTubes.ts';
import type { SolvedGroups } from './solvedGroups.ts';

/** What is asked that may take time: what it is asked about, what of it, and what the answer is. */
export interface Questions {
  outcome: { about: Experiment; ask: null; answer: Outcome };
  next: { about: Experiment; ask: null; answer: readonly NextMark[] };
  compare: { about: Experiment; ask: CompareAsk; answer: CompareFindings };
  forkFrequency: { about: Experiment; ask: null; answer: UnknownFork | null };
  /** About the records of other experiments, as they are stored. */
  tubes: { about: readonly unknown[]; ask: null; answer: readonly MeasuredTube[] };
}

export type QuestionKind = keyof Questions;

/** A question of one kind. */
export interface Question<K extends QuestionKind> {
  readonly kind: K;
  readonly about: Questions[K]['about'];
  readonly ask: Questions[K]['ask'];
}

/** How a kind of question is answered. @param known  what was solved before, for questions that solve groups of marks */
export type AnswerWay<K extends QuestionKind> = (
  about: Questions[K]['about'],
  ask: Questions[K]['ask'],
  known: SolvedGroups,
) => Questions[K]['answer'];
