import { airFromReadings, USUAL_AIR } from '../air/airState.ts';
import type { AirState } from '../air/airState.ts';
import { halfWaves } from '../air/columnResonance.ts';
import {
  END_RATIO_STANDARD_UNCERTAINTY,
  endCorrection,
  HIGHEST_KA,
  LOW_FREQUENCY_END_RATIO,
} from '../air/endCorrection.ts';
import { USUAL_RADIUS_M } from '../air/usualTube.ts';
import { speedOfSound } from '../air/speedOfSound.ts';
import { wallLoss } from '../air/wallLoss.ts';
import type { ColumnEnds } from '../marks/mark.ts';
import { coverageFactor } from '../numeric/studentT.ts';

/** A column of fixed length whose resonance frequencies were heard. */
export interface SweptColumn {
  readonly ends: ColumnEnds;
  /** Zero offset taken off, > 0. */
  readonly lengthM: number;
  readonly lengthStandardUncertaintyM: number;
  /** null where the diameter wasn't given. */
  readonly radiusM: number | null;
  readonly air: AirState | null;
}

export interface SweptResonance {
  readonly frequencyHz: number;
  readonly standardUncertaintyHz: number;
}

export interface SweptOrder extends SweptResonance {
  readonly order: number;
  /** Speed in free air that this resonance alone gives. */
  readonly speedMps: number;
  /** Measured minus fitted frequency, Hz. */
  readonly residualHz: number;
}

export interface SweepSpeed {
  readonly speedMps: number;
  readonly standardUncertaintyMps: number;
  readonly expandedUncertaintyMps: number;
  readonly coverageFactor: number;
  /** Of one open end, from theory: one length can't tell it from the speed. */
  readonly endCorrectionM: number;
  readonly resonances: readonly SweptOrder[];
  /** Frequencies that fit no order of this column. */
  readonly leftOut: readonly SweptResonance[];
  readonly wallsRemoved: boolean;
}

/** Speeds that air can have on a bench, m/s: −15 to 50 °C. */
const SPEEDS_MPS = [322, 362] as const;
/** Further than this from an order's frequency, it is none of the column's: part of the orders' spacing. */
const OFF_ORDER = 0.08;
/** Of an open end where no radius is known. Common practice, no source. */
const UNKNOWN_END_STANDARD_UNCERTAINTY_M = 0.01;

/**
 * Speed of sound from the resonance frequencies of one column: closed f_n = (2n − 1)·v/4(L + e), open f_n = n·v/2(L + 2e).
 * Each frequency gives a speed; their mean weighs them by their own uncertainties, widened by their scatter; the length's
 * and the end correction's uncertainties are common to all and are added after it.
 * @param resonances  any order, at least one
 * @returns null where no frequency fits an order of the column
 * @throws RangeError unless the length and its uncertainty are above 0
 * @see OpenStax University Physics 1, section 17.4 (resonances of tubes); JCGM 100:2008, 5.1.2 and 5.2.2
 * @example
 * const column = { ends: 'closed', lengthM: 0.5, lengthStandardUncertaintyM: 0.001, radiusM: 0.015, air: null };
 * const heard = [168, 504.4].map((frequencyHz) => ({ frequencyHz, standardUncertaintyHz: 0.3 }));
 * sweepSpeed(column, heard)?.resonances.map(({ order }) => order) // → [1, 2]
 */
export function sweepSpeed(column: SweptColumn, resonances: readonly SweptResonance[]): SweepSpeed | null {
  const { lengthM, lengthStandardUncertaintyM } = column;
  if (!(lengthM > 0)) throw new RangeError(`lengthM must be > 0, got ${lengthM}`);
  if (!(lengthStandardUncertaintyM > 0)) {
    throw new RangeError(`lengthStandardUncertaintyM must be > 0, got ${lengthStandardUncertaintyM}`);
  }
  const usable = resonances.filter((one) => one.frequencyHz > 0 && one.standardUncertaintyHz > 0);
  let best: { readonly cost: number; readonly kept: readonly SweptOrder[] } | null = null;
  for (let speedMps = SPEEDS_MPS[0]; speedMps <= SPEEDS_MPS[1]; speedMps += 0.25) {
    const kept = usable.flatMap((one) => orderAt(column, one, speedMps) ?? []);
    const cost = usable.reduce((sum, one) => sum + offOrder(column, one, speedMps), 0);
    if (kept.length > 0 && (best === null || cost < best.cost)) best = { cost, kept };
  }
  if (best === null) return null;
  const { kept } = best;
  const weights = kept.map((one) => (one.frequencyHz / (one.standardUncertaintyHz * one.speedMps)) ** 2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const speedMps = kept.reduce((sum, one, i) => sum + one.speedMps * weights[i], 0) / total;
  const chiSquared = kept.reduce((sum, one, i) => sum + (one.speedMps - speedMps) ** 2 * weights[i], 0);
  const freedom = kept.length - 1;
  const scatter = freedom > 0 ? Math.max(1, Math.sqrt(chiSquared / freedom)) : 1;
  const own = scatter / Math.sqrt(total);
  const { effectiveM, endM, endStandardUncertaintyM } = effective(column, kept[0].frequencyHz);
  const common = (speedMps * Math.hypot(lengthStandardUncertaintyM, endStandardUncertaintyM)) / effectiveM;
  const standardUncertaintyMps = Math.hypot(own, common);
  // Welch and Satterthwaite: only the scatter has few degrees of freedom (JCGM 100:2008, G.4.1).
  const effectiveFreedom = scatter > 1 ? standardUncertaintyMps ** 4 / (own ** 4 / freedom) : 50;
  const factor = coverageFactor(Math.min(effectiveFreedom, 50));
  return {
    speedMps,
    standardUncertaintyMps,
    expandedUncertaintyMps: factor * standardUncertaintyMps,
    coverageFactor: factor,
    endCorrectionM: endM,
    resonances: kept.map((one) => ({
      ...one,
      residualHz: one.frequencyHz * (1 - speedMps / one.speedMps),
    })),
    leftOut: usable.filter((one) => !kept.some((other) => other.frequencyHz === one.frequencyHz)),
    wallsRemoved: column.radiusM !== null,
  };
}

/** Length with the open ends' corrections. */
function effective(column: SweptColumn, frequencyHz: number) {
  const radiusM = column.radiusM ?? USUAL_RADIUS_M;
  const openEnds = column.ends === 'open' ? 2 : 1;
  const roughMps = 343;
  const highestHz = (HIGHEST_KA * roughMps) / (2 * Math.PI * radiusM);
  const end = endCorrection(radiusM, Math.min(frequencyHz, highestHz), roughMps);
  // Both ends of an open tube are alike: their errors are one error, twice.
  const endStandardUncertaintyM =
    openEnds *
    (column.radiusM === null ? UNKNOWN_END_STANDARD_UNCERTAINTY_M : END_RATIO_STANDARD_UNCERTAINTY * radiusM);
  return {
    effectiveM: column.lengthM + openEnds * end.endCorrectionM,
    endM: column.radiusM === null ? LOW_FREQUENCY_END_RATIO.unflanged * radiusM : end.endCorrectionM,
    endStandardUncertaintyM,
  };
}

/** Speed of the wave in free air over that in this tube. */
function freeOverTube(column: SweptColumn, frequencyHz: number): number {
  if (column.radiusM === null) return 1;
  const air = column.air ?? airFromReadings({ temperatureC: USUAL_AIR.temperatureC });
  return (
    1 /
    wallLoss(column.radiusM, frequencyHz, air.temperatureC, speedOfSound(air).speedMps, air.filling)
      .speedRatio
  );
}

/** Half waves in the column at this frequency if sound has this speed, in units of the order's own count. */
function place(column: SweptColumn, one: SweptResonance, speedMps: number) {
  const tubeMps = speedMps / freeOverTube(column, one.frequencyHz);
  const { effectiveM } = effective(column, one.frequencyHz);
  const count = (2 * effectiveM * one.frequencyHz) / tubeMps;
  const order = Math.max(1, Math.round(column.ends === 'closed' ? count + 0.5 : count));
  return { order, off: Math.abs(count - halfWaves(order, column.ends)), effectiveM };
}

/** What a frequency adds to the cost of a speed: its distance from an order, at most that of one which is left out. */
function offOrder(column: SweptColumn, one: SweptResonance, speedMps: number): number {
  const { off } = place(column, one, speedMps);
  return Math.min(off, OFF_ORDER) ** 2;
}

function orderAt(column: SweptColumn, one: SweptResonance, speedMps: number): SweptOrder | null {
  const { order, off, effectiveM } = place(column, one, speedMps);
  if (off > OFF_ORDER) return null;
  const tubeMps = (2 * effectiveM * one.frequencyHz) / halfWaves(order, column.ends);
  return { ...one, order, speedMps: tubeMps * freeOverTube(column, one.frequencyHz), residualHz: 0 };
}
