import { airFromReadings, USUAL_AIR } from '../../air/airState.ts';
import { resonantLengthM } from '../../air/columnResonance.ts';
import {
  END_RATIO_STANDARD_UNCERTAINTY,
  endCorrection,
  HIGHEST_KA,
  LOW_FREQUENCY_END_RATIO,
} from '../../air/endCorrection.ts';
import { endRatioOfMouth } from '../../air/mouth.ts';
import type { MouthShape } from '../../air/mouth.ts';
import { speedOfSound } from '../../air/speedOfSound.ts';
import { USUAL_RADIUS_M } from '../../air/usualTube.ts';
import { wallLoss } from '../../air/wallLoss.ts';
import { LIMITS } from '../../limits/limits.ts';
import type { ColumnEnds } from '../../marks/mark.ts';
import type { Experiment, Place, Tube } from '../../notebook/experiment.ts';
import { forkInUse } from '../../notebook/forkInUse.ts';
import type { Outcome } from './outcome.ts';

/** Where the present fork should resonate in the present column. */
export interface Prediction {
  readonly frequencyHz: number;
  readonly wavelengthM: number;
  /** Of one open end. */
  readonly endCorrectionM: number;
  /** Whether speed and end correction are this experiment's own or theory's. */
  readonly basis: 'measured' | 'theory';
  readonly expected: readonly ExpectedLength[];
}

export interface ExpectedLength {
  readonly order: number;
  /** Rule reading, zero offset included. */
  readonly lengthM: number;
  readonly standardUncertaintyM: number;
}

/** Predicts from the measured speed where there is one, else from theory at the place's air, else at 20 °C. */
export function predictColumn(experiment: Experiment, outcome: Outcome): Prediction {
  const { present, tube, rule } = experiment;
  const fork = experiment.forks.find((candidate) => candidate.id === present.forkId);
  const place = experiment.places.find((candidate) => candidate.id === present.placeId);
  const frequencyHz = fork === undefined ? 512 : forkInUse(fork).hz;
  const radiusM = tube.diameterM === null ? USUAL_RADIUS_M : tube.diameterM / 2;
  const solution = outcome.places.find((one) => one.placeId === present.placeId)?.solution;
  const measured = solution === undefined || solution.speedMps === null ? null : solution;
  const air = airAt(place);
  const theory = speedOfSound(air);
  const speed = measured ?? theory;
  const inTubeMps =
    speed.speedMps *
    wallLoss(radiusM, frequencyHz, air.temperatureC, theory.speedMps, air.filling).speedRatio;
  const correctionM =
    measured?.endCorrectionM ?? expectedEndM(tube, present.ends, frequencyHz, theory.speedMps);
  const endUncertaintyM =
    measured?.endCorrectionStandardUncertaintyM ??
    (tube.diameterM === null ? 0.3 : endRatioUncertainty(tube.mouth)) * radiusM;
  const relative = speed.standardUncertaintyMps / speed.speedMps;
  const expected: ExpectedLength[] = [];
  for (let order = 1; order <= LIMITS.order.highest; order += 1) {
    const columnM = resonantLengthM({
      order,
      ends: present.ends,
      speedMps: inTubeMps,
      frequencyHz,
      endCorrectionM: correctionM,
    });
    const lengthM = columnM + rule.zeroOffsetM;
    if (lengthM > tube.travelM) break;
    if (lengthM <= 0) continue;
    expected.push({ order, lengthM, standardUncertaintyM: Math.hypot(relative * columnM, endUncertaintyM) });
  }
  return {
    frequencyHz,
    wavelengthM: inTubeMps / frequencyHz,
    endCorrectionM: correctionM,
    basis: measured === null ? 'theory' : 'measured',
    expected,
  };
}

/** End correction of a mouth over that of a thin rim; 1 where nobody described it. */
function mouthOver(mouth: MouthShape | null): number {
  return mouth === null ? 1 : endRatioOfMouth(mouth).ratio / LOW_FREQUENCY_END_RATIO.unflanged;
}

function endRatioUncertainty(mouth: MouthShape | null): number {
  return mouth === null ? END_RATIO_STANDARD_UNCERTAINTY : endRatioOfMouth(mouth).standardUncertainty;
}

/** Of one open end before anything was measured: both ends' mean where a telescoping tube is open at both. */
function expectedEndM(
  { diameterM, otherDiameterM, mouth }: Tube,
  ends: ColumnEnds,
  frequencyHz: number,
  speedMps: number,
): number {
  const radiusM = diameterM === null ? USUAL_RADIUS_M : diameterM / 2;
  const otherM = ends === 'closed' || otherDiameterM === null ? radiusM : otherDiameterM / 2;
  const bothM = theoryEndM(radiusM, frequencyHz, speedMps) + theoryEndM(otherM, frequencyHz, speedMps);
  return (mouthOver(mouth) * bothM) / 2;
}

/** Theory's end correction; the bench rule 0.6 a where the tube is too wide for it (common practice). */
function theoryEndM(radiusM: number, frequencyHz: number, speedMps: number): number {
  const isTooWide = (2 * Math.PI * frequencyHz * radiusM) / speedMps > HIGHEST_KA;
  return isTooWide ? 0.6 * radiusM : endCorrection(radiusM, frequencyHz, speedMps).endCorrectionM;
}

function airAt(place: Place | undefined): typeof USUAL_AIR {
  if (place === undefined || place.temperatureC === null) return USUAL_AIR;
  return airFromReadings({ ...place, temperatureC: place.temperatureC });
}
