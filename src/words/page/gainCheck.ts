import type { GainCheckRecord } from '../../notebook/experiment.ts';
import type { GainAnswer } from '../../session/hearing/gainCheck.ts';
import { fixed } from '../numbers.ts';
import { dayAndTime } from '../dates.ts';

/** A gain check's answer in a sign, a word and a sentence. */
export interface GainAnswerWords {
  readonly sign: string;
  readonly verdict: string;
  readonly detail: string;
}

/** What a check that goes on has found, and what it waits for. */
export function gainAnswerWords({
  verdict,
  departureDb,
  missing,
  followedS,
  talkS,
}: GainAnswer): GainAnswerWords {
  if (verdict === 'rewritten') {
    return {
      sign: '✕',
      verdict: 'Rewritten',
      detail: `The level departs from a smooth decay by ${fixed(departureDb ?? 0, 1)} dB. Something between microphone and page changes it.`,
    };
  }
  if (verdict === 'steady') {
    return {
      sign: '✓',
      verdict: 'Left alone',
      detail: `The fork died smoothly, within ${fixed(departureDb ?? 0, 1)} dB, while there was talk.`,
    };
  }
  const waits = {
    strike: 'Strike the fork once and hold it still, near the microphone.',
    time: `Hold still and keep talking: ${fixed(followedS, 0)} s heard.`,
    talk: `Now let somebody talk, as loud as the class does: ${fixed(talkS, 0)} s of talk heard.`,
    fork: 'The fork is too faint against the talk to tell. Strike it once more, and hold it nearer to the microphone.',
  };
  return { sign: '…', verdict: 'Listening', detail: waits[missing ?? 'time'] };
}

/** What the experiment keeps of its last check. */
export function keptGainWords(check: GainCheckRecord): string {
  const when = dayAndTime(check.checkedAt);
  const what = check.verdict === 'steady' ? 'left alone' : 'rewritten';
  return `Kept with the experiment: ${when}: ${what}, ${fixed(check.departureDb, 1)} dB from a smooth decay (limit ${fixed(check.limitDb, 1)} dB), ${check.device ?? 'microphone without a name'}.`;
}

/** A microphone that the browser names not at all, by its place in the list. @param number  from 1 */
export function namelessMicrophone(number: number): string {
  return `Microphone ${number}`;
}
