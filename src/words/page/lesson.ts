import type { Lesson } from '../../notebook/experiment.ts';

/** What a lesson keeps back, in one sentence. */
export function keptBackList({ hideExpected, hideTheory, hideTruth }: Lesson): string {
  const parts = [
    ...(hideExpected ? ['where resonances are expected'] : []),
    ...(hideTheory ? ['theory’s speed of sound'] : []),
    ...(hideTruth ? ['the truth of the practice column'] : []),
  ];
  return `Until your teacher shows it: ${parts.join(', ')}.`;
}
