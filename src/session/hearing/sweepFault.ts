import { airFromReadings, USUAL_AIR } from '../../air/airState.ts';
import { HIGHEST_KA } from '../../air/endCorrection.ts';
import { speedOfSound } from '../../air/speedOfSound.ts';
import { USUAL_RADIUS_M } from '../../air/usualTube.ts';
import { wallLoss } from '../../air/wallLoss.ts';
import type { SweepPlan } from '../../capture/sweepPlan.ts';
import { readingFault } from '../../notebook/columnFault.ts';
import type { ReadingFault } from '../../notebook/columnFault.ts';
import type { Experiment } from '../../notebook/experiment.ts';

/** Why a column can't be swept. */
export type SweepFault =
  | { readonly code: 'no-column'; readonly fault: ReadingFault }
  | { readonly code: 'ends-below-start' }
  /** In practice theory of the open end ends at `highestHz` for a tube of this diameter. */
  | {
      readonly code: 'beyond-theory';
      readonly diameterM: number;
      readonly highestHz: number;
      readonly toHz: number;
    };

/**
 * Why this column can't be swept; null where it can.
 * @param lengthM  rule reading, zero offset not yet taken off
 * @param isPractice  whether the column is simulated: theory ends where a tube is wide and the pitch high
 */
export function sweepFault(
  experiment: Experiment,
  lengthM: number,
  plan: SweepPlan,
  isPractice: boolean,
): SweepFault | null {
  const { zeroOffsetM } = experiment.rule;
  const noColumn = readingFault(lengthM, zeroOffsetM);
  if (noColumn !== null) return { code: 'no-column', fault: noColumn };
  if (plan.toHz <= plan.fromHz) return { code: 'ends-below-start' };
  if (!isPractice) return null;
  const radiusM = experiment.tube.diameterM === null ? USUAL_RADIUS_M : experiment.tube.diameterM / 2;
  const place = experiment.places.find((one) => one.id === experiment.present.placeId);
  const air = airFromReadings({ ...place, temperatureC: place?.temperatureC ?? USUAL_AIR.temperatureC });
  const freeMps = speedOfSound(air).speedMps;
  const inTubeMps = freeMps * wallLoss(radiusM, plan.toHz, air.temperatureC, freeMps).speedRatio;
  if ((2 * Math.PI * plan.toHz * radiusM) / inTubeMps <= HIGHEST_KA) return null;
  const highestHz = (HIGHEST_KA * inTubeMps) / (2 * Math.PI * radiusM);
  return { code: 'beyond-theory', diameterM: 2 * radiusM, highestHz, toHz: plan.toHz };
}
