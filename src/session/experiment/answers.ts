import type { Experiment } from '../../notebook/experiment.ts';
import type { AnswerWay, Questions, Question, QuestionKind } from './questions.ts';
import { bareExperiment, sizeOf } from './questionSize.ts';
import { SolvedGroups } from './solvedGroups.ts';

/** Answers a question beside the page. Rejects where that isn't possible. */
export type AskElsewhere = <K extends QuestionKind>(question: Question<K>) => Promise<Questions[K]['answer']>;

/** What is known of an answer now. */
export interface Answer<T> {
  /** The last one about the same experiment, if not yet the wanted one; null before the first. */
  readonly value: T | null;
  /** Whether the wanted one is still being worked out. */
  readonly isPending: boolean;
}

export interface AnswersOutside {
  /** null where all is answered on the page. */
  readonly elsewhere: AskElsewhere | null;
  /** Called when an answer came that was waited for. */
  onAnswer(): void;
}

/** One kind of question: the last answer, the question that is on its way, and the newest one. */
interface Line<K extends QuestionKind> {
  answered: { readonly question: Question<K>; readonly value: Questions[K]['answer'] } | null;
  asked: Question<K> | null;
  /** What came between the one on its way and this one is never asked. */
  wanted: Question<K> | null;
}

type Lines = { [K in QuestionKind]?: Line<K> };

/**
 * Answers what may take time. What is small is answered at once; what is large is asked elsewhere, so that the page
 * stays quick, and the last answer stands until the new one comes.
 */
export class Answers {
  private readonly lines: Lines = {};
  private readonly known = new SolvedGroups();
  private elsewhere: AskElsewhere | null;

  constructor(private readonly outside: AnswersOutside) {
    this.elsewhere = outside.elsewhere;
  }

  /** The answer as far as it is known; asks for it where it isn't. @param here  how the page itself answers */
  ask<K extends QuestionKind>(question: Question<K>, here: AnswerWay<K>): Answer<Questions[K]['answer']> {
    const line = this.lineOf(question.kind);
    line.wanted = question;
    const { answered } = line;
    if (answered !== null && isSame(answered.question, question))
      return { value: answered.value, isPending: false };
    if (this.elsewhere === null || sizeOf(question.about) <= MOST_MARKS_AT_ONCE) {
      const value = here(question.about, question.ask, this.known);
      line.answered = { question, value };
      return { value, isPending: false };
    }
    if (line.asked === null) this.send(this.elsewhere, line, question);
    const isAbout = answered !== null && idOf(answered.question) === idOf(question);
    return { value: isAbout ? answered.value : null, isPending: true };
  }

  private lineOf<K extends QuestionKind>(kind: K): Line<K> {
    const lines = this.lines as { [P in K]?: Line<K> };
    return (lines[kind] ??= { answered: null, asked: null, wanted: null });
  }

  private send<K extends QuestionKind>(elsewhere: AskElsewhere, line: Line<K>, question: Question<K>): void {
    line.asked = question;
    const about = bareOf(question.about) as Questions[K]['about'];
    elsewhere({ ...question, about }).then(
      (value) => this.take(line, question, value),
      () => {
        // Whatever the reason: the page can do it itself, only less quickly.
        this.elsewhere = null;
        line.asked = null;
        this.outside.onAnswer();
      },
    );
  }

  private take<K extends QuestionKind>(
    line: Line<K>,
    question: Question<K>,
    value: Questions[K]['answer'],
  ): void {
    line.asked = null;
    // After an undo the wanted answer may be the one that is there.
    if (!isAnswered(line)) {
      line.answered = { question, value };
      const { wanted } = line;
      if (this.elsewhere !== null && wanted !== null && !isAnswered(line))
        this.send(this.elsewhere, line, wanted);
    }
    this.outside.onAnswer();
  }
}

function isAnswered<K extends QuestionKind>({ answered, wanted }: Line<K>): boolean {
  return answered !== null && wanted !== null && isSame(answered.question, wanted);
}

/** Up to so many marks an answer takes a moment only, on a slow machine, too. */
export const MOST_MARKS_AT_ONCE = 150;

function isSame<K extends QuestionKind>(one: Question<K>, other: Question<K>): boolean {
  return one.about === other.about && JSON.stringify(one.ask) === JSON.stringify(other.ask);
}

/** Which experiment a question is about; null for one about records. */
function idOf({ about }: Question<QuestionKind>): string | null {
  return 'id' in about ? about.id : null;
}

/** What is sent: an experiment without what no answer depends on. */
function bareOf(about: Experiment | readonly unknown[]): Experiment | readonly unknown[] {
  return 'id' in about ? bareExperiment(about) : about;
}
