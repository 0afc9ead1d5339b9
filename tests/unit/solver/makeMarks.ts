import { airFromReadings } from '../../../src/air/airState.ts';
import { resonantLengthM } from '../../../src/air/columnResonance.ts';
import { endCorrection } from '../../../src/air/endCorrection.ts';
import { speedOfSound } from '../../../src/air/speedOfSound.ts';
import { wallLoss } from '../../../src/air/wallLoss.ts';
import type { NoSolution, Solution, SolverMark } from '../../../src/solver/solution.ts';
import type { SolverWarningCode } from '../../../src/solver/solverWarning.ts';
import { outlierCauseWords } from '../../../src/words/outlierCauses.ts';
import { solverWarningMessage } from '../../../src/words/solverWarnings.ts';

export interface Wanted {
  readonly hz: number;
  readonly ends?: 'closed' | 'open';
  readonly orders: readonly number[];
}

/** Exact marks of columns in a tube of 30 mm at 20 °C and 50 %, unless said otherwise. */
export function makeMarks(
  wanted: readonly Wanted[],
  changes: Partial<SolverMark> & { temperatureC?: number } = {},
): SolverMark[] {
  const { temperatureC = 20, ...rest } = changes;
  const radiusM = rest.radiusM ?? 0.015;
  const air = airFromReadings({ temperatureC, humidityPct: 50 });
  const freeMps = speedOfSound(air).speedMps;
  const marks: SolverMark[] = [];
  for (const { hz, ends = 'closed', orders } of wanted) {
    const speedMps = freeMps * wallLoss(radiusM, hz, temperatureC, freeMps).speedRatio;
    const { endCorrectionM } = endCorrection(radiusM, hz, freeMps);
    for (const order of orders) {
      marks.push({
        key: `m${marks.length + 1}`,
        forkKey: String(hz),
        frequencyHz: hz,
        frequencyStandardUncertaintyHz: 0.001 * hz,
        ends,
        lengthM: resonantLengthM({ order, ends, speedMps, frequencyHz: hz, endCorrectionM }),
        otherLengthM: null,
        lengthStandardUncertaintyM: 0.0007,
        radiusM,
        otherRadiusM: null,
        mouth: 'thin-rim',
        air,
        place: 'bench',
        order: null,
        // They lie at their resonances exactly.
        locatedBy: 'centre',
        centreStandardUncertaintyHalfWidths: 0,
        ...rest,
      });
    }
  }
  return marks;
}

/** The true speed that `makeMarks` uses. */
export function trueSpeedMps(temperatureC = 20): number {
  return speedOfSound(airFromReadings({ temperatureC, humidityPct: 50 })).speedMps;
}

/** With one length changed. */
export function shift(marks: readonly SolverMark[], index: number, byM: number): SolverMark[] {
  return marks.map((mark, i) => (i === index ? { ...mark, lengthM: mark.lengthM + byM } : mark));
}

/** Fails the test where there is no solution. */
export function solved(answer: Solution | NoSolution): Solution {
  if (answer.speedMps === null) throw new Error(answer.warnings.map(({ code }) => code).join(' '));
  return answer;
}

/** What is said of the first finding with this code; '' where there is none. */
export function messageOf(answer: Solution | NoSolution, code: SolverWarningCode): string {
  const warning = answer.warnings.find((one) => one.code === code);
  return warning === undefined ? '' : solverWarningMessage(warning, (key) => key);
}

/** What is said of a mark that doesn't fit; '' where it does. */
export function causeOf(answer: Solution, index: number): string {
  const cause = answer.marks[index]?.cause ?? null;
  return cause === null ? '' : outlierCauseWords(cause);
}
