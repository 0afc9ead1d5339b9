import { LIMITS } from '../../limits/limits.ts';
import { LONGEST } from '../../limits/longest.ts';
import { beginningOf, wellFormed } from '../../limits/texts.ts';
import type { GainCheckRecord } from '../../notebook/experiment.ts';
import type { GainCheckRun } from './gainCheckRun.ts';
import { REWRITTEN_DB, STEADY_DB } from './gainLimits.ts';

/**
 * What the experiment keeps of a gain check that has ended with a verdict.
 * @param checkedAt  ISO 8601
 * @param device  the microphone's name; null where it has none
 * @returns null while the check goes on, or where it can't tell
 */
export function gainCheckEnd(
  check: GainCheckRun,
  checkedAt: string,
  device: string | null,
): GainCheckRecord | null {
  const { verdict, departureDb } = check.answer;
  if (!check.isOver || verdict === 'cannot-tell' || departureDb === null) return null;
  return {
    checkedAt,
    verdict,
    departureDb: Math.min(departureDb, LIMITS.gainDepartureDb.highest),
    limitDb: verdict === 'steady' ? STEADY_DB : REWRITTEN_DB,
    device: device === null ? null : beginningOf(wellFormed(device), LONGEST.device),
  };
}
