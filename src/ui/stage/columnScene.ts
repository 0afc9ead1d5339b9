import { markLengthM } from '../../marks/mark.ts';
import type { Mark } from '../../marks/mark.ts';
import { isUnsure } from '../../marks/unsureMark.ts';
import { MarkIndex } from '../../marks/markIndex.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import type { Outcome } from '../../session/experiment/outcome.ts';
import type { LevelPoint } from '../../session/hearing/listeningTypes.ts';
import type { Prediction } from '../../session/experiment/predictColumn.ts';
import type { SolvedMark } from '../../solver/solution.ts';

/** One mark as it stands on the rule. */
export interface Stem {
  readonly id: string;
  /** Rule reading. */
  readonly lengthM: number;
  /** Where the fit puts it; null before there is one. */
  readonly fittedLengthM: number | null;
  readonly order: number | null;
  /** null for a mark made by hand. */
  readonly riseDb: number | null;
  readonly isOutlier: boolean;
  readonly isExcluded: boolean;
  /** What was heard there may well be no resonance. */
  readonly isUnsure: boolean;
  /** How often the resonance was passed, >= 1. */
  readonly passes: number;
}

/** Marks of the present fork, place and ends that have their length, shortest first. */
export function stemsOf(experiment: Experiment, outcome: Outcome): readonly Stem[] {
  const { present } = experiment;
  const solved = solvedMarks(outcome, present.placeId);
  const index = new MarkIndex(experiment.marks);
  return experiment.marks
    .filter((mark) => isPresent(mark, present) && mark.lengthM !== null)
    .map((mark) => toStem(mark, solved.get(mark.id) ?? null, 1 + index.repeatsOf(mark).length))
    .sort((one, other) => one.lengthM - other.lengthM);
}

/** What the solver says of a mark; null where it wasn't solved. */
export function solvedMark(outcome: Outcome, mark: Mark): SolvedMark | null {
  const solution = outcome.places.find((one) => one.placeId === mark.placeId)?.solution;
  if (solution === undefined || solution.speedMps === null) return null;
  return solution.marks.find((one) => one.key === mark.id) ?? null;
}

/**
 * Whether nothing else that was measured could show that this mark was misread: then it fits whatever it is.
 * @returns how many more resonances would, at least; 0 where something does
 */
export function untestedBy(outcome: Outcome, mark: Mark): 0 | 1 | 2 {
  const solution = outcome.places.find((one) => one.placeId === mark.placeId)?.solution;
  if (solution === undefined || solution.speedMps === null) return 0;
  if (solution.marks.length === 1) return 2;
  const isUnchecked = solution.warnings.some(
    (warning) => warning.code === 'unchecked' && warning.keys.includes(mark.id),
  );
  return isUnchecked ? 1 : 0;
}

/** The same for all marks of one place, by their ids. */
function solvedMarks(outcome: Outcome, placeId: string): ReadonlyMap<string, SolvedMark> {
  const solution = outcome.places.find((one) => one.placeId === placeId)?.solution;
  if (solution === undefined || solution.speedMps === null) return new Map();
  return new Map(solution.marks.map((mark) => [mark.key, mark]));
}

/** A point of the standing wave, in metres along the column and as a part of its antinode, 0..1. */
export interface WavePoint {
  readonly atM: number;
  readonly size: number;
}

/**
 * Size of the standing wave between the mouth and the far end. Pressure has its node one end correction
 * outside the mouth; displacement is a quarter wave further on.
 * @param columnLengthM  > 0, zero offset taken off
 */
export function standingWave(
  prediction: Pick<Prediction, 'wavelengthM' | 'endCorrectionM'>,
  columnLengthM: number,
  quantity: 'pressure' | 'displacement',
): readonly WavePoint[] {
  const waveNumber = (2 * Math.PI) / prediction.wavelengthM;
  const turn = quantity === 'pressure' ? 0 : Math.PI / 2;
  const count = 160;
  return Array.from({ length: count + 1 }, (_, index) => {
    const atM = (columnLengthM * index) / count;
    return { atM, size: Math.abs(Math.sin(waveNumber * (atM + prediction.endCorrectionM) + turn)) };
  });
}

/** Places in the column where the displacement has its nodes and antinodes, from the mouth on. */
export function nodesAndAntinodes(
  prediction: Pick<Prediction, 'wavelengthM' | 'endCorrectionM'>,
  columnLengthM: number,
): readonly { readonly atM: number; readonly kind: 'node' | 'antinode' }[] {
  const quarterM = prediction.wavelengthM / 4;
  const places: { atM: number; kind: 'node' | 'antinode' }[] = [];
  for (let quarters = 0; quarters < 60; quarters += 1) {
    const atM = quarters * quarterM - prediction.endCorrectionM;
    if (atM > columnLengthM + quarterM * 0.1) break;
    places.push({ atM, kind: quarters % 2 === 0 ? 'antinode' : 'node' });
  }
  return places;
}

/** Level above the fork alone at which the column is drawn full, dB. */
const FULL_SWELL_DB = 12;
/** Points of the trace that tell how loud the fork is by itself: 8 s. */
const ALONE_POINTS = 160;

/**
 * How strongly the column answers now, 0..1: the tone's level above its lower levels of the last seconds, which
 * are those of the fork alone. For the picture only; the flags have their own evidence.
 */
export function answerStrength(points: readonly LevelPoint[]): number {
  const nowDb = points.at(-1)?.toneDb ?? null;
  if (nowDb === null) return 0;
  const heard = points
    .slice(-ALONE_POINTS)
    .flatMap((point) => (point.toneDb === null ? [] : [point.toneDb]))
    .sort((one, other) => one - other);
  const aloneDb = heard[Math.floor(heard.length * 0.25)] ?? nowDb;
  return Math.min(Math.max((nowDb - aloneDb) / FULL_SWELL_DB, 0.06), 1);
}

/** How near this length is to a resonance: 1 on it, ½ a centimetre beside it. For the picture only. */
export function nearness(prediction: Prediction, readingM: number): number {
  const gaps = prediction.expected.map((one) => Math.abs(one.lengthM - readingM));
  const gapM = Math.min(...gaps, Infinity);
  return 1 / (1 + (gapM / 0.01) ** 2);
}

/** The expected place nearest to a length; null where none is expected. */
export function nearestOrder(prediction: Prediction, readingM: number): number | null {
  let best: { order: number; gapM: number } | null = null;
  for (const { order, lengthM } of prediction.expected) {
    const gapM = Math.abs(lengthM - readingM);
    if (best === null || gapM < best.gapM) best = { order, gapM };
  }
  return best?.order ?? null;
}

function toStem(mark: Mark, solved: SolvedMark | null, passes: number): Stem {
  const lengthM = markLengthM(mark) ?? 0;
  return {
    id: mark.id,
    lengthM,
    fittedLengthM: solved === null ? null : lengthM - solved.residualM,
    order: solved?.order ?? mark.order,
    riseDb: mark.evidence?.riseDb ?? null,
    isOutlier: solved?.outlier ?? false,
    isExcluded: mark.excluded,
    isUnsure: isUnsure(mark),
    passes,
  };
}

function isPresent(mark: Mark, present: Experiment['present']): boolean {
  return mark.forkId === present.forkId && mark.placeId === present.placeId && mark.ends === present.ends;
}
