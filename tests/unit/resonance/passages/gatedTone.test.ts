import { describe, expect, it } from 'vitest';
import { PracticeColumn } from '../../../../src/capture/practice/practiceColumn.ts';
import type { RoomNoise } from '../../../../src/capture/practice/roomScene.ts';
import { hear } from '../../../support/hear.ts';

const RATE_HZ = 48_000;

/** A practice sounding that passes the first resonance of 512 Hz at 3 cm/s. */
function slide(noise: RoomNoise, seed: number): Float32Array {
  const column = new PracticeColumn({ stampedHz: 512, ends: 'closed', longestM: 1, noise }, seed);
  column.setSlideSpeed(0.03);
  column.setLengthM(0.12);
  const before = column.render(3 * RATE_HZ);
  column.strike();
  const struck = column.render(RATE_HZ);
  column.slideTo(0.2);
  return Float32Array.from([...before, ...struck, ...column.render(4 * RATE_HZ)]);
}

/** The same with its sound multiplied from and to so long after the passage's peak, s. */
function gated(samples: Float32Array, gain: number, fromS: number, toS: number): Float32Array {
  const peakS = hear(samples, RATE_HZ, 512).flagged.at(0)?.timeS;
  if (peakS === undefined) throw new Error('the passage is flagged');
  const [from, to] = [(peakS + fromS) * RATE_HZ, (peakS + toS) * RATE_HZ].map(Math.round);
  return samples.map((sample, i) => (i >= from && i < to ? sample * gain : sample));
}

const isGated = (samples: Float32Array): boolean[] =>
  hear(samples, RATE_HZ, 512).flagged.map((flag) => flag.isGated === true);

describe('a tone that is gated away within a passage', () => {
  for (const noise of ['quiet', 'talk'] as const) {
    it.each([1, 2, 3])(`is told from one that rings on, ${noise}, seed %i`, (seed) => {
      const whole = slide(noise, seed);
      expect(isGated(whole)).toEqual([false]);
      expect(isGated(gated(whole, 0, 0.05, 0.5))).toEqual([true]);
    });

    it.each([1, 2, 3])(`is not a gain that moves, nor a short break, ${noise}, seed %i`, (seed) => {
      const whole = slide(noise, seed);
      // Automatic gain moves by some 12 dB; a file played as a microphone breaks off for 441 frames.
      expect(isGated(gated(whole, 0.25, 0.05, 0.5))).toEqual([false]);
      expect(isGated(gated(whole, 0, 0.05, 0.05 + 441 / RATE_HZ))).toEqual([false]);
    });
  }
});
