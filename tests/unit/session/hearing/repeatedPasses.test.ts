import { describe, expect, it } from 'vitest';
import { PracticeColumn } from '../../../../src/capture/practice/practiceColumn.ts';
import { RepeatedPasses } from '../../../../src/session/hearing/repeatedPasses.ts';
import type { StandingFor } from '../../../../src/session/hearing/repeatedPasses.ts';
import type { Resonance } from '../../../../src/session/hearing/listeningTypes.ts';
import { hear } from '../../../support/hear.ts';

const RATE_HZ = 48_000;

/** A practice sounding in which the column goes to each of these lengths in turn. */
function slide(seed: number, startM: number, stops: readonly { toM: number; waitS: number }[]): Float32Array {
  const column = new PracticeColumn({ stampedHz: 512, ends: 'closed', longestM: 1 }, seed);
  column.setSlideSpeed(0.05);
  column.setLengthM(startM);
  const parts = [column.render(3 * RATE_HZ)];
  column.strike();
  parts.push(column.render(RATE_HZ));
  for (const { toM, waitS } of stops) {
    column.slideTo(toM);
    parts.push(column.render(waitS * RATE_HZ));
  }
  const all = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/** All marks are there, each for itself. */
const standing: StandingFor = ([own]) => own ?? null;

const flagAt = (timeS: number, soundingIndex: number | null, slide: Resonance['slide']): Resonance => ({
  timeS,
  centre: null,
  riseDb: 12,
  riseStandardUncertaintyDb: 0.5,
  aboveRoomDb: 30,
  confidence: 0.9,
  certainty: 'sure',
  phaseSwingRad: 2.5,
  slide,
  halfPowerStartS: timeS - 0.1,
  halfPowerEndS: timeS + 0.1,
  soundingIndex,
  flaggedAtS: timeS + 0.5,
});

/** What becomes of a flag after one at 10 s, in sounding 1, with the column growing longer. */
function after(next: Resonance, standingFor = standing) {
  const repeats = new RepeatedPasses();
  const first = flagAt(10, 1, 'longer');
  expect(repeats.repeated(first, standingFor)).toBeNull();
  repeats.note(first, 'first', 'first');
  return repeats.repeated(next, standingFor);
}

describe('repeats of one resonance, on the practice column', () => {
  it.each([1, 2, 3, 4])('there and back again is one resonance, seed %i', (seed) => {
    const { flagged } = hear(
      slide(seed, 0.12, [
        { toM: 0.2, waitS: 3 },
        { toM: 0.12, waitS: 3 },
      ]),
      RATE_HZ,
      512,
    );
    expect(flagged.map((flag) => flag.slide)).toEqual(['longer', 'shorter']);
    const repeats = new RepeatedPasses();
    const [there, back] = flagged;
    if (there === undefined || back === undefined) throw new Error('both passages are flagged');
    expect(repeats.repeated(there, standing)).toBeNull();
    repeats.note(there, 'mark', 'mark');
    expect(repeats.repeated(back, standing)).toEqual({ markId: 'mark', how: 'turned' });
  });

  it.each([1, 2, 3, 4])('on to the next order is another one, seed %i', (seed) => {
    const { flagged } = hear(slide(seed, 0.12, [{ toM: 0.55, waitS: 9 }]), RATE_HZ, 512);
    expect(flagged.map((flag) => flag.slide)).toEqual(['longer', 'longer']);
    const [first, second] = flagged;
    if (first === undefined || second === undefined) throw new Error('both passages are flagged');
    const repeats = new RepeatedPasses();
    repeats.note(first, 'mark', 'mark');
    expect(repeats.repeated(second, standing)).toBeNull();
  });
});

describe('a flag after a new strike', () => {
  const struckAgain = (isFollowed?: boolean): Resonance => ({
    ...flagAt(18, 2, 'shorter'),
    ...(isFollowed === undefined ? {} : { isFollowed }),
  });

  it('joins the mark of the resonance that the column was followed around', () => {
    expect(after(struckAgain(true))).toEqual({ markId: 'first', how: 'followed' });
  });

  it('is one of its own where the column was elsewhere, or nobody knows', () => {
    expect(after(struckAgain(false))).toBeNull();
    expect(after(struckAgain())).toBeNull();
  });

  it('is one of its own where that mark is gone, or belongs to another fork or setup', () => {
    expect(after(struckAgain(true), () => null)).toBeNull();
  });

  it('joins what a repeat was joined with', () => {
    const repeats = new RepeatedPasses();
    repeats.note(flagAt(10, 1, 'longer'), 'first', 'first');
    repeats.note(flagAt(15, 1, 'shorter'), 'second', 'first');
    expect(repeats.repeated(struckAgain(true), ([, standsFor]) => standsFor ?? null)).toEqual({
      markId: 'first',
      how: 'followed',
    });
  });

  it('is another resonance where the slide went on in the same sounding, whatever the follower says', () => {
    expect(after({ ...flagAt(12, 1, 'longer'), isFollowed: true })).toBeNull();
  });
});

describe('a flag outside of any sounding', () => {
  it('is one of its own', () => {
    expect(after(flagAt(12, null, 'shorter'))).toBeNull();
  });
});
