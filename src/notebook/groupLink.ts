import { FILLINGS } from '../air/gases.ts';
import { MOUTH_SHAPES } from '../air/mouth.ts';
import { LARGEST_LESSON_BYTES, LONGEST_CODE } from '../limits/sizes.ts';
import { COLUMN_ENDS } from '../marks/mark.ts';
import type { Experiment } from './experiment.ts';
import type { LinkFault } from './lessonLink.ts';
import { listIn, nameAt } from './linkLists.ts';
import { measuredMarks } from './measuredMarks.ts';
import type { MeasuredMark } from './measuredMarks.ts';
import { newExperiment, newFork } from './newExperiment.ts';
import { digest, packed, unpacked, withoutEnding } from './packedText.ts';
import { readExperiment } from './readExperiment.ts';

export const GROUP_PREFIX = '#group=';
export const PART_PREFIX = '#part=';

const VERSION = 1;
/** Nothing can be heard of a mark made by hand. */
const UNHEARD = {
  timeS: 0,
  aboveRoomDb: 0,
  confidence: 0,
  frequencyHz: null,
  frequencyStandardUncertaintyHz: null,
};

/** One of several codes that hold a group's result together. */
export interface GroupPart {
  /** The same for all parts of one result. */
  readonly of: string;
  /** From 1. */
  readonly number: number;
  readonly count: number;
  readonly text: string;
}

/**
 * A group's result as the part of an address after #, inclusive: marks that count, apparatus, the group's name and class.
 * A group without a name goes by its title. No notes, names of places, sound or devices.
 */
export async function groupHash(experiment: Experiment): Promise<string> {
  return GROUP_PREFIX + (await packed(listOf(experiment)));
}

/**
 * The same in pieces that each fit into a code: one where it fits.
 * @param pageLength  characters of the page's address, which stands before each
 */
export function groupParts(hash: string, pageLength: number): readonly string[] {
  if (pageLength + hash.length <= LONGEST_CODE) return [hash];
  const text = hash.slice(GROUP_PREFIX.length);
  const id = digest(new TextEncoder().encode(text)).toString(36);
  const room = Math.max(LONGEST_CODE - pageLength - PART_PREFIX.length - id.length - 8, 100);
  const count = Math.ceil(text.length / room);
  const size = Math.ceil(text.length / count);
  return Array.from(
    { length: count },
    (_, i) => `${PART_PREFIX}${id}-${i + 1}-${count}-${text.slice(i * size, (i + 1) * size)}`,
  );
}

/** Reads one of several codes; null for what is none. */
export function readGroupPart(hash: string): GroupPart | null {
  const found = /^#part=([\da-z]{1,8})-(\d{1,2})-(\d{1,2})-([\w-]+)/.exec(hash);
  if (found === null) return null;
  const [, of = '', number = '', count = '', text = ''] = found;
  const part = { of, number: Number(number), count: Number(count), text };
  return part.number >= 1 && part.number <= part.count ? part : null;
}

/** The whole hash out of all parts of one result, in any order; null while one is missing. */
export function joinedParts(parts: readonly GroupPart[]): string | null {
  const [first] = parts;
  if (first === undefined) return null;
  const texts = Array.from(
    { length: first.count },
    (_, i) => parts.find(({ number }) => number === i + 1)?.text,
  );
  return texts.includes(undefined) ? null : GROUP_PREFIX + texts.join('');
}

/**
 * Reads a group's result out of an address, as an experiment with what a class needs of it.
 * @returns null where the address holds none
 */
export async function readGroupHash(
  hash: string,
): Promise<Experiment | null | { readonly fault: LinkFault }> {
  if (!hash.startsWith(GROUP_PREFIX)) return null;
  const read = await unpacked(withoutEnding(hash.slice(GROUP_PREFIX.length)), LARGEST_LESSON_BYTES);
  if ('fault' in read) return { fault: { code: read.fault } };
  if (!Array.isArray(read.value)) return { fault: { code: 'damaged' } };
  if (typeof read.value[0] === 'number' && read.value[0] > VERSION) return { fault: { code: 'newer' } };
  const reading = readExperiment(recordOf(read.value as readonly unknown[]));
  if (reading.kind === 'experiment') return reading.experiment;
  const [fault] = reading.faults;
  return { fault: fault === undefined ? { code: 'damaged' } : { code: 'record', fault } };
}

/** What an experiment is known by in a class, whether its file came or its code. */
export function shortId(id: string): string {
  return /^~[\da-z]{1,7}$/.test(id) ? id : `~${digest(new TextEncoder().encode(id)).toString(36)}`;
}

function listOf(experiment: Experiment): readonly unknown[] {
  const { id, changedAt, tube, rule, group, className, title } = experiment;
  const marks = measuredMarks(experiment).filter(({ excluded }) => !excluded);
  const forks = experiment.forks.filter((fork) => marks.some(({ forkId }) => forkId === fork.id));
  const places = experiment.places.filter((place) => marks.some(({ placeId }) => placeId === place.id));
  return [
    VERSION,
    shortId(id),
    Math.floor(Date.parse(changedAt) / 1000) || 0,
    group.trim() === '' ? title : group,
    className,
    [
      tube.diameterM,
      tube.otherDiameterM,
      tube.mouth === null ? null : MOUTH_SHAPES.indexOf(tube.mouth),
      tube.travelM,
    ],
    [rule.readingStandardUncertaintyM, rule.zeroOffsetM],
    forks.map(({ nominalHz, standardUncertaintyHz, measuredHz, measuredStandardUncertaintyHz }) =>
      trimmed([nominalHz, standardUncertaintyHz, measuredHz, measuredStandardUncertaintyHz]),
    ),
    places.map((place) =>
      trimmed([
        place.temperatureC,
        place.temperatureStandardUncertaintyC,
        place.humidityPct,
        place.pressurePa,
        place.co2MoleFraction,
        place.filling === 'air' ? null : FILLINGS.indexOf(place.filling),
      ]),
    ),
    marks.map((mark) => listOfMark(mark, forks, places)),
  ];
}

function listOfMark(
  mark: MeasuredMark,
  forks: Experiment['forks'],
  places: Experiment['places'],
): readonly unknown[] {
  const { evidence } = mark;
  return trimmed([
    micrometres(mark.lengthM),
    forks.findIndex(({ id }) => id === mark.forkId),
    places.findIndex(({ id }) => id === mark.placeId),
    COLUMN_ENDS.indexOf(mark.ends),
    mark.locatedBy === 'centre' ? 1 : mark.locatedBy === 'loudest' ? 2 : null,
    evidence === null ? null : Math.round(10 * evidence.riseDb) / 10,
    evidence?.centre === null || evidence?.centre === undefined
      ? null
      : Number(evidence.centre.standardUncertaintyHalfWidths.toPrecision(3)),
    mark.order,
    mark.otherLengthM === null ? null : micrometres(mark.otherLengthM),
  ]);
}

/** As digits that a person typed, without the noise of binary fractions. */
function micrometres(lengthM: number): number {
  return Number((lengthM * 1e6).toPrecision(12));
}

function trimmed(list: readonly unknown[]): readonly unknown[] {
  const end = list.findLastIndex((one) => one !== null);
  return list.slice(0, end + 1);
}

/** What a list holds as a record, unchecked; `readExperiment` checks it. */
function recordOf(list: readonly unknown[]): object {
  const [, id, changedS, group, className, tube, rule, forks, places, marks] = list;
  const changedAt =
    typeof changedS === 'number' && Math.abs(changedS) < 1e11 ? new Date(1000 * changedS).toISOString() : '';
  const base = newExperiment(typeof id === 'string' ? shortId(id) : '', changedAt);
  const [diameterM, otherDiameterM, mouth, travelM] = listIn(tube);
  const [readingStandardUncertaintyM, zeroOffsetM] = listIn(rule);
  const usual = newFork('', 512);
  const ownForks = listIn(forks).map((one, index) => {
    const [nominalHz, standardUncertaintyHz, measuredHz = null, measuredStandardUncertaintyHz = null] =
      listIn(one);
    return {
      ...usual,
      id: `fork-${index + 1}`,
      nominalHz,
      standardUncertaintyHz,
      measuredHz,
      measuredStandardUncertaintyHz,
    };
  });
  const ownPlaces = listIn(places).map((one, index) => {
    const [
      temperatureC = null,
      temperatureStandardUncertaintyC = 0,
      humidityPct = null,
      pressurePa = null,
      co2 = null,
      filling = null,
    ] = listIn(one);
    return {
      id: `place-${index + 1}`,
      name: '',
      temperatureC,
      temperatureStandardUncertaintyC,
      humidityPct,
      pressurePa,
      co2MoleFraction: co2,
      filling: nameAt(FILLINGS, filling ?? 'air'),
    };
  });
  return {
    ...base,
    title: '',
    group,
    className,
    forks: ownForks.length > 0 ? ownForks : base.forks,
    places: ownPlaces.length > 0 ? ownPlaces : base.places,
    tube: {
      ...base.tube,
      diameterM,
      otherDiameterM,
      mouth: nameAt(MOUTH_SHAPES, mouth),
      travelM,
    },
    rule: { readingStandardUncertaintyM, zeroOffsetM },
    marks: listIn(marks).map((one, index) => recordOfMark(listIn(one), index, changedAt)),
  };
}

function recordOfMark(list: readonly unknown[], index: number, createdAt: string): object {
  const [length, fork, place, ends, by = null, riseDb = null, centre = null, order = null, other = null] =
    list;
  const heard = {
    ...UNHEARD,
    source: 'recording',
    riseDb,
    reason: '',
    trace: null,
    ...(centre === null
      ? {}
      : { centre: { timeS: 0, standardUncertaintyHalfWidths: centre, shareRe: 0, shareIm: 0 } }),
  };
  return {
    id: `mark-${index + 1}`,
    createdAt,
    forkId: `fork-${Number(fork) + 1}`,
    placeId: `place-${Number(place) + 1}`,
    ends: nameAt(COLUMN_ENDS, ends),
    lengthM: typeof length === 'number' ? length / 1e6 : length,
    otherLengthM: typeof other === 'number' ? other / 1e6 : other,
    evidence: riseDb === null ? null : heard,
    order,
    excluded: false,
    note: '',
    ...(by === null ? {} : { locatedBy: by === 1 ? 'centre' : 'loudest' }),
  };
}
