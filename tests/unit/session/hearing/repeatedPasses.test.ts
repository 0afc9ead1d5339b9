import { describe, expect, it } from 'vitest';
import { PracticeColumn } from '../../../../src/capture/practice/practiceColumn.ts';
import { RepeatedPasses } from '../../../../src/session/hearing/repeatedPasses.ts';
import type { FlagSurroundings } from '../../../../src/session/hearing/repeatedPasses.ts';
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

/** One mark that waits, in silence. */
const around = (change: Partial<FlagSurroundings> = {}): FlagSurroundings => ({
  soundedS: () => 0,
  standingFor: ([own]) => own ?? null,
  isNewestWaiting: () => true,
  ...change,
});

const flagAt = (timeS: number, soundingIndex: number | null, slide: Resonance['slide']): Resonance => ({
  timeS,
  centre: null,
  riseDb: 12,
  riseStandardUncertaintyDb: 0.5,
  aboveRoomDb: 30,
  confidence: 0.9,
  phaseSwingRad: 2.5,
  slide,
  halfPowerStartS: timeS - 0.1,
  halfPowerEndS: timeS + 0.1,
  soundingIndex,
  flaggedAtS: timeS + 0.5,
});

/** What becomes of a flag after one at 10 s, in sounding 1, with the column growing longer: 0.2 s at half power. */
function after(next: Resonance, change: Partial<FlagSurroundings> = {}) {
  const repeats = new RepeatedPasses();
  const first = flagAt(10, 1, 'longer');
  expect(repeats.repeated(first, around(change))).toBeNull();
  repeats.note(first, 'first', 'first');
  return repeats.repeated(next, around(change));
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
    expect(repeats.repeated(there, around())).toBeNull();
    repeats.note(there, 'mark', 'mark');
    expect(repeats.repeated(back, around())).toEqual({ markId: 'mark', how: 'turned' });
  });

  it.each([1, 2, 3, 4])('on to the next order is another one, seed %i', (seed) => {
    const { flagged } = hear(slide(seed, 0.12, [{ toM: 0.55, waitS: 9 }]), RATE_HZ, 512);
    expect(flagged.map((flag) => flag.slide)).toEqual(['longer', 'longer']);
    const [first, second] = flagged;
    if (first === undefined || second === undefined) throw new Error('both passages are flagged');
    const repeats = new RepeatedPasses();
    repeats.note(first, 'mark', 'mark');
    expect(repeats.repeated(second, around())).toBeNull();
    // Had the fork been struck in between, its travel would tell the same: 335 mm at 50 mm/s are 6.7 s.
    const sounding = { ...second, soundingIndex: (first.soundingIndex ?? 0) + 1 };
    const soundedS = second.timeS - first.timeS;
    expect(soundedS).toBeGreaterThan(6);
    expect(repeats.repeated(sounding, around({ soundedS: () => soundedS }))).toBeNull();
  });
});

describe('a flag after a new strike', () => {
  it('joins the mark that waits, whichever way the column moves, soon after its last pass', () => {
    expect(after(flagAt(18, 2, 'longer'))).toEqual({ markId: 'first', how: 'likely' });
    expect(after(flagAt(18, 2, 'shorter'))).toEqual({ markId: 'first', how: 'likely' });
  });

  it('is one of its own 30 s after the last pass', () => {
    expect(after(flagAt(39.9, 2, 'shorter'))).not.toBeNull();
    expect(after(flagAt(40.1, 2, 'shorter'))).toBeNull();
  });

  it('is one of its own where the last mark has its length, is gone, or belongs to another fork or setup', () => {
    expect(after(flagAt(18, 2, 'shorter'), { isNewestWaiting: () => false })).toBeNull();
    expect(after(flagAt(18, 2, 'shorter'), { standingFor: () => null })).toBeNull();
  });

  it('is one of its own where the column went on the same way for as long as to the next resonance', () => {
    // 0.2 s at half power: 25 widths are passed in 5 s.
    expect(after(flagAt(18, 2, 'longer'), { soundedS: () => 5.1 })).toBeNull();
    expect(after(flagAt(18, 2, 'longer'), { soundedS: () => 4.9 })).not.toBeNull();
    // Back again is no travel, however long it took.
    expect(after(flagAt(18, 2, 'shorter'), { soundedS: () => 7 })).not.toBeNull();
  });

  it('counts the time since the newest pass, and joins what the repeat was joined with', () => {
    const repeats = new RepeatedPasses();
    repeats.note(flagAt(10, 1, 'longer'), 'first', 'first');
    repeats.note(flagAt(35, 2, 'shorter'), 'second', 'first');
    const found = repeats.repeated(
      flagAt(60, 3, 'longer'),
      around({ standingFor: ([, standsFor]) => standsFor ?? null }),
    );
    expect(found).toEqual({ markId: 'first', how: 'likely' });
  });
});

describe('a flag while the column is followed', () => {
  const followed = (timeS: number, sounding: number, isFollowed: boolean): Resonance => ({
    ...flagAt(timeS, sounding, 'shorter'),
    isFollowed,
  });

  it('is the resonance that is followed where the column is at it, and none where it is not', () => {
    expect(after(followed(300, 9, true))).toEqual({ markId: 'first', how: 'followed' });
    expect(after(followed(12, 2, false))).toBeNull();
  });

  it('is another one where the slide went on in the same sounding, whatever the follower says', () => {
    expect(after({ ...flagAt(12, 1, 'longer'), isFollowed: true })).toBeNull();
  });
});

describe('a flag outside of any sounding', () => {
  it('is one of its own', () => {
    expect(after(flagAt(12, null, 'shorter'))).toBeNull();
  });
});
