import { describe, expect, it } from 'vitest';
import { playedNote } from '../../../../src/resonance/passages/playedNote.ts';
import { viewOf } from '../../../../src/resonance/toneView.ts';
import { ToneSeries } from '../../../../src/tone/toneSeries.ts';

const RATE_HZ = 100;
const PEAK_S = 5;
const HALF_WIDTH_S = 0.2;
const GAP_S = 0.4;
const LN_PER_DB = Math.LN10 / 10;
/** Frames of the side bands a second. */
const FRAMES_PER_S = 12.5;

interface Sound {
  readonly levelDb?: (timeS: number) => number;
  readonly offsetHz?: (timeS: number) => number;
  /** Density of the far side bands, mean square per Hz. */
  readonly far?: (timeS: number) => number;
}

/** What a passage at 5 s has of a played note, in 10 s of tone. */
function noteIn(
  { levelDb = () => 0, offsetHz = () => 0, far = () => 1e-9 }: Sound,
  lastIndex = 10 * RATE_HZ - 1,
) {
  const series = new ToneSeries(RATE_HZ, 50);
  let phase = 0;
  for (let k = 0; k < 10 * RATE_HZ; k += 1) {
    const amplitude = 10 ** (levelDb(k / RATE_HZ) / 20);
    phase += (2 * Math.PI * offsetHz(k / RATE_HZ)) / RATE_HZ;
    series.pushValues([amplitude * Math.cos(phase)], [amplitude * Math.sin(phase)], 1);
  }
  for (let frame = 0; frame < 10 * FRAMES_PER_S; frame += 1) {
    series.sideBands.push({ near: 1e-9, far: far(frame / FRAMES_PER_S), floor: 1e-9 });
  }
  return playedNote(viewOf(series, 0, series.length, 0), {
    peakIndex: PEAK_S * RATE_HZ,
    middle: PEAK_S * RATE_HZ,
    halfWidth: HALF_WIDTH_S * RATE_HZ,
    gap: GAP_S * RATE_HZ,
    lastIndex,
  });
}

describe('what a passage has of a played note', () => {
  it('is an attack where a tone begins, as high as it jumps', () => {
    const { attack, release } = noteIn({ levelDb: (timeS) => (timeS < PEAK_S - 0.15 ? -12 : 0) });
    expect(attack).toBeCloseTo(12 * LN_PER_DB, 6);
    expect(release).toBe(0);
  });

  it('is a release where it is damped', () => {
    const { attack, release } = noteIn({ levelDb: (timeS) => (timeS > PEAK_S + 0.15 ? -20 : 0) });
    expect(release).toBeCloseTo(20 * LN_PER_DB, 6);
    expect(attack).toBe(0);
  });

  it('is little of either in a resonance: the power 1/(1 + x²) changes by 1 / half width a second at most', () => {
    const { attack, release } = noteIn({
      levelDb: (timeS) => -10 * Math.log10(1 + ((timeS - PEAK_S) / HALF_WIDTH_S) ** 2),
    });
    // 60 ms lie between the stretches.
    for (const edge of [attack, release]) {
      expect(edge).toBeLessThan(0.06 / HALF_WIDTH_S + 0.01);
      expect(edge).toBeGreaterThan(0.2);
    }
  });

  it('is a burst beside the tone, and none where the room stays as it is', () => {
    const pluck = noteIn({ far: (timeS) => (timeS > PEAK_S - 0.4 && timeS < PEAK_S - 0.1 ? 1e-6 : 1e-9) });
    // From 1 to 1000; where a frame straddles the edge a stretch holds a little of both.
    expect(pluck.burst).toBeGreaterThan(0.7 * Math.log(1000));
    expect(pluck.burst).toBeLessThan(Math.log(1000) + 1e-6);
    expect(noteIn({}).burst).toBeCloseTo(0, 6);
  });

  it('is a frequency beside that of the fork, before and after', () => {
    const { offBefore, offAfter } = noteIn({ offsetHz: (timeS) => (timeS < PEAK_S ? -3 : 1.5) });
    expect(Math.exp(offBefore) - 0.05).toBeCloseTo(3, 6);
    expect(Math.exp(offAfter) - 0.05).toBeCloseTo(1.5, 6);
    const fork = noteIn({});
    expect(Math.exp(fork.offBefore)).toBeCloseTo(0.05, 6);
    expect(Math.exp(fork.offAfter)).toBeCloseTo(0.05, 6);
  });

  it('says nothing of what comes after the last value that may be used', () => {
    const lastIndex = PEAK_S * RATE_HZ + 60;
    const later = (timeS: number): boolean => timeS * RATE_HZ > lastIndex;
    const changed = noteIn(
      { levelDb: (timeS) => (later(timeS) ? -40 : 0), offsetHz: (timeS) => (later(timeS) ? 5 : 0) },
      lastIndex,
    );
    expect(changed).toEqual(noteIn({}, lastIndex));
  });
});
