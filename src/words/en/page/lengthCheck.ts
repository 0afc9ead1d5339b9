import type { CheckHindrance, LengthCheck } from '../../../resonance/lengthCheck/checkLength.ts';
import { times } from '../grammar.ts';

/** Whether a length resonates, and what that rests on. */
export const lengthAnswer = {
  listening: 'Listening',
  how: 'Strike the fork. Hold it at the mouth for two seconds, away for two, and so on, three times.',
  verdicts: {
    resonant: 'Resonant',
    'not-resonant': 'Not resonant',
    'cannot-tell': 'Can’t tell yet',
  } satisfies Readonly<Record<LengthCheck['verdict'], string>>,
  fewChanges: (comparisons: number) =>
    `The fork has come to the mouth or gone ${times(comparisons)} so far; at least three times are needed.`,
  hindrances: {
    'no-fork': 'No fork has been heard yet. Strike it and hold it at the mouth.',
    'lost-sound': 'Sound was lost meanwhile: close other programs and begin again.',
    noise:
      'The room is too loud beside the fork to compare. Strike harder, hold the fork nearer, or wait until it is quieter.',
    unsteady:
      'The level changes in other ways, too. Leave the column as it is, and hold the fork still in each of its two places.',
  } satisfies Readonly<Record<Exclude<CheckHindrance, 'few-changes'>, string>>,
  rise: (riseDb: string, uncertaintyDb: string, comparisons: number) =>
    `The fork at the mouth is louder by ${riseDb} ± ${uncertaintyDb} dB (95 %), compared ${times(comparisons)}.`,
};
