import type { Experiment } from '../notebook/experiment.ts';
import { readKept } from '../notebook/readKept.ts';
import type { TubeEnd } from '../solver/endRatio.ts';
import { placeLabel } from '../report/marksCsv.ts';
import { solveExperiment } from './benchSolve.ts';

/** Calliper or rule across a school tube, standard uncertainty of the radius. Common practice, no source. */
const RADIUS_STANDARD_UNCERTAINTY_M = 0.0002;

/** The end correction that one experiment measured. */
export interface MeasuredTube extends TubeEnd {
  readonly name: string;
}

/** One tube for each place of an experiment that measured its end correction; none where the diameter isn't noted. */
export function measuredTubes(experiment: Experiment): readonly MeasuredTube[] {
  const { diameterM } = experiment.tube;
  if (diameterM === null) return [];
  const places = solveExperiment(experiment).places;
  return places.flatMap(({ placeId, solution }): MeasuredTube[] =>
    solution.speedMps === null || solution.endCorrectionSource !== 'measured'
      ? []
      : [
          {
            name:
              places.length > 1
                ? `${experiment.title}, ${placeLabel(experiment, placeId)}`
                : experiment.title,
            radiusM: diameterM / 2,
            radiusStandardUncertaintyM: RADIUS_STANDARD_UNCERTAINTY_M,
            endCorrectionM: solution.endCorrectionM,
            endCorrectionStandardUncertaintyM: solution.endCorrectionStandardUncertaintyM,
          },
        ],
  );
}

/**
 * Tubes of the open experiment and of all others in the notebook: each tube is an experiment of its own.
 * @param stored  the notebook's list; what can't be read or was put away is passed over
 */
export function notebookTubes(
  open: Experiment,
  stored: readonly { readonly id: string; readonly experiment: unknown; readonly deletedAt: string | null }[],
): readonly MeasuredTube[] {
  const others = stored
    .filter((one) => one.id !== open.id && one.deletedAt === null)
    .flatMap((one) => {
      const reading = readKept(one.experiment);
      return reading.kind === 'experiment' ? measuredTubes(reading.experiment) : [];
    });
  return withDifferentNames([...measuredTubes(open), ...others]);
}

/** Experiments may share a title: theirs are numbered, in the order given. */
function withDifferentNames(tubes: readonly MeasuredTube[]): readonly MeasuredTube[] {
  const seen = new Map<string, number>();
  return tubes.map((tube) => {
    if (tubes.filter(({ name }) => name === tube.name).length === 1) return tube;
    const number = (seen.get(tube.name) ?? 0) + 1;
    seen.set(tube.name, number);
    return { ...tube, name: `${tube.name} ${number}` };
  });
}
