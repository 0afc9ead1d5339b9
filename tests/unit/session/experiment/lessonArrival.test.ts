import { describe, expect, it } from 'vitest';
import type { Experiment } from '../../../../src/notebook/experiment.ts';
import { planOf } from '../../../../src/notebook/lessonLink.ts';
import type { LessonPlan } from '../../../../src/notebook/lessonLink.ts';
import { newRevealCode, revealDigest } from '../../../../src/notebook/revealCode.ts';
import { openLesson, revealLesson } from '../../../../src/session/experiment/lessonArrival.ts';
import type { Session } from '../../../../src/session/session.ts';
import { EXAMPLE_TIME, exampleExperiment } from '../../notebook/exampleExperiment.ts';
import { MemoryStore } from '../../notebook/memoryStore.ts';
import { benchInTest, told } from '../benchInTest.ts';

const CODE = 'K7QM3F';
const hiding = {
  task: '',
  hideExpected: true,
  hideTheory: true,
  hideTruth: true,
  id: 'a1',
  reveal: revealDigest(CODE),
};
const plan: LessonPlan = planOf(exampleExperiment(), hiding);
const hidden = { hideExpected: true, hideTheory: true, hideTruth: true };
const shown = { hideExpected: false, hideTheory: false, hideTruth: false };

async function begin(
  experiments: readonly Experiment[] = [],
): Promise<{ bench: Session; store: MemoryStore }> {
  const store = new MemoryStore(experiments);
  let count = 0;
  const bench = benchInTest({
    openStore: () => Promise.resolve(store),
    newId: () => `new-${(count += 1)}`,
  });
  await bench.restore();
  return { bench, store };
}

describe('a lesson that is opened again', () => {
  it('is the one that was begun, with its marks, and no second one', async () => {
    const { bench } = await begin();
    await openLesson(bench, { plan, unheardHz: [] }, EXAMPLE_TIME);
    const { id } = bench.experiment;
    bench.addMarkByHand(0.158);
    await openLesson(bench, { plan, unheardHz: [] }, EXAMPLE_TIME);
    expect(bench.experiment.id).toBe(id);
    expect(told(bench)).toMatch(/began this lesson here before/);
    await bench.experiments.openStored('example').catch(() => undefined);
    await bench.experiments.open({ ...exampleExperiment(), id: 'other' }, 'open lesson');
    expect(bench.experiment.id).toBe('other');
    await openLesson(bench, { plan, unheardHz: [] }, EXAMPLE_TIME);
    expect(bench.experiment.id).toBe(id);
    expect(bench.experiment.marks).toHaveLength(1);
  });

  it('another lesson is set up beside it; forks that can’t be heard are named', async () => {
    const { bench } = await begin();
    await openLesson(bench, { plan, unheardHz: [] }, EXAMPLE_TIME);
    const { id } = bench.experiment;
    const other = { ...plan, lesson: { ...hiding, id: 'b2' } };
    await openLesson(bench, { plan: other, unheardHz: [50] }, EXAMPLE_TIME);
    expect(bench.experiment.id).not.toBe(id);
    expect(told(bench)).toMatch(/without these forks: 50 Hz/);
  });
});

describe('the code that shows what a lesson keeps back', () => {
  const lessonOf = (id: string, changedAt: string): Experiment => ({
    ...exampleExperiment(),
    id,
    changedAt,
    lesson: hiding,
  });

  it('shows it in all experiments of the lesson, typed as people type, and in no other', async () => {
    const foreign: Experiment = {
      ...lessonOf('foreign', '2030-01-01'),
      lesson: { ...hiding, reveal: '00000000' },
    };
    const { bench, store } = await begin([
      lessonOf('one', '2030-02-01'),
      lessonOf('two', '2030-01-02'),
      foreign,
    ]);
    await bench.experiments.openStored('one');
    await revealLesson(bench, ' k7qm-3f.', EXAMPLE_TIME);
    expect(bench.experiment.lesson).toMatchObject(shown);
    await bench.keeping.idle();
    expect(store.experiment('one')?.lesson).toMatchObject(shown);
    expect(store.experiment('two')?.lesson).toMatchObject(shown);
    expect(store.experiment('foreign')?.lesson).toMatchObject(hidden);
    expect(told(bench)).toMatch(/^2 experiments of this lesson show everything/);
  });

  it('shows nothing where it is another one', async () => {
    const { bench } = await begin([lessonOf('one', '2030-02-01')]);
    await bench.experiments.openStored('one');
    await revealLesson(bench, 'K7QM3G', EXAMPLE_TIME);
    expect(bench.experiment.lesson).toMatchObject(hidden);
    expect(told(bench)).toMatch(/opens no lesson on this device/);
  });

  it('is six signs that nobody takes for another, all of them used', () => {
    const codes = Array.from({ length: 200 }, (_, i) =>
      newRevealCode([0, 1, 2, 3, 4, 5].map((k) => 997 * i + 31 * k)),
    );
    for (const code of codes) expect(code).toMatch(/^[A-HJKMNP-TV-Z2-9]{6}$/);
    expect(new Set(codes.join('')).size).toBe(30);
    expect(new Set(codes.map(revealDigest)).size).toBe(new Set(codes).size);
  });
});
