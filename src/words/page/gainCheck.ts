import type { GainCheckRecord } from '../../notebook/experiment.ts';
import type { GainAnswer } from '../../session/hearing/gainCheck.ts';
import { localDayAndTime } from '../dates.ts';
import { laterWords } from '../inUse.ts';
import { fixed } from '../numbers.ts';

/** A gain check's answer in a sign, a word and a sentence. */
export interface GainAnswerWords {
  readonly sign: string;
  readonly verdict: string;
  readonly detail: string;
}

/** What a check that goes on has found, and what it waits for. */
export function gainAnswerWords(answer: GainAnswer): GainAnswerWords {
  const { verdict, missing } = answer;
  const { waits, verdicts, details } = laterWords.gainAnswer;
  if (verdict === 'cannot-tell') {
    const detail = {
      strike: waits.strike,
      time: waits.time(fixed(answer.followedS, 0)),
      talk: waits.talk(fixed(answer.talkS, 0)),
      fork: waits.fork,
    }[missing ?? 'time'];
    return { sign: '…', verdict: verdicts['cannot-tell'], detail };
  }
  const detail = details[verdict](fixed(answer.departureDb ?? 0, 1));
  return { sign: verdict === 'steady' ? '✓' : '✕', verdict: verdicts[verdict], detail };
}

/** What the experiment keeps of its last check. */
export function keptGainWords(check: GainCheckRecord): string {
  const { kept, namelessDevice } = laterWords.gainAnswer;
  return kept[check.verdict](
    localDayAndTime(check.checkedAt),
    fixed(check.departureDb, 1),
    fixed(check.limitDb, 1),
    check.device ?? namelessDevice,
  );
}

/** A microphone that the browser names not at all, by its place in the list. @param number  from 1 */
export function namelessMicrophone(number: number): string {
  return laterWords.gainAnswer.microphone(number);
}
