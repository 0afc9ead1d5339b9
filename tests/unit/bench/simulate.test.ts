import { describe, expect, it } from 'vitest';
import { ColumnAtPitch, type Tube } from '../../bench/detector/column.ts';
import { lockIn } from '../../bench/detector/lockIn.ts';
import { Random, slowNoise } from '../../bench/detector/random.ts';
import { simulate } from '../../bench/detector/simulate.ts';
import { readWav, writeWav } from '../../bench/detector/wav.ts';

const smooth = { lossFactor: 1, endFactor: 1, temperatureC: 20 };

/** Length at which the steady flow out of the mouth is greatest, m, found on a grid of 0.02 mm. */
function loudestM(column: ColumnAtPitch, aroundM: number): number {
  let best = 0;
  let at = aroundM;
  for (let length = aroundM - 0.03; length < aroundM + 0.03; length += 0.00002) {
    const size = Math.hypot(...column.steadyFlow(length));
    if (size > best) [best, at] = [size, length];
  }
  return at;
}

describe('simulated column', () => {
  // Walls: Zwikker and Kosten's exact theory, 20 °C, computed, gives v - c at 256 and 512 Hz for these radii.
  it.each([
    [0.0125, 256, -2.754],
    [0.0125, 512, -1.952],
    [0.02, 256, -1.727],
    [0.02, 512, -1.223],
  ])('slows the wave as the exact wall theory says: radius %d m, %d Hz, %d m/s', (radiusM, hz, slowMps) => {
    const column = new ColumnAtPitch({ radiusM, closed: true, ...smooth }, hz);
    const freeMps = 331.3 * Math.sqrt(293.15 / 273.15);
    // 0.08 m/s: the wide-tube series is cut after its first term.
    expect(Math.abs(column.waveSpeedMps - freeMps - slowMps)).toBeLessThan(0.08);
  });

  it('is loudest at (2n - 1) v / 4f - e closed and n v / 2f - 2e open, within 1.5 mm', () => {
    for (const closed of [true, false]) {
      for (const radiusM of [0.01, 0.0175, 0.025]) {
        const tube: Tube = { radiusM, closed, ...smooth };
        const column = new ColumnAtPitch(tube, 512);
        // Levine and Schwinger 1948: e = 0.6133 a for low pitches, 0.60 a at ka = 0.3; bare rim.
        const endM = 0.607 * radiusM;
        for (const order of [1, 2, 3]) {
          const expectedM = closed
            ? ((2 * order - 1) * column.waveSpeedMps) / (4 * 512) - endM
            : (order * column.waveSpeedMps) / (2 * 512) - 2 * endM;
          expect(Math.abs(loudestM(column, expectedM) - expectedM)).toBeLessThan(0.0015);
        }
      }
    }
  });

  it('has the width at half power that follows from wall loss and radiation', () => {
    // [2 alpha L + (ka)² / 2] / k at a = 17.5 mm, 512 Hz: 2.7 / 5.4 / 8.2 mm at orders 1 / 2 / 3 (rounded alpha,
    // so 8 %).
    const column = new ColumnAtPitch({ radiusM: 0.0175, closed: true, ...smooth }, 512);
    [2.7, 5.4, 8.2].forEach((expectedMm, i) => {
      const widthMm = 2000 * column.halfWidthM(i + 1);
      expect(Math.abs(widthMm / expectedMm - 1)).toBeLessThan(0.08);
      const centre = loudestM(column, column.resonantLengthM(i + 1));
      const peak = Math.hypot(...column.steadyFlow(centre));
      const beside = Math.hypot(...column.steadyFlow(centre + widthMm / 2000));
      expect(Math.abs(beside / peak - Math.SQRT1_2)).toBeLessThan(0.03);
    });
  });

  it('settles, driven in time, at its steady flow, with the ring-up of its width', () => {
    const column = new ColumnAtPitch({ radiusM: 0.015, closed: true, ...smooth }, 512);
    const rateHz = 8000;
    const n = 4000;
    const lengthM = column.resonantLengthM(2);
    const flow = column.flow(new Float64Array(n).fill(lengthM), {
      rateHz,
      re: new Float64Array(n).fill(1),
      im: new Float64Array(n),
    });
    const steady = Math.hypot(...column.steadyFlow(lengthM));
    const size = (i: number): number => Math.hypot(flow.re[i], flow.im[i]);
    expect(Math.abs(size(n - 1) / steady - 1)).toBeLessThan(0.001);
    // Each round trip of 2 L / v keeps 1 - loss of the gap to the steady state; loss = 2 k times the half width.
    const loss = 2 * ((2 * Math.PI * 512) / column.waveSpeedMps) * column.halfWidthM(2);
    const timeS = (2 * lengthM) / column.waveSpeedMps / -Math.log(1 - loss);
    expect(Math.abs(size(Math.round(timeS * rateHz)) / steady - (1 - Math.exp(-1)))).toBeLessThan(0.05);
  });
});

describe('simulated recording', () => {
  it('peaks where the truth says, by a narrow lock-in on the render without noise', () => {
    let checked = 0;
    for (let seed = 1; seed <= 6; seed += 1) {
      const { samples, sampleRateHz, truth } = simulate(
        { condition: 'quiet', durationS: 20, clean: true },
        seed,
      );
      const band = lockIn(samples, sampleRateHz, truth.fork!.actualHz, 40, 500);
      for (const passage of truth.passages.filter((each) => each.audible && each.halfWidthS < 0.3)) {
        let best = 0;
        let atS = 0;
        for (let i = 0; i < band.re.length; i += 1) {
          const size = Math.hypot(band.re[i], band.im[i]);
          const near = Math.abs(i / band.rateHz - passage.timeS) < passage.halfWidthS;
          if (near && size > best) [best, atS] = [size, i / band.rateHz];
        }
        // The lock-in is 12 ms late; the fork's dying moves the peak of a slow passage forward a little.
        expect(Math.abs(atS - passage.timeS)).toBeLessThan(0.02 + 0.15 * passage.halfWidthS);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThanOrEqual(6);
  });

  it('rises by what was asked for, 6 to 20 dB, at the first order', () => {
    let checked = 0;
    for (let seed = 1; seed <= 12; seed += 1) {
      const { truth } = simulate({ condition: 'quiet', durationS: 16, nominalHz: 512, clean: true }, seed);
      expect(truth.riseDb).toBeGreaterThanOrEqual(6);
      expect(truth.riseDb).toBeLessThanOrEqual(20);
      for (const passage of truth.passages.filter((each) => each.audible && each.order === 1)) {
        // A quick passage ends before the column has rung up.
        if (passage.halfWidthS < 0.1) continue;
        expect(Math.abs(passage.riseDb - truth.riseDb!)).toBeLessThan(1);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThanOrEqual(2);
  });

  it('strikes once for each pass, and damps or takes the fork away before the next', () => {
    let passes = 0;
    for (let seed = 1; seed <= 4; seed += 1) {
      const { truth } = simulate({ condition: 'single-pass', durationS: 20, clean: true }, seed);
      for (const { startS, endS } of truth.soundings) {
        const within = truth.passages.filter(
          ({ timeS, audible }) => audible && timeS > startS && timeS < endS,
        );
        expect(within.length).toBeLessThanOrEqual(1);
        passes += within.length;
      }
    }
    expect(passes).toBeGreaterThanOrEqual(4);
  });

  it('gives the lowest and the highest forks tubes in which they resonate', () => {
    // From a quarter of the wavelength on, 1.34 m at 64 Hz, to the limits of what the page takes.
    for (const [condition, lowestHz, highestHz] of [
      ['lowest-forks', 64, 128],
      ['highest-forks', 2048, 4096],
    ] as const) {
      let audible = 0;
      for (let seed = 1; seed <= 4; seed += 1) {
        const { truth } = simulate({ condition, durationS: 18, clean: true }, seed);
        expect(truth.nominalHz).toBeGreaterThanOrEqual(lowestHz);
        expect(truth.nominalHz).toBeLessThanOrEqual(highestHz);
        audible += truth.passages.filter((passage) => passage.audible).length;
      }
      expect(audible).toBeGreaterThanOrEqual(2);
    }
  });

  it('dies away at the stated decay time', () => {
    const { samples, sampleRateHz, truth } = simulate(
      { condition: 'strike-only', durationS: 18, clean: true },
      3,
    );
    const band = lockIn(samples, sampleRateHz, truth.fork!.actualHz, 20, 100);
    const sounding = truth.soundings[0];
    const level = (timeS: number): number => {
      const i = Math.round(timeS * band.rateHz);
      return Math.log(Math.hypot(band.re[i], band.im[i]));
    };
    const from = sounding.startS + 0.3;
    const to = sounding.endS - 0.2;
    expect(to - from).toBeGreaterThan(0.5);
    const decayTimeS = (to - from) / (level(from) - level(to));
    expect(Math.abs(decayTimeS / truth.fork!.decayTimeS - 1)).toBeLessThan(0.02);
  });

  it('is the same again for the same seed and another for another', () => {
    const first = simulate({ condition: 'hum', durationS: 8 }, 7);
    const again = simulate({ condition: 'hum', durationS: 8 }, 7);
    const other = simulate({ condition: 'hum', durationS: 8 }, 8);
    expect(Buffer.from(again.samples.buffer).equals(Buffer.from(first.samples.buffer))).toBe(true);
    expect(again.truth).toEqual(first.truth);
    expect(other.truth.fork).not.toEqual(first.truth.fork);
  });

  it('survives a WAV file within half a step of 16 bits', () => {
    const { samples, sampleRateHz } = simulate({ condition: 'knocks', durationS: 6 }, 1);
    const back = readWav(writeWav(samples, sampleRateHz))!;
    expect(back.sampleRateHz).toBe(sampleRateHz);
    expect(back.samples.length).toBe(samples.length);
    let worst = 0;
    for (let i = 0; i < samples.length; i += 1) {
      worst = Math.max(worst, Math.abs(samples[i] - back.samples[i]));
    }
    expect(worst).toBeLessThanOrEqual(0.5 / 32768 + 1e-9);
  });

  it('makes slow noise of the root mean square that was asked for', () => {
    const noise = slowNoise(new Random(5), 400_000, 1000, 4, 0.2);
    const rms = Math.sqrt(noise.reduce((sum, value) => sum + value * value, 0) / noise.length);
    // About 5000 independent values: 3 % is three standard deviations.
    expect(Math.abs(rms / 0.2 - 1)).toBeLessThan(0.05);
  });
});
