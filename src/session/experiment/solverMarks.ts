import { columnM } from '../../marks/columnOfMark.ts';
import { readingTaken } from '../../marks/readingTaken.ts';
import { centreStandardUncertaintyHalfWidths } from '../../marks/usualUncertainties.ts';
import { airOrNone } from '../../air/airState.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { forkInUse } from '../../notebook/forkInUse.ts';
import type { MeasuredMark } from '../../notebook/measuredMarks.ts';
import { copiesOf } from '../../solver/copies.ts';
import type { SolverMark } from '../../solver/solution.ts';

/**
 * Marks as the solver takes them, under their own ids and their places': the zero offset off, the fork's frequency as
 * measured or stamped, the place's air. Marks of one place share its air as one object.
 * @throws RangeError if a mark's fork or place is not in the experiment
 */
export function solverMarks(experiment: Experiment, marks: readonly MeasuredMark[]): SolverMark[] {
  const { rule, tube } = experiment;
  const forks = new Map(experiment.forks.map((fork) => [fork.id, forkInUse(fork)]));
  const airs = new Map(experiment.places.map((place) => [place.id, airOrNone(place)]));
  const copies = copiesOf(marks.map(nameOf));
  return marks.map((mark, i) => {
    const fork = forks.get(mark.forkId);
    const air = airs.get(mark.placeId);
    if (fork === undefined || air === undefined) {
      throw new RangeError(`mark ${mark.id} must have its fork and place in the experiment`);
    }
    return {
      key: mark.id,
      forkKey: mark.forkId,
      frequencyHz: fork.hz,
      frequencyStandardUncertaintyHz: fork.standardUncertaintyHz,
      ends: mark.ends,
      lengthM: columnM(mark.lengthM, rule.zeroOffsetM),
      otherLengthM: mark.otherLengthM === null ? null : columnM(mark.otherLengthM, rule.zeroOffsetM),
      ...readingTaken(rule.readingStandardUncertaintyM, mark.locatedBy ?? null),
      copies: copies[i],
      radiusM: tube.diameterM === null ? null : tube.diameterM / 2,
      // A closed column has one open end only.
      otherRadiusM: mark.ends === 'closed' || tube.otherDiameterM === null ? null : tube.otherDiameterM / 2,
      mouth: tube.mouth,
      air,
      place: mark.placeId,
      order: mark.order,
      ...locationOf(mark),
    };
  });
}

/** What makes a mark the same as another: rows of a table that came in twice. What was heard is one of its own. */
function nameOf({ id, evidence, ...mark }: MeasuredMark): string {
  return evidence === null ? JSON.stringify(mark) : id;
}

/** How its length was found, and how sure that is. */
function locationOf({ locatedBy, evidence }: MeasuredMark) {
  const fitted = evidence?.centre?.standardUncertaintyHalfWidths ?? null;
  return {
    locatedBy: locatedBy ?? 'loudest',
    riseDb: evidence?.riseDb ?? null,
    centreStandardUncertaintyHalfWidths: centreStandardUncertaintyHalfWidths(fitted),
  } as const;
}
