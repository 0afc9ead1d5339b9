import type { KnownSpeed } from './knownSpeed.ts';
import { LOW_FREQUENCY_END_RATIO } from '../air/endCorrection.ts';
import type { SolverMark, SolverOptions } from './solution.ts';
import type { SolverWarning, SolverWarningCode } from './solverWarning.ts';
import { solveInFull } from './solve.ts';
import { coverageFactor } from '../numeric/studentT.ts';
import { effectiveDegreesOfFreedom } from './effectiveDegreesOfFreedom.ts';

export interface UnknownFork {
  readonly frequencyHz: number;
  readonly standardUncertaintyHz: number;
  readonly expandedUncertaintyHz: number;
  readonly coverageFactor: number;
  readonly orders: readonly number[];
  readonly warnings: readonly SolverWarning[];
}

/** What says nothing of the frequency sought, or is answered otherwise here. */
const BESIDE_THE_POINT: readonly SolverWarningCode[] = [
  'differs-from-theory',
  'speed-implausible',
  'no-temperature',
];

/**
 * Frequency of one unknown fork from its resonant lengths and a known speed: the lengths give the wavelength, f = c/λ.
 * @param marks  of this fork only; their frequencyHz is not used
 * @param speed  in free air, at the marks' air
 * @param approximateHz  a rough frequency where one is known, e.g. heard by the microphone; null: from the lengths' spacing,
 *   which must then belong to neighbouring resonances
 * @returns null where the marks give no answer
 * @example
 * const { rows } = readMarksTable('fork_hz,ends,length_cm,diameter_mm\n512,closed,15.8,30\n512,closed,49.25,30');
 * const speed = { speedMps: 344.6, standardUncertaintyMps: 0.3 };
 * unknownFork(marksOfRows(rows), speed, 500)?.frequencyHz.toFixed(0) // → '512'
 */
export function unknownFork(
  marks: readonly SolverMark[],
  speed: KnownSpeed,
  approximateHz: number | null,
  options: SolverOptions = {},
): UnknownFork | null {
  if (!(speed.speedMps > 0) || !(speed.standardUncertaintyMps >= 0)) return null;
  let hz: number | null = approximateHz ?? guessHz(marks, speed.speedMps);
  if (hz === null || !(hz > 1 && hz < 100_000)) return null;
  // A guess from spacing is good to some per cent; the range keeps orders apart all the same.
  const reach = approximateHz === null ? 0.12 : 0.06;
  for (let round = 0; round < 5; round += 1) {
    const trialHz: number = hz;
    const solved = solveInFull(
      marks.map((mark) => ({
        ...mark,
        forkKey: 'unknown',
        frequencyHz: trialHz,
        frequencyStandardUncertaintyHz: 0,
      })),
      { ...options, speedRangeMps: [speed.speedMps * (1 - reach), speed.speedMps * (1 + reach)] },
    );
    if (!('fit' in solved)) return null;
    const { solution, fit, orders } = solved;
    hz = (trialHz * speed.speedMps) / solution.speedMps;
    if (Math.abs(hz / trialHz - 1) > 1e-7 && round < 4) continue;
    const contributions = [
      ...fit.contributions,
      { contributionMps: speed.standardUncertaintyMps, degreesOfFreedom: 50 },
    ];
    const factor = coverageFactor(effectiveDegreesOfFreedom(contributions));
    const relative = Math.hypot(
      solution.standardUncertaintyMps / solution.speedMps,
      speed.standardUncertaintyMps / speed.speedMps,
    );
    return {
      frequencyHz: hz,
      standardUncertaintyHz: relative * hz,
      expandedUncertaintyHz: factor * relative * hz,
      coverageFactor: factor,
      orders,
      warnings: solution.warnings.filter(({ code }) => !BESIDE_THE_POINT.includes(code)),
    };
  }
  return null;
}

/** From the smallest step between lengths of one column type, taken as half a wavelength; from one length as order 1. */
function guessHz(marks: readonly SolverMark[], speedMps: number): number | null {
  let smallestM = Infinity;
  for (const ends of ['closed', 'open'] as const) {
    const lengths = marks
      .filter((mark) => mark.ends === ends)
      .map(({ lengthM }) => lengthM)
      .sort((a, b) => a - b);
    for (let i = 1; i < lengths.length; i += 1) {
      const stepM = lengths[i] - lengths[i - 1];
      // Repeats of one resonance are no step.
      if (stepM > 0.03) smallestM = Math.min(smallestM, stepM);
    }
  }
  if (smallestM < Infinity) return speedMps / (2 * smallestM);
  const only = marks.at(0);
  if (only === undefined) return null;
  // Without a diameter the end correction is left out, as the solver does.
  const endM = only.radiusM === null ? 0 : LOW_FREQUENCY_END_RATIO.unflanged * only.radiusM;
  return only.ends === 'closed'
    ? speedMps / (4 * (only.lengthM + endM))
    : speedMps / (2 * (only.lengthM + 2 * endM));
}
