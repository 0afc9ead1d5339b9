import type { Experiment } from '../notebook/experiment.ts';
import type { NextMark } from '../solver/plan.ts';
import type { UnknownFork } from '../solver/unknownFork.ts';
import type { CompareAsk, CompareFindings } from './benchCompare.ts';
import type { BenchOutcome } from './benchOutcome.ts';
import type { MeasuredTube } from './benchTubes.ts';
import type { SolvedGroups } from './solvedGroups.ts';

/** What is asked that may take time: what it is asked about, what of it, and what the answer is. */
export interface BenchQuestions {
  outcome: { about: Experiment; ask: null; answer: BenchOutcome };
  next: { about: Experiment; ask: null; answer: readonly NextMark[] };
  compare: { about: Experiment; ask: CompareAsk; answer: CompareFindings };
  pitch: { about: Experiment; ask: null; answer: UnknownFork | null };
  /** About the records of other experiments, as they are stored. */
  tubes: { about: readonly unknown[]; ask: null; answer: readonly MeasuredTube[] };
}

export type QuestionKind = keyof BenchQuestions;

/** A question of one kind. */
export interface Question<K extends QuestionKind> {
  readonly kind: K;
  readonly about: BenchQuestions[K]['about'];
  readonly ask: BenchQuestions[K]['ask'];
}

/** How a kind of question is answered. @param known  what was solved before, for questions that solve groups of marks */
export type AnswerWay<K extends QuestionKind> = (
  about: BenchQuestions[K]['about'],
  ask: BenchQuestions[K]['ask'],
  known: SolvedGroups,
) => BenchQuestions[K]['answer'];
