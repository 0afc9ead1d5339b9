import { FILLINGS } from '../air/gases.ts';
import { MOUTH_SHAPES } from '../air/mouth.ts';
import { isWithin, LIMITS } from '../limits/limits.ts';
import { LONGEST } from '../limits/longest.ts';
import { LARGEST_LESSON_BYTES, LONGEST_LINK } from '../limits/sizes.ts';
import { COLUMN_ENDS } from '../marks/mark.ts';
import type { ColumnEnds } from '../marks/mark.ts';
import { STOPPERS } from './experiment.ts';
import type { Experiment, Fork, Lesson, Place, Rule, Tube } from './experiment.ts';
import { listIn, nameAt } from './linkLists.ts';
import { newExperiment, newFork } from './newExperiment.ts';
import { bytesOf, digest, packed, unpacked, withoutEnding } from './packedText.ts';
import { readExperiment } from './readExperiment.ts';
import type { RecordFault } from './recordFault.ts';

/** What a lesson link carries: apparatus and rules, nothing about a person. */
export interface LessonPlan {
  readonly forks: readonly Fork[];
  readonly places: readonly Place[];
  readonly tube: Tube;
  readonly rule: Rule;
  readonly ends: ColumnEnds;
  readonly lesson: Lesson;
}

/** A lesson as an address brought it, and the pitches of forks that the bench can't hear: these are left out. */
export interface ArrivedLesson {
  readonly plan: LessonPlan;
  readonly unheardHz: readonly number[];
}

export const LESSON_PREFIX = '#lesson=';

const VERSION = 1;

/** Why a lesson can't be handed out as a link. */
export type LessonFault =
  | { readonly code: 'task-too-long'; readonly length: number; readonly longest: number }
  | { readonly code: 'link-too-long'; readonly longest: number; readonly forks: number };

/**
 * Why an address can't be used: what arrived is not whole, has a fault, was made by a newer bench, or needs a newer
 * browser.
 */
export type LinkFault =
  | { readonly code: 'damaged' | 'newer' | 'no-inflate' }
  | { readonly code: 'record'; readonly fault: RecordFault };

/** The part of the address after #, inclusive, that sets the lesson up. */
export async function lessonHash(plan: LessonPlan): Promise<string> {
  return LESSON_PREFIX + (await packed(listOf(plan)));
}

/** Why a lesson can't be handed out under this hash; null where it can. */
export function lessonFault(plan: LessonPlan, hash: string): LessonFault | null {
  const { length } = plan.lesson.task;
  if (length > LONGEST.task) return { code: 'task-too-long', length, longest: LONGEST.task };
  if (hash.length <= LONGEST_LINK) return null;
  return { code: 'link-too-long', longest: LONGEST_LINK, forks: plan.forks.length };
}

/**
 * Reads a lesson out of an address.
 * @returns null where the address holds no lesson
 */
export async function readLessonHash(
  hash: string,
): Promise<ArrivedLesson | null | { readonly fault: LinkFault }> {
  if (!hash.startsWith(LESSON_PREFIX)) return null;
  if (hash.length > LONGEST_LINK) return { fault: { code: 'damaged' } };
  const text = withoutEnding(hash.slice(LESSON_PREFIX.length));
  const id = digest(new TextEncoder().encode(text)).toString(16).padStart(8, '0');
  // Links made before were JSON in base64, which begins with a brace.
  const older = text.startsWith('ey') ? readOlder(text) : null;
  if (older !== null) return planOfFields(older, id);
  const read = await unpacked(text, LARGEST_LESSON_BYTES);
  if ('fault' in read) return { fault: { code: read.fault } };
  if (Array.isArray(read.value) && typeof read.value[0] === 'number' && read.value[0] > VERSION)
    return { fault: { code: 'newer' } };
  return planOfFields(fieldsOf(read.value), id);
}

/** A new experiment set up as the lesson says. */
export function lessonExperiment(plan: LessonPlan, id: string, createdAt: string): Experiment {
  const base = newExperiment(id, createdAt);
  const { forks, places, tube, rule, ends, lesson } = plan;
  return {
    ...base,
    origin: { ...base.origin, kind: 'lesson' },
    forks,
    places,
    tube,
    rule,
    present: { forkId: forks[0]?.id ?? '', placeId: places[0]?.id ?? '', ends },
    lesson,
  };
}

/** The open experiment's apparatus as a lesson. */
export function planOf(experiment: Experiment, lesson: Lesson): LessonPlan {
  const { forks, places, tube, rule, present } = experiment;
  return { forks, places, tube, rule, ends: present.ends, lesson };
}

/** The plan as a list: names would be longer than what they name. */
function listOf({ forks, places, tube, rule, ends, lesson }: LessonPlan): readonly unknown[] {
  const { task, hideExpected, hideTheory, hideTruth, reveal, language } = lesson;
  return [
    VERSION,
    forks.map((fork) => shortFork(fork)),
    places.map((place) => [
      place.name,
      place.temperatureC,
      place.temperatureStandardUncertaintyC,
      place.humidityPct,
      place.pressurePa,
      place.co2MoleFraction,
      FILLINGS.indexOf(place.filling),
    ]),
    [
      tube.diameterM,
      tube.otherDiameterM,
      tube.mouth === null ? null : MOUTH_SHAPES.indexOf(tube.mouth),
      tube.travelM,
      STOPPERS.indexOf(tube.stopper),
    ],
    [rule.readingStandardUncertaintyM, rule.zeroOffsetM],
    COLUMN_ENDS.indexOf(ends),
    (hideExpected ? 1 : 0) + (hideTheory ? 2 : 0) + (hideTruth ? 4 : 0),
    task,
    reveal ?? null,
    language ?? null,
  ];
}

/** The stamp alone where all else is as usual. */
function shortFork(fork: Fork): unknown {
  const usual = newFork(fork.id, fork.nominalHz);
  const isUsual = fork.measuredHz === null && fork.standardUncertaintyHz === usual.standardUncertaintyHz;
  return isUsual
    ? fork.nominalHz
    : [fork.nominalHz, fork.standardUncertaintyHz, fork.measuredHz, fork.measuredStandardUncertaintyHz];
}

/** What a list holds, by names and unchecked; `planOfFields` checks it. */
function fieldsOf(value: unknown): Fields {
  const [, forks, places, tube, rule, ends, hidden, task, reveal, language] = listIn(value);
  const [diameterM, otherDiameterM, mouth, travelM, stopper] = listIn(tube);
  const [readingStandardUncertaintyM, zeroOffsetM] = listIn(rule);
  const flags = typeof hidden === 'number' ? hidden : 0;
  return {
    forks: listIn(forks).map((one) => {
      const [nominalHz, standardUncertaintyHz, measuredHz, measuredStandardUncertaintyHz] = listIn(one);
      return typeof one === 'number'
        ? newFork('', one)
        : { nominalHz, standardUncertaintyHz, measuredHz, measuredStandardUncertaintyHz };
    }),
    places: listIn(places).map((one) => {
      const [name, temperatureC, uncertaintyC, humidityPct, pressurePa, co2MoleFraction, filling] =
        listIn(one);
      return {
        name,
        temperatureC,
        temperatureStandardUncertaintyC: uncertaintyC,
        humidityPct,
        pressurePa,
        co2MoleFraction,
        filling: nameAt(FILLINGS, filling),
      };
    }),
    tube: {
      diameterM,
      otherDiameterM,
      mouth: nameAt(MOUTH_SHAPES, mouth),
      stopper: nameAt(STOPPERS, stopper),
      travelM,
    },
    rule: { readingStandardUncertaintyM, zeroOffsetM },
    ends: nameAt(COLUMN_ENDS, ends),
    lesson: {
      task,
      hideExpected: (flags & 1) !== 0,
      hideTheory: (flags & 2) !== 0,
      hideTruth: (flags & 4) !== 0,
      ...(typeof reveal === 'string' ? { reveal } : {}),
      ...(typeof language === 'string' ? { language } : {}),
    },
  };
}

interface Fields {
  readonly forks: readonly object[];
  readonly places: readonly object[];
  readonly tube: object;
  readonly rule: object;
  readonly ends: unknown;
  readonly lesson: unknown;
}

/** What a link of before holds; null for what is none. */
function readOlder(text: string): Fields | null {
  try {
    const value = JSON.parse(new TextDecoder().decode(bytesOf(text) ?? new Uint8Array())) as Record<
      string,
      unknown
    >;
    const base = newExperiment('', '');
    return {
      forks: listIn(value['forksHz']).map((hz) => newFork('', Number(hz))),
      places: base.places,
      tube: {
        diameterM: value['diameterM'],
        otherDiameterM: value['otherDiameterM'] ?? null,
        mouth: value['mouth'] ?? null,
        stopper: 'piston',
        travelM: value['travelM'],
      },
      rule: base.rule,
      ends: value['ends'],
      lesson: value['lesson'],
    };
  } catch {
    return null;
  }
}

/** Checks what arrived as the experiment that it sets up: one reader knows all limits. */
function planOfFields(fields: Fields, id: string): ArrivedLesson | { readonly fault: LinkFault } {
  const pitchOf = (fork: object): unknown => ('nominalHz' in fork ? fork.nominalHz : undefined);
  const isUnheard = (fork: object): boolean => {
    const hz = pitchOf(fork);
    return typeof hz === 'number' && hz > 0 && !isWithin(LIMITS.stampedHz, hz);
  };
  const heard = fields.forks.filter((fork) => !isUnheard(fork));
  const unheardHz = fields.forks.filter(isUnheard).map((fork) => Number(pitchOf(fork)));
  const base = newExperiment('lesson', '');
  // A lesson of which no fork can be heard has the usual one.
  const forks = (heard.length === 0 && unheardHz.length > 0 ? base.forks : heard).map((fork, index) => ({
    ...fork,
    id: `fork-${index + 1}`,
  }));
  const lesson =
    typeof fields.lesson === 'object' && fields.lesson !== null ? { ...fields.lesson, id } : fields.lesson;
  const reading = readExperiment({
    ...base,
    forks,
    places: fields.places.map((place, index) => ({ ...place, id: `place-${index + 1}` })),
    tube: fields.tube,
    rule: fields.rule,
    present: { forkId: 'fork-1', placeId: 'place-1', ends: fields.ends },
    lesson: lesson ?? null,
  });
  if (reading.kind === 'experiment' && reading.experiment.lesson !== undefined) {
    const { experiment } = reading;
    return { plan: planOf(experiment, reading.experiment.lesson), unheardHz };
  }
  const fault =
    reading.kind === 'faults' ? reading.faults.find(({ code }) => code !== 'dangling') : undefined;
  return { fault: fault === undefined ? { code: 'damaged' } : { code: 'record', fault } };
}
