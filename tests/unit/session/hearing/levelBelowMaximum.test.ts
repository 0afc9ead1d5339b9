import { describe, expect, it } from 'vitest';
import { LevelBelowMaximum } from '../../../../src/session/hearing/levelBelowMaximum.ts';
import type { Guidance, Resonance, Sounding } from '../../../../src/session/hearing/listeningTypes.ts';

const DECAY_S = 10;
const STEP_S = 0.05;
const sounding: Sounding = {
  index: 1,
  startS: 0,
  endS: null,
  decayTimeS: DECAY_S,
  frequencyHz: 512,
  frequencyStandardUncertaintyHz: 0.01,
};
const flagged = { timeS: 2 } as Resonance;

/** The guidance at the end of a way, in half widths; the column's power is 1 + 9/(1 + x²) and the fork dies by exp(−t/T). */
function after(
  way: (timeS: number) => number,
  untilS: number,
  decayS: number | null = DECAY_S,
): Guidance | null {
  const level = new LevelBelowMaximum();
  for (let timeS = 0; timeS < untilS; timeS += STEP_S) {
    const x = way(timeS);
    level.push(timeS, (1 + 9 / (1 + x * x)) * Math.exp((-2 * timeS) / DECAY_S));
  }
  return level.guide([flagged], sounding, decayS);
}

describe('the level’s maximum', () => {
  it('has been met from one side after a pass, and from both when it was passed again', () => {
    const there = (timeS: number): number => 2 * (timeS - 2);
    const back = (timeS: number): number => (timeS < 4 ? there(timeS) : 4 - 2 * (timeS - 4));
    expect(after(there, 4)?.isMetFromBothSides).toBe(false);
    // Back at the maximum, at 6 s: nobody knows yet that it won’t rise further.
    expect(after(back, 6)?.isMetFromBothSides).toBe(false);
    expect(after(back, 7)?.isMetFromBothSides).toBe(true);
  });

  it('is not met by a slow slide away, whatever the fork’s dying is taken for', () => {
    const away = (timeS: number): number => (timeS < 4 ? 2 * (timeS - 2) : 4 + 0.3 * (timeS - 4));
    for (const decayS of [null, 3, 10, 30]) {
      expect(after(away, 14, decayS)?.isMetFromBothSides).toBe(false);
    }
  });
});
