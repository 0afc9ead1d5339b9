import type { LengthCheck } from '../../resonance/lengthCheck/checkLength.ts';
import { roundPair } from '../../report/rounding.ts';

/** The answer of a check in two lines: the verdict, and what it rests on. */
export interface CheckWords {
  readonly sign: string;
  readonly verdict: string;
  readonly detail: string;
}

export function checkWords(check: LengthCheck | null): CheckWords {
  if (check === null) {
    return {
      sign: '…',
      verdict: 'Listening',
      detail: 'Strike the fork. Hold it at the mouth for two seconds, away for two, and so on, three times.',
    };
  }
  const detail =
    check.riseDb === null || check.standardUncertaintyDb === null
      ? `${check.comparisons} comings and goings heard so far; at least three are needed.`
      : riseWords(check.riseDb, check.standardUncertaintyDb, check.comparisons);
  switch (check.verdict) {
    case 'resonant':
      return { sign: '✓', verdict: 'Resonant', detail };
    case 'not-resonant':
      return { sign: '✕', verdict: 'Not resonant', detail };
    case 'cannot-tell':
      return { sign: '?', verdict: 'Can’t tell yet', detail };
  }
}

function riseWords(riseDb: number, standardUncertaintyDb: number, comparisons: number): string {
  const pair = roundPair(riseDb, Math.max(2 * standardUncertaintyDb, 0.1));
  return `The fork at the mouth is louder by ${pair.value} ± ${pair.uncertainty} dB (95 %), from ${comparisons} comings and goings.`;
}
