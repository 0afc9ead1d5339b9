import { describe, expect, it } from 'vitest';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { Answerer } from '../../../../src/session/experiment/answerer.ts';
import { MOST_MARKS_AT_ONCE } from '../../../../src/session/experiment/answers.ts';
import type { AskElsewhere } from '../../../../src/session/experiment/answers.ts';
import type { Questions, Question, QuestionKind } from '../../../../src/session/experiment/questions.ts';
import { solveExperiment } from '../../../../src/session/experiment/solveExperiment.ts';
import { largeExperiment } from '../../../support/largeExperiment.ts';
import { benchInTest } from '../benchInTest.ts';

interface Sent {
  readonly question: Question<QuestionKind>;
  answer(): Promise<void>;
  fail(): Promise<void>;
}

/** A worker whose every answer the test gives when it wants to. */
function slowWorker() {
  const sent: Sent[] = [];
  const answerer = new Answerer();
  const elsewhere = ((question: Question<QuestionKind>) =>
    new Promise((resolve: (value: Questions[QuestionKind]['answer']) => void, reject) => {
      // What goes to a worker is a copy.
      const copy = structuredClone(question);
      sent.push({
        question: copy,
        answer: async () => {
          resolve(structuredClone(answerer.answer(copy)));
          await Promise.resolve();
        },
        fail: async () => {
          reject(new Error('no worker here'));
          await new Promise((done) => setTimeout(done));
        },
      });
    })) as unknown as AskElsewhere;
  return { sent, elsewhere };
}

const large = largeExperiment({ marks: MOST_MARKS_AT_ONCE + 50, places: 3, forks: 2, seed: 1 });
const speeds = (experiment: Experiment): (number | null)[] =>
  solveExperiment(experiment).places.map(({ solution }) => solution.speedMps);

async function benchWith(experiment: Experiment) {
  const worker = slowWorker();
  const session = benchInTest({ answerElsewhere: worker.elsewhere });
  let told = 0;
  session.watch(['answers'], () => (told += 1));
  session.change('add table', () => experiment);
  const shown = (): (number | null)[] => session.outcome.places.map(({ solution }) => solution.speedMps);
  await Promise.resolve();
  return { session, worker, shown, told: () => told };
}

describe('an experiment of a few marks', () => {
  it('is solved on the page, at once', async () => {
    const small = largeExperiment({ marks: 12, places: 2, forks: 1, seed: 2 });
    const { session, worker, shown } = await benchWith(small);
    expect(shown()).toEqual(speeds(small));
    expect(session.isWorkingOut).toBe(false);
    expect(worker.sent).toHaveLength(0);
  });
});

describe('a large experiment', () => {
  it('is solved beside the page: nothing before the first answer, then what the page would have found', async () => {
    const { session, worker, shown, told } = await benchWith(large);
    expect(shown()).toEqual([]);
    expect(session.isWorkingOut).toBe(true);
    expect(worker.sent).toHaveLength(1);
    await worker.sent[0]?.answer();
    expect(told()).toBe(1);
    expect(session.isWorkingOut).toBe(false);
    expect(session.outcome).toEqual(solveExperiment(session.experiment));
  });

  it('sends nothing of traces and notes: no answer depends on them', async () => {
    const trace = { startS: 0, stepS: 0.05, toneDb: [-40], roomDb: [-60] };
    const heard = {
      ...large,
      marks: large.marks.map((mark) => ({
        ...mark,
        note: 'loud',
        evidence: {
          source: 'practice' as const,
          timeS: 1,
          riseDb: 9,
          aboveRoomDb: 20,
          confidence: 1,
          frequencyHz: null,
          frequencyStandardUncertaintyHz: null,
          reason: 'loud, too',
          trace,
        },
      })),
    };
    const { session, worker } = await benchWith(heard);
    expect(session.isWorkingOut).toBe(true);
    expect(JSON.stringify(worker.sent[0]?.question)).not.toMatch(/loud|toneDb/);
    await worker.sent[0]?.answer();
    expect(session.outcome).toEqual(solveExperiment(session.experiment));
  });

  it('keeps the last result while the next is worked out, and asks only for the newest of many changes', async () => {
    const { session, worker, shown } = await benchWith(large);
    expect(session.isWorkingOut).toBe(true);
    await worker.sent[0]?.answer();
    const before = shown();
    for (const lengthM of [0.161, 0.162, 0.163]) {
      session.editMark('mark-1', { lengthM });
      expect(shown()).toEqual(before);
      expect(session.isWorkingOut).toBe(true);
    }
    // The first change is on its way; of the others only the last one follows.
    expect(worker.sent).toHaveLength(2);
    await worker.sent[1]?.answer();
    expect(session.isWorkingOut).toBe(true);
    expect(shown()).not.toEqual(before);
    expect(worker.sent).toHaveLength(3);
    await worker.sent[2]?.answer();
    expect(session.isWorkingOut).toBe(false);
    expect(worker.sent).toHaveLength(3);
    expect(shown()).toEqual(speeds(session.experiment));
  });

  it('asks for nothing more where a change was undone before its turn came', async () => {
    const { session, worker, shown } = await benchWith(large);
    expect(session.isWorkingOut).toBe(true);
    await worker.sent[0]?.answer();
    const before = shown();
    session.editMark('mark-1', { lengthM: 0.161 });
    expect(session.isWorkingOut).toBe(true);
    session.undo();
    expect(session.isWorkingOut).toBe(false);
    expect(shown()).toEqual(before);
    // What comes late is about a state that is no more: the answer that is there stands.
    await worker.sent[1]?.answer();
    expect(session.isWorkingOut).toBe(false);
    expect(shown()).toEqual(before);
    expect(worker.sent).toHaveLength(2);
  });

  it('never shows another experiment’s result', async () => {
    const { session, worker, shown } = await benchWith(large);
    expect(session.isWorkingOut).toBe(true);
    await worker.sent[0]?.answer();
    session.change('open file', () => ({ ...large, id: 'another' }));
    expect(shown()).toEqual([]);
    expect(session.isWorkingOut).toBe(true);
  });

  it('is solved on the page where no worker can be had', async () => {
    const { session, worker, shown, told } = await benchWith(large);
    expect(session.isWorkingOut).toBe(true);
    await worker.sent[0]?.fail();
    expect(told()).toBe(1);
    expect(session.isWorkingOut).toBe(false);
    expect(shown()).toEqual(speeds(large));
    session.editMark('mark-1', { lengthM: 0.161 });
    expect(shown()).toEqual(speeds(session.experiment));
    expect(worker.sent).toHaveLength(1);
  });
});
