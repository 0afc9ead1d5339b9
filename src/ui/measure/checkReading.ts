import { readingFault } from '../../notebook/columnFault.ts';
import type { Session } from '../../session/session.ts';
import { readingFaultWords } from '../../words/columnFaults.ts';

/** What stands against a reading of the rule, m, with the experiment's zero offset; null: nothing. */
export function checkReading({ experiment }: Session, readingM: number): string | null {
  const fault = readingFault(readingM, experiment.rule.zeroOffsetM);
  return fault === null ? null : readingFaultWords(fault);
}
