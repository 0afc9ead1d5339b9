import type { Experiment, Titled } from '../../notebook/experiment.ts';
import { readRecord } from '../../notebook/readStored.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { measuredEnd } from '../../solver/measuredEnd.ts';
import type { TubeEnd } from '../../solver/endRatio.ts';
import type { Outcome } from './outcome.ts';
import { solveExperiment } from './solveExperiment.ts';

/** Calliper or rule across a school tube, standard uncertainty of the radius. Common practice, no source. */
const RADIUS_STANDARD_UNCERTAINTY_M = 0.0002;

/** The end correction that one experiment measured. */
export interface MeasuredTube extends TubeEnd {
  readonly of: Titled;
  /** Where, in an experiment of several places; null in one of a single place. */
  readonly placeLabel: string | null;
}

/** What the notebook's list says of one experiment, as far as its tube goes. */
export interface ListedExperiment {
  readonly id: string;
  readonly experiment: unknown;
  readonly deletedAt: string | null;
}

/**
 * One tube for each place of an experiment whose marks give the end correction, what is known of mouths left aside; none
 * where the diameter isn't noted.
 */
export function measuredTubes(experiment: Experiment, { places }: Outcome): readonly MeasuredTube[] {
  const { diameterM } = experiment.tube;
  if (diameterM === null) return [];
  const labels = placeLabels(experiment);
  const radiusM = diameterM / 2;
  return places.flatMap(({ placeId, solution }): MeasuredTube[] => {
    const found = solution.speedMps === null ? null : measuredEnd(solution, radiusM);
    return found === null
      ? []
      : [
          {
            of: { title: experiment.title, origin: experiment.origin },
            placeLabel: places.length > 1 ? (labels.get(placeId) ?? '') : null,
            radiusM,
            radiusStandardUncertaintyM: RADIUS_STANDARD_UNCERTAINTY_M,
            endCorrectionM: found.endCorrectionM,
            endCorrectionStandardUncertaintyM: found.standardUncertaintyM,
          },
        ];
  });
}

/** The notebook's experiments beside the open one, as they are stored; what was put away is passed over. */
export function otherRecords(openId: string, listed: readonly ListedExperiment[]): readonly unknown[] {
  return listed
    .filter((one) => one.id !== openId && one.deletedAt === null)
    .map(({ experiment }) => experiment);
}

/** Tubes of stored experiments: each tube is an experiment of its own. What can't be read is passed over. */
export function tubesOfRecords(records: readonly unknown[]): readonly MeasuredTube[] {
  return records.flatMap((record) => {
    // Its note isn't looked at.
    const reading = readRecord(record, () => '');
    if (reading.kind !== 'experiment') return [];
    return measuredTubes(reading.experiment, solveExperiment(reading.experiment));
  });
}
