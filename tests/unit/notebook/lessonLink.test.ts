import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fork } from '../../../src/notebook/experiment.ts';
import type { LessonPlan } from '../../../src/notebook/lessonLink.ts';
import {
  lessonExperiment,
  lessonFault,
  lessonHash,
  planOf,
  readLessonHash,
} from '../../../src/notebook/lessonLink.ts';
import { newFork } from '../../../src/notebook/newExperiment.ts';
import { EXAMPLE_TIME, exampleExperiment, exampleMark } from './exampleExperiment.ts';

const measured: Fork = {
  ...newFork('fork-2', 341.3),
  standardUncertaintyHz: 0.7,
  measuredHz: 341.12,
  measuredStandardUncertaintyHz: 0.02,
};
const plan: LessonPlan = {
  forks: [newFork('fork-1', 512), measured],
  places: [
    {
      id: 'place-1',
      name: 'Cold store – unten',
      temperatureC: 4.5,
      temperatureStandardUncertaintyC: 0.3,
      humidityPct: null,
      pressurePa: 98_000,
      co2MoleFraction: null,
      filling: 'carbon-dioxide',
    },
  ],
  tube: { diameterM: 0.035, otherDiameterM: 0.033, mouth: 'thick-rim', stopper: 'dipped', travelM: 1.2 },
  rule: { readingStandardUncertaintyM: 0.0007, zeroOffsetM: 0.012 },
  ends: 'open',
  lesson: {
    task: 'Three marks with each fork – why?',
    hideExpected: true,
    hideTheory: false,
    hideTruth: true,
    reveal: '0a55e1b7',
    language: 'de',
  },
};

const arrives = async (hash: string): Promise<LessonPlan> => {
  const arrived = await readLessonHash(hash);
  if (arrived === null || 'fault' in arrived) throw new Error(JSON.stringify(arrived));
  return arrived.plan;
};

/** As links were until there were places in them: JSON in base64, written down as the bench of that time made it. */
const OLDER =
  'eyJmb3Jrc0h6IjpbNTEyLDUwXSwiZW5kcyI6ImNsb3NlZCIsImRpYW1ldGVyTSI6MC4wMzUsInRyYXZlbE0iOjEsImxlc3NvbiI6eyJ0YXNrIjoiRmluZCB0d28uIiwiaGlkZUV4cGVjdGVkIjp0cnVlLCJoaWRlVGhlb3J5Ijp0cnVlLCJoaWRlVHJ1dGgiOmZhbHNlfX0';

describe('lesson links', () => {
  it('carry forks, places, tube, rule, column and lesson there and back, any letters included', async () => {
    const { lesson, ...apparatus } = await arrives(await lessonHash(plan));
    expect({ ...apparatus, lesson }).toEqual({ ...plan, lesson: { ...plan.lesson, id: lesson.id } });
    // The same link has the same id, another lesson another.
    expect((await arrives(await lessonHash(plan))).lesson.id).toBe(lesson.id);
    const other = { ...plan, lesson: { ...plan.lesson, task: 'Two.' } };
    expect((await arrives(await lessonHash(other))).lesson.id).not.toBe(lesson.id);
  });

  it('are shorter than the same as JSON in base64, as they were before', async () => {
    const usual: LessonPlan = {
      ...plan,
      forks: [512, 480, 440].map((hz, index) => newFork(`fork-${index + 1}`, hz)),
      lesson: {
        ...plan.lesson,
        task: 'Find the first three resonances of each fork. Read each length twice, once from either side. Note the temperature at the beginning and at the end.',
      },
    };
    const before = Buffer.from(
      JSON.stringify({ forksHz: [512, 480, 440], ends: 'open', ...usual.tube, lesson: usual.lesson }),
    ).toString('base64url');
    const hash = await lessonHash(usual);
    expect(hash.length).toBeLessThan(0.8 * before.length);
    expect(hash).toMatch(/^#lesson=[\w-]+$/);
  });

  it('are read where a sentence or a chat program put something behind them', async () => {
    const hash = await lessonHash(plan);
    for (const ending of ['.', ')', '].', '>', '”', '%29', '%E2%80%9D.', ' ', '\n']) {
      expect(await arrives(hash + ending), ending).toMatchObject({ lesson: { task: plan.lesson.task } });
    }
  });

  it('carry no marks, names or notes of the experiment that they were made from', async () => {
    const experiment = {
      ...exampleExperiment([exampleMark('a', { lengthM: 0.158, note: 'secret' })]),
      title: 'secret',
      note: 'secret',
      group: 'secret',
    };
    const arrived = await arrives(await lessonHash(planOf(experiment, plan.lesson)));
    expect(JSON.stringify(arrived)).not.toMatch(/secret|0\.158/);
  });

  it('of before open as well, and a fork that can’t be heard is left out and named', async () => {
    const arrived = await readLessonHash(`#lesson=${OLDER}`);
    expect(arrived).toMatchObject({
      plan: {
        forks: [{ id: 'fork-1', nominalHz: 512 }],
        tube: { diameterM: 0.035, otherDiameterM: null, mouth: null, travelM: 1 },
        lesson: { task: 'Find two.', hideExpected: true, hideTheory: true, hideTruth: false },
      },
      unheardHz: [50],
    });
  });

  it('with nothing but a fork that can’t be heard open with the usual one', async () => {
    const hash = await lessonHash({ ...plan, forks: [newFork('fork-1', 50)] });
    expect(await readLessonHash(hash)).toMatchObject({
      plan: { forks: [{ nominalHz: 512 }] },
      unheardHz: [50],
    });
  });

  it('set up a fresh experiment', () => {
    const experiment = lessonExperiment(plan, 'new', EXAMPLE_TIME);
    const { forks, places, tube, rule, lesson } = plan;
    expect(experiment).toMatchObject({ forks, places, tube, rule, lesson, marks: [] });
    expect(experiment.present).toEqual({ forkId: 'fork-1', placeId: 'place-1', ends: 'open' });
  });

  it('are no lesson where the address holds none, and say so where they are damaged or newer', async () => {
    expect(await readLessonHash('#measure')).toBeNull();
    expect(await readLessonHash('')).toBeNull();
    const hash = await lessonHash(plan);
    for (const broken of ['#lesson=', '#lesson=%%%', hash.slice(0, -9), `${hash}x`, hash.replace('=2', '=1')])
      expect(await readLessonHash(broken), broken).toEqual({ fault: { code: 'damaged' } });
    expect(await readLessonHash(hash.replace('=2', '=3'))).toEqual({ fault: { code: 'newer' } });
    const wide = { ...plan, tube: { ...plan.tube, diameterM: 5 } };
    expect(await readLessonHash(await lessonHash(wide))).toMatchObject({ fault: { code: 'record' } });
    await fc.assert(
      fc.asyncProperty(fc.string(), async (text) => {
        const read = await readLessonHash(`#lesson=${text}`);
        expect(read === null || typeof read === 'object').toBe(true);
      }),
    );
  });

  it('are plain where the browser has no compression, and say which browser reads a compressed one', async () => {
    const compressed = await lessonHash(plan);
    const { CompressionStream, DecompressionStream } = globalThis;
    try {
      Object.assign(globalThis, { CompressionStream: undefined, DecompressionStream: undefined });
      const plain = await lessonHash(plan);
      expect(plain).toMatch(/^#lesson=1/);
      expect(await arrives(plain)).toMatchObject({ forks: plan.forks });
      expect(await readLessonHash(compressed)).toEqual({ fault: { code: 'no-inflate' } });
    } finally {
      Object.assign(globalThis, { CompressionStream, DecompressionStream });
    }
  });

  it('too long ones are refused with the reason', async () => {
    expect(lessonFault(plan, await lessonHash(plan))).toBeNull();
    const long = { ...plan, lesson: { ...plan.lesson, task: 'x'.repeat(2001) } };
    expect(lessonFault(long, '')).toMatchObject({ code: 'task-too-long' });
    expect(lessonFault(plan, 'x'.repeat(32_001))).toMatchObject({ code: 'link-too-long', forks: 2 });
  });
});
