import { compareGroups } from './comparedGroups.ts';
import { nextMarksHere } from './nextMarks.ts';
import type { AnswerWay, Questions, Question, QuestionKind } from './questions.ts';
import { solveExperiment } from './solveExperiment.ts';
import { tubesOfRecords } from './measuredTubes.ts';
import { frequencyFromSpeed } from './turnRound.ts';
import { SolvedGroups } from './solvedGroups.ts';

const WAYS: { readonly [K in QuestionKind]: AnswerWay<K> } = {
  outcome: (experiment, _ask, known) => solveExperiment(experiment, known),
  next: (experiment, _ask, known) => nextMarksHere(experiment, known),
  compare: compareGroups,
  forkFrequency: frequencyFromSpeed,
  tubes: tubesOfRecords,
};

/** Answers questions of every kind, beside the page. What was solved for one is remembered for the next. */
export class Answerer {
  private readonly known = new SolvedGroups();

  answer<K extends QuestionKind>({ kind, about, ask }: Question<K>): Questions[K]['answer'] {
    return WAYS[kind](about, ask, this.known);
  }
}
