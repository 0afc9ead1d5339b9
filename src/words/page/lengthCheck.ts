import type { CheckHindrance, LengthCheck } from '../../resonance/lengthCheck/checkLength.ts';
import { times } from '../en/grammar.ts';
import { roundPair } from '../numbers.ts';

/** The answer of a check in two lines: the verdict, and what it rests on. */
export interface LengthAnswerWords {
  readonly sign: string;
  readonly verdict: string;
  readonly detail: string;
}

export function lengthAnswerWords(check: LengthCheck | null): LengthAnswerWords {
  if (check === null) {
    return {
      sign: '…',
      verdict: 'Listening',
      detail: 'Strike the fork. Hold it at the mouth for two seconds, away for two, and so on, three times.',
    };
  }
  const detail =
    check.riseDb === null || check.standardUncertaintyDb === null
      ? hindranceWords(check.hindrance ?? 'few-changes', check.comparisons)
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

/** Why nothing was compared, and what to do. */
function hindranceWords(hindrance: CheckHindrance, comparisons: number): string {
  switch (hindrance) {
    case 'no-fork':
      return 'No sounding fork has been heard yet. Strike it and hold it at the mouth.';
    case 'lost-sound':
      return 'Sound was lost meanwhile: close other programs and begin again.';
    case 'few-changes':
      return `The fork has come or gone ${times(comparisons)} so far; at least three times are needed.`;
    case 'noise':
      return 'The room is too loud beside the fork to compare. Strike harder, hold the fork nearer, or wait until it is quieter.';
    case 'unsteady':
      return 'The level changes in other ways, too. Leave the column as it is, and hold the fork still in each of its two places.';
  }
}

function riseWords(riseDb: number, standardUncertaintyDb: number, comparisons: number): string {
  const pair = roundPair(riseDb, Math.max(2 * standardUncertaintyDb, 0.1));
  return `The fork at the mouth is louder by ${pair.value} ± ${pair.uncertainty} dB (95 %), from ${comparisons} comings and goings.`;
}
