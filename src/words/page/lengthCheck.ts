import type { CheckHindrance, LengthCheck } from '../../resonance/lengthCheck/checkLength.ts';
import { words } from '../inUse.ts';
import { roundPair } from '../numbers.ts';

/** The answer of a check in two lines: the verdict, and what it rests on. */
export interface LengthAnswerWords {
  readonly sign: string;
  readonly verdict: string;
  readonly detail: string;
}

const SIGNS = { resonant: '✓', 'not-resonant': '✕', 'cannot-tell': '?' } as const;

export function lengthAnswerWords(check: LengthCheck | null): LengthAnswerWords {
  const { listening, how, verdicts } = words.lengthAnswer;
  if (check === null) return { sign: '…', verdict: listening, detail: how };
  const detail =
    check.riseDb === null || check.standardUncertaintyDb === null
      ? hindranceWords(check.hindrance ?? 'few-changes', check.comparisons)
      : riseWords(check.riseDb, check.standardUncertaintyDb, check.comparisons);
  return { sign: SIGNS[check.verdict], verdict: verdicts[check.verdict], detail };
}

/** Why nothing was compared, and what to do. */
function hindranceWords(hindrance: CheckHindrance, comparisons: number): string {
  const { fewChanges, hindrances } = words.lengthAnswer;
  return hindrance === 'few-changes' ? fewChanges(comparisons) : hindrances[hindrance];
}

function riseWords(riseDb: number, standardUncertaintyDb: number, comparisons: number): string {
  const pair = roundPair(riseDb, Math.max(2 * standardUncertaintyDb, 0.1));
  return words.lengthAnswer.rise(pair.value, pair.uncertainty, comparisons);
}
