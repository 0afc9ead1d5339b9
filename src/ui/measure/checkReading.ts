import { readingFault } from '../../notebook/columnFault.ts';
import type { Session } from '../../session/session.ts';
import { readingFaultWords } from '../../words/columnFaults.ts';
import { beyondTubeWords } from '../../words/readings.ts';

/** So much longer than its tube a column may be read without a question, m. */
const BEYOND_M = 0.005;

/** What stands against a reading of the rule, m, with the experiment's zero offset; null: nothing. */
export function checkReading({ experiment }: Session, readingM: number): string | null {
  const fault = readingFault(readingM, experiment.rule.zeroOffsetM);
  return fault === null ? null : readingFaultWords(fault);
}

/** What is asked about a reading of the rule, m, that the tube is too short for; null: nothing. */
export function askReading({ experiment }: Session, readingM: number): string | null {
  const { travelM } = experiment.tube;
  return readingM > travelM + BEYOND_M ? beyondTubeWords(readingM, travelM) : null;
}
