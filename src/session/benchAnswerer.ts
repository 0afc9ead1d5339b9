import { compareGroups } from './benchCompare.ts';
import { nextMarksHere } from './benchNext.ts';
import type { AnswerWay, BenchQuestions, Question, QuestionKind } from './benchQuestions.ts';
import { solveExperiment } from './benchSolve.ts';
import { tubesOfRecords } from './benchTubes.ts';
import { pitchFromSpeed } from './benchTurnRound.ts';
import { SolvedGroups } from './solvedGroups.ts';

const WAYS: { readonly [K in QuestionKind]: AnswerWay<K> } = {
  outcome: (experiment, _ask, known) => solveExperiment(experiment, known),
  next: (experiment, _ask, known) => nextMarksHere(experiment, known),
  compare: compareGroups,
  pitch: pitchFromSpeed,
  tubes: tubesOfRecords,
};

/** Answers questions of every kind, beside the page. What was solved for one is remembered for the next. */
export class BenchAnswerer {
  private readonly known = new SolvedGroups();

  answer<K extends QuestionKind>({ kind, about, ask }: Question<K>): BenchQuestions[K]['answer'] {
    return WAYS[kind](about, ask, this.known);
  }
}
