import { describe, expect, it } from 'vitest';
import { PracticeColumn } from '../../../../src/capture/practice/practiceColumn.ts';
import { RepeatedPasses } from '../../../../src/session/hearing/repeatedPasses.ts';
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
    expect(repeats.repeated(there)).toBeNull();
    repeats.note(there, 'mark');
    expect(repeats.repeated(back)).toBe('mark');
  });

  it.each([1, 2, 3, 4])('on to the next order is another one, seed %i', (seed) => {
    const { flagged } = hear(slide(seed, 0.12, [{ toM: 0.55, waitS: 9 }]), RATE_HZ, 512);
    expect(flagged.map((flag) => flag.slide)).toEqual(['longer', 'longer']);
  });
});
