import { requireInRange } from '../../air/requireInRange.ts';
import type { AirReadings } from '../../air/airState.ts';
import { LIMITS } from '../../limits/limits.ts';
import type { RoomNoise } from './roomScene.ts';

/** Shortest column that the simulated tube can be set to, m. */
const SHORTEST_M = 0.001;

/** The simulated apparatus and its room. */
export interface PracticeSettings {
  /** Stamped on the fork, Hz: any fork of the bench. */
  readonly stampedHz: number;
  /** Real pitch of the fork, Hz, within 5 % of the stamp; null draws one near the stamp from the seed. */
  readonly forkHz: number | null;
  /** Time in which the fork's amplitude falls to 1/e, s, 0.5..60. */
  readonly decayTimeS: number;
  /** Inside diameter of the tube, m, 0.005..0.12. */
  readonly diameterM: number;
  readonly ends: 'closed' | 'open';
  /** The shortest and the longest column that the tube allows, m: 1 mm to the longest tube of the bench. */
  readonly shortestM: number;
  readonly longestM: number;
  /** Length at the start, m, within those. */
  readonly lengthM: number;
  readonly air: AirReadings;
  readonly noise: RoomNoise;
}

/** A plastic tube of 35 mm in water and a 512 Hz fork, in a quiet room at 21 °C. */
export const USUAL_PRACTICE: PracticeSettings = {
  stampedHz: 512,
  forkHz: null,
  decayTimeS: 12,
  diameterM: 0.035,
  ends: 'closed',
  shortestM: 0.02,
  longestM: 1.2,
  lengthM: 0.1,
  air: { temperatureC: 21, humidityPct: 45, pressurePa: 101_325 },
  noise: 'quiet',
};

/**
 * @throws RangeError naming the argument, its range and the value. A wide tube is beyond the end correction's theory at
 *   a high pitch (ka above 1.5): the column refuses it, too
 */
export function checkPractice(settings: PracticeSettings): PracticeSettings {
  const { stampedHz, forkHz, shortestM, longestM } = settings;
  requireInRange('stampedHz', stampedHz, LIMITS.stampedHz.lowest, LIMITS.stampedHz.highest);
  if (forkHz !== null) requireInRange('forkHz', forkHz, 0.95 * stampedHz, 1.05 * stampedHz);
  requireInRange('decayTimeS', settings.decayTimeS, 0.5, 60);
  requireInRange('diameterM', settings.diameterM, 0.005, 0.12);
  requireInRange('shortestM', shortestM, SHORTEST_M, LIMITS.travelM.highest);
  requireInRange('longestM', longestM, shortestM, LIMITS.travelM.highest);
  requireInRange('lengthM', settings.lengthM, shortestM, longestM);
  return settings;
}
