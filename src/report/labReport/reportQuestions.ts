import type { Experiment } from '../../notebook/experiment.ts';
import type { SpokenQuestion } from '../../words/report/questions.ts';
import { solvedPlaces } from '../tables/placeSolution.ts';
import type { PlaceSolution } from '../tables/placeSolution.ts';

const MOST = 3;

/**
 * Three questions that fit these data, those first that the data press for; fewer where there is no result.
 * @param hideTheory  none that gives theory's speed away
 */
export function reportQuestions(
  experiment: Experiment,
  places: readonly PlaceSolution[],
  hideTheory: boolean,
): readonly SpokenQuestion[] {
  const solved = solvedPlaces(places);
  const solution = solved.at(0)?.solution;
  if (solution === undefined) return [];
  const own = new Map(experiment.marks.map((mark) => [mark.id, mark]));
  const outlier = solution.marks.find((mark) => mark.outlier);
  const outlierM = outlier === undefined ? null : (own.get(outlier.key)?.lengthM ?? null);
  const last = solution.marks.reduce((most, mark) => (mark.order > most.order ? mark : most));
  const forkId = own.get(last.key)?.forkId;
  const frequencyHz = experiment.forks.find(({ id }) => id === forkId)?.nominalHz ?? 0;
  const [largest] = [...solution.budget].sort((one, other) => other.contributionMps - one.contributionMps);
  const orders = new Set(solution.marks.map(({ order }) => order));
  const { agreement } = solution;
  const second = solved.at(1)?.solution;
  const questions: (SpokenQuestion | null)[] = [
    outlier === undefined || outlierM === null
      ? null
      : { code: 'outlier', lengthM: outlierM, residualM: outlier.residualM },
    second === undefined ? null : { code: 'two-places', speedsMps: [solution.speedMps, second.speedMps] },
    orders.size === 1 ? { code: 'one-order', frequencyHz } : null,
    solution.theory === null ? { code: 'no-temperature', speedMps: solution.speedMps } : null,
    agreement === null || hideTheory
      ? null
      : {
          code: Math.abs(agreement.normalisedError) > 1 ? 'apart-from-theory' : 'near-theory',
          differenceMps: agreement.differenceMps,
        },
    largest === undefined ? null : { code: 'largest-part', source: largest.source },
    solution.endCorrectionSource === 'measured'
      ? { code: 'end-measured', endM: solution.endCorrectionM, diameterM: experiment.tube.diameterM }
      : null,
    { code: 'next-resonance', frequencyHz, order: last.order + 1 },
  ];
  return questions.filter((question) => question !== null).slice(0, MOST);
}
