import { describe, expect, it } from 'vitest';
import { PracticeColumn } from '../../../../src/capture/practice/practiceColumn.ts';
import { talk } from '../../../bench/detector/talk.ts';
import { Random } from '../../../bench/detector/random.ts';
import { hear } from '../../../support/hear.ts';

const RATE_HZ = 48_000;

interface Slide {
  readonly sound: Float32Array;
  /** When the length passed a resonance, s. */
  readonly passedS: readonly number[];
}

/** One strike and one slide along the rule. */
function slide(stampedHz: number, seed: number, speedMps: number, toM: number): Slide {
  const column = new PracticeColumn({ stampedHz, ends: 'closed', longestM: 1 }, seed);
  column.setSlideSpeed(speedMps);
  column.setLengthM(0.06);
  const parts = [...column.render(3 * RATE_HZ)];
  column.strike();
  parts.push(...column.render(RATE_HZ));
  column.slideTo(toM);
  const passedS: number[] = [];
  for (let endS = column.timeS + (toM - 0.06) / speedMps + 2; column.timeS < endS;) {
    const beforeM = column.lengthM;
    parts.push(...column.render(RATE_HZ / 100));
    const { lengthM } = column;
    if (column.resonantLengthsM.some((one) => beforeM < one && one <= lengthM)) passedS.push(column.timeS);
  }
  return { sound: Float32Array.from(parts), passedS };
}

/** Which passages are marked, and when it was said that one was too fast. */
function judged({ sound, passedS }: Slide, stampedHz: number) {
  const { flagged, warned } = hear(sound, RATE_HZ, stampedHz);
  const saidS = warned.flatMap(({ code, timeS }) => (code === 'slide-too-fast' ? [timeS] : []));
  // The level peaks some 0.05 s late.
  const isMarked = passedS.map((atS) => flagged.some(({ timeS }) => Math.abs(timeS - atS - 0.05) < 0.4));
  return { isMarked, saidS };
}

const FORKS = [
  [512, 1],
  [512, 2],
  [384, 1],
] as const;

describe('a slide along the practice column', () => {
  it.each(FORKS)('is marked and never said to be too fast at 2 and 4 cm/s, %i Hz, seed %i', (hz, seed) => {
    const found = [slide(hz, seed, 0.02, 0.26), slide(hz, seed, 0.04, 0.98)].map((one) => judged(one, hz));
    for (const { isMarked, saidS } of found) {
      expect(isMarked.length).toBeGreaterThan(0);
      expect(isMarked).not.toContain(false);
      expect(saidS).toEqual([]);
    }
  });

  it.each(FORKS)('is marked at 6 and 8 cm/s, %i Hz, seed %i', (hz, seed) => {
    for (const speedMps of [0.06, 0.08]) {
      const { isMarked } = judged(slide(hz, seed, speedMps, 0.98), hz);
      expect(isMarked.length).toBeGreaterThan(1);
      expect(isMarked).not.toContain(false);
    }
  });

  it.each(FORKS)('is marked or said to be too fast at 5 to 20 cm/s, not both, %i Hz, seed %i', (hz, seed) => {
    for (const speedMps of [0.05, 0.06, 0.08, 0.1, 0.15, 0.2]) {
      const one = slide(hz, seed, speedMps, 0.98);
      const { isMarked, saidS } = judged(one, hz);
      const isSaid = one.passedS.map((passedS) =>
        saidS.some((atS) => Math.abs((atS ?? 0) - passedS - 0.05) < 0.45),
      );
      for (const [i, marked] of isMarked.entries())
        expect(marked && isSaid[i], `${speedMps} m/s`).toBe(false);
      // Of two that are lost, one may be lost altogether.
      if (isMarked.includes(false)) expect(saidS.length, `${speedMps} m/s`).toBeGreaterThan(0);
      // It is said of a passage, not of something else.
      for (const atS of saidS) {
        expect(one.passedS.some((passedS) => Math.abs((atS ?? 0) - passedS - 0.05) < 0.45)).toBe(true);
      }
    }
  });
});

describe('what is no slide', () => {
  it('talk alone is never said to be too fast: 20 recordings of 10 s', () => {
    for (let seed = 1; seed <= 20; seed += 1) {
      const said = talk(new Random(seed), 10 * RATE_HZ, RATE_HZ, 1 + (seed % 5));
      const hz = [512, 426.7, 320, 256][seed % 4] ?? 512;
      const { warned } = hear(
        said.map((sample) => 0.05 * sample),
        RATE_HZ,
        hz,
      );
      expect(
        warned.filter(({ code }) => code === 'slide-too-fast'),
        `seed ${seed}`,
      ).toEqual([]);
    }
  });

  it.each([1, 2, 3])('a fork that is struck, taken away, brought back and damped, seed %i', (seed) => {
    const column = new PracticeColumn({ stampedHz: 512, ends: 'closed', longestM: 1 }, seed);
    const [resonantM = 0.16] = column.resonantLengthsM;
    column.setLengthM(seed === 1 ? 0.3 : resonantM);
    const parts = [...column.render(3 * RATE_HZ)];
    for (let strike = 0; strike < 3; strike += 1) {
      column.strike();
      parts.push(...column.render(2 * RATE_HZ));
      column.setForkAtMouth(false);
      parts.push(...column.render(RATE_HZ));
      column.setForkAtMouth(true);
      parts.push(...column.render(RATE_HZ));
      column.damp();
      parts.push(...column.render(RATE_HZ));
    }
    const { warned } = hear(Float32Array.from(parts), RATE_HZ, 512);
    expect(warned.filter(({ code }) => code === 'slide-too-fast')).toEqual([]);
  });
});
