import { halfWaves } from '../../air/columnResonance.ts';
import { UNKNOWN_END_M } from '../../air/mouth.ts';
import { columnM } from '../../marks/columnOfMark.ts';
import type { Experiment } from '../../notebook/experiment.ts';

/** Speeds that air can have on a bench, m/s: −15 to 50 °C. Whatever the day's is, the range tells nothing of it. */
const SPEEDS_MPS = [322, 362] as const;
/** Small loudspeakers play nothing below. Common practice, no source. */
const LOWEST_PLAYED_HZ = 150;
/** So much of a resonance's frequency lies beside it in the range: its flanks belong to it. */
const MARGIN = 0.08;
/** Ends of a range are whole multiples, Hz. */
const STEP_HZ = 20;

/** From where to where a tone rises. */
export interface SweepRange {
  readonly fromHz: number;
  readonly toHz: number;
}

/**
 * A range that holds the two lowest resonances of a column that a loudspeaker plays, in any air.
 * @param lengthM  rule reading, zero offset not yet taken off
 * @returns null where the zero offset leaves no column
 */
export function sweepRange({ present, rule }: Experiment, lengthM: number): SweepRange | null {
  const columnLengthM = columnM(lengthM, rule.zeroOffsetM);
  if (!(columnLengthM > 0)) return null;
  const openEnds = present.ends === 'open' ? 2 : 1;
  const acousticM = columnLengthM + openEnds * UNKNOWN_END_M.expected;
  const [slowest, fastest] = SPEEDS_MPS;
  const resonanceHz = (order: number, speedMps: number): number =>
    (halfWaves(order, present.ends) * speedMps) / (2 * acousticM);
  let order = 1;
  while (resonanceHz(order, slowest) < LOWEST_PLAYED_HZ) order += 1;
  const down = (hz: number): number => Math.floor(hz / STEP_HZ) * STEP_HZ;
  return {
    fromHz: down(resonanceHz(order, slowest) * (1 - MARGIN)),
    toHz: down(resonanceHz(order + 1, fastest) * (1 + MARGIN)) + STEP_HZ,
  };
}
