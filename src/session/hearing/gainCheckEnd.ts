import { LIMITS } from '../../limits/limits.ts';
import { LONGEST } from '../../limits/longest.ts';
import { beginningOf, wellFormed } from '../../limits/texts.ts';
import type { GainCheckRecord } from '../../notebook/experiment.ts';
import type { GainCheckRun } from './gainCheckRun.ts';
import { REWRITTEN_DB, STEADY_DB } from './gainCheck.ts';
import type { Notice } from '../notice.ts';

/** What the experiment keeps of a gain check that has ended with a verdict, and what the person is told. */
export interface GainCheckEnd {
  readonly record: GainCheckRecord;
  readonly kind: Notice['kind'];
  readonly message: string;
}

/**
 * @param checkedAt  ISO 8601
 * @param device  the microphone's name; null where it has none
 * @returns null while the check goes on, or where it can't tell
 */
export function gainCheckEnd(
  check: GainCheckRun,
  checkedAt: string,
  device: string | null,
): GainCheckEnd | null {
  const { verdict, departureDb } = check.answer;
  if (!check.isOver || verdict === 'cannot-tell' || departureDb === null) return null;
  const isSteady = verdict === 'steady';
  return {
    record: {
      checkedAt,
      verdict,
      departureDb: Math.min(departureDb, LIMITS.gainDepartureDb.highest),
      limitDb: isSteady ? STEADY_DB : REWRITTEN_DB,
      device: device === null ? null : beginningOf(wellFormed(device), LONGEST.device),
    },
    kind: isSteady ? 'info' : 'problem',
    message: isSteady
      ? 'Gain check passed: the fork died smoothly while there was talk. It is kept with the experiment.'
      : 'Gain check failed: something rewrites the level. Nothing is flagged until that is put right.',
  };
}
