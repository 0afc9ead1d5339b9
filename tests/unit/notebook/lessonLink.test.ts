import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LessonPlan } from '../../../src/notebook/lessonLink.ts';
import { lessonExperiment, lessonHash, planOf, readLessonHash } from '../../../src/notebook/lessonLink.ts';
import { EXAMPLE_TIME, exampleExperiment, exampleMark } from './exampleExperiment.ts';

const plan: LessonPlan = {
  forksHz: [512, 341.3],
  ends: 'open',
  diameterM: 0.035,
  otherDiameterM: 0.033,
  mouth: 'thick-rim',
  stopper: 'dipped',
  travelM: 1.2,
  lesson: {
    task: 'Three marks with each fork – why?',
    hideExpected: true,
    hideTheory: false,
    hideTruth: true,
  },
};

describe('lesson links', () => {
  it('carry a lesson there and back, any letters included', () => {
    expect(readLessonHash(lessonHash(plan))).toEqual(plan);
  });

  it('carry no marks, names or notes of the experiment that they were made from', () => {
    const experiment = {
      ...exampleExperiment([exampleMark('a', { lengthM: 0.158, note: 'secret' })]),
      title: 'secret',
      note: 'secret',
    };
    const hash = lessonHash(planOf(experiment, plan.lesson));
    const text = Buffer.from(hash.slice('#lesson='.length), 'base64url').toString();
    expect(text).not.toContain('secret');
    expect(text).not.toContain('0.158');
  });

  it('that were made before there were mouths say nothing of it', () => {
    // What is undefined isn't written.
    const before = {
      ...plan,
      otherDiameterM: undefined,
      mouth: undefined,
      stopper: undefined,
    } as unknown as LessonPlan;
    expect(readLessonHash(lessonHash(before))).toEqual({
      ...plan,
      otherDiameterM: null,
      mouth: null,
      stopper: 'piston',
    });
    expect(readLessonHash(lessonHash({ ...plan, mouth: 'wide' as 'flange' }))).toHaveProperty('fault');
    expect(readLessonHash(lessonHash({ ...plan, stopper: 'cork' as 'piston' }))).toHaveProperty('fault');
  });

  it('set up a fresh experiment', () => {
    const experiment = lessonExperiment(plan, 'new', EXAMPLE_TIME);
    expect(experiment.forks.map((fork) => fork.nominalHz)).toEqual([512, 341.3]);
    expect(experiment.present.ends).toBe('open');
    expect(experiment.tube).toMatchObject({
      diameterM: 0.035,
      otherDiameterM: 0.033,
      mouth: 'thick-rim',
      stopper: 'dipped',
    });
    expect(experiment.lesson).toEqual(plan.lesson);
    expect(experiment.marks).toEqual([]);
  });

  it('are no lesson where the address holds none, and say so where they are damaged', () => {
    expect(readLessonHash('#measure')).toBeNull();
    expect(readLessonHash('')).toBeNull();
    expect(readLessonHash('#lesson=%%%')).toHaveProperty('fault');
    expect(readLessonHash(lessonHash(plan).slice(0, -9))).toHaveProperty('fault');
    expect(readLessonHash(lessonHash({ ...plan, forksHz: [5] }))).toHaveProperty('fault');
    fc.assert(
      fc.property(fc.string(), (text) => {
        const read = readLessonHash(`#lesson=${text}`);
        expect(read === null || typeof read === 'object').toBe(true);
      }),
    );
  });
});
