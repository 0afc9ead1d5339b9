import { describe, expect, it } from 'vitest';
import { SignalWatch } from '../../../src/capture/signal/signalWatch.ts';
import type { SignalFindings } from '../../../src/capture/signal/signalWatch.ts';
import { bandLimited } from '../../support/bandLimited.ts';
import { toneInNoise } from '../../support/tones.ts';

const RATE_HZ = 48_000;

const sounds = new Map<number, Float32Array>();

/** A fork in a room's noise, 10 s: 0.1 of full scale over noise of 0.002. */
function sound(sampleRateHz = RATE_HZ): Float32Array {
  const whole = { sampleRateHz, durationS: 10, frequencyHz: 512, amplitude: 0.1, decayTimeS: 8 };
  const samples = sounds.get(sampleRateHz) ?? toneInNoise({ ...whole, noiseRms: 0.002 }, 5);
  sounds.set(sampleRateHz, samples);
  return samples;
}

function findings(samples: Float32Array, sampleRateHz = RATE_HZ, block = 1024): SignalFindings {
  const watch = new SignalWatch(sampleRateHz);
  for (let at = 0; at < samples.length; at += block) watch.push(samples.subarray(at, at + block));
  watch.finish();
  return watch.findings;
}

const changed = (change: (sample: number, i: number) => number): Float32Array => sound().map(change);

describe('SignalWatch', () => {
  it.each([8000, 16_000, 44_100, 48_000, 96_000])('finds nothing wrong with raw sound at %d Hz', (rateHz) => {
    expect(findings(sound(rateHz), rateHz)).toMatchObject({
      clips: 0,
      flats: 0,
      dropouts: 0,
      offset: null,
      hum: null,
      edge: null,
      floorFallDb: null,
    });
  });

  it('finds nothing wrong with a quiet room in coarse 16-bit steps', () => {
    // Noise of a third of a step: about nine samples of ten are exactly 0.
    const room = toneInNoise(
      { sampleRateHz: RATE_HZ, durationS: 10, frequencyHz: 512, amplitude: 0, noiseRms: 1e-5 },
      4,
    );
    const coarse = room.map((sample) => Math.round(sample * 32_768) / 32_768);
    expect(coarse.filter((sample) => sample === 0).length / coarse.length).toBeGreaterThan(0.8);
    expect(findings(coarse)).toMatchObject({ clips: 0, flats: 0, dropouts: 0, edge: null });
  });

  it.each([4000, 8000, 16_000])(
    'names a band that ends at %d Hz, at 44 100 and 48 000 samples a second',
    (edgeHz) => {
      for (const rateHz of [44_100, 48_000]) {
        const { edge } = findings(
          bandLimited(sound(rateHz).subarray(0, 6 * rateHz), rateHz, 0.96 * edgeHz),
          rateHz,
        );
        expect(edge?.edgeHz).toBe(edgeHz);
        expect(edge?.fallDb).toBeGreaterThan(30);
      }
    },
  );

  it('does not take a microphone’s gentle roll-off for an edge', () => {
    let low = 0;
    // One pole at 5 kHz: 12 dB down at 20 kHz.
    const step = 1 - Math.exp((-2 * Math.PI * 5000) / RATE_HZ);
    const rolled = sound().map((sample) => (low += step * (sample - low)));
    expect(findings(rolled).edge).toBeNull();
  });

  it('counts the times at full scale', () => {
    const loud = sound().map((sample) => Math.max(-1, Math.min(1, 15 * sample)));
    // 512 Hz for 10 s, 1.5 times full scale and dying by e^(-10/8): clipped for 8 ln 1.5 = 3.2 s, two crests a period.
    const expected = 2 * 512 * 8 * Math.log(1.5);
    const { clips, flats } = findings(loud);
    expect(clips).toBeGreaterThan(0.85 * expected);
    expect(clips).toBeLessThan(1.05 * expected);
    expect(flats).toBe(0);
  });

  it('finds crests that are cut off below full scale', () => {
    const cut = changed((sample) => Math.max(-0.06, Math.min(0.06, sample)) * 4);
    const { clips, flats, largest } = findings(cut);
    expect(clips).toBe(0);
    expect(flats).toBeGreaterThan(1000);
    expect(largest).toBeCloseTo(0.24, 6);
  });

  it('counts gaps of exact zeros, and says when the first began', () => {
    const gaps = [2, 5.5, 7] as const;
    const gapped = changed((sample, i) => {
      // 441 samples, as an overrun device leaves them.
      return gaps.some((s) => i >= s * RATE_HZ && i < s * RATE_HZ + 441) ? 0 : sample;
    });
    const { dropouts, firstDropoutS, edge } = findings(gapped);
    expect(dropouts).toBe(gaps.length);
    expect(Math.abs((firstDropoutS ?? NaN) - 2)).toBeLessThan(0.03);
    expect(edge).toBeNull();
  });

  it('does not take digital silence before and after the sound for gaps', () => {
    const padded = new Float32Array(12 * RATE_HZ);
    padded.set(sound(), RATE_HZ);
    expect(findings(padded).dropouts).toBeLessThanOrEqual(1);
  });

  it('tells of an offset, with its size', () => {
    expect(findings(changed((sample) => sample + 0.05)).offset).toBeCloseTo(0.05, 3);
    expect(findings(changed((sample) => sample + 0.005)).offset).toBeNull();
  });

  it.each([50, 60] as const)('tells of loud hum at %d Hz, with its level', (mainsHz) => {
    const hummed = changed((sample, i) => sample + 0.05 * Math.sin((2 * Math.PI * mainsHz * i) / RATE_HZ));
    const { hum } = findings(hummed);
    expect(hum?.mainsHz).toBe(mainsHz);
    // 20 lg 0.05.
    expect(hum?.levelDb).toBeCloseTo(-26, 0);
  });

  it('tells of a floor that falls below the room’s', () => {
    const room = toneInNoise(
      { sampleRateHz: RATE_HZ, durationS: 12, frequencyHz: 512, amplitude: 0, noiseRms: 0.01 },
      9,
    );
    const suppressed = room.map((sample, i) => (i > 6 * RATE_HZ ? 0.1 * sample : sample));
    // A tenth is 20 dB.
    expect(findings(suppressed).floorFallDb).toBeCloseTo(20, 0);
    expect(
      findings(room.map((sample, i) => (i > 6 * RATE_HZ ? 0.5 * sample : sample))).floorFallDb,
    ).toBeNull();
  });

  it('gives the same in blocks of any size', () => {
    const hard = bandLimited(
      sound()
        .subarray(0, 6 * RATE_HZ)
        .map((sample, i) => (i % 70_000 < 300 ? 0 : Math.max(-1, Math.min(1, 14 * sample + 0.02)))),
      RATE_HZ,
      15_500,
    );
    const whole = findings(hard, RATE_HZ, hard.length);
    for (const block of [1, 127, 1000, 4096]) expect(findings(hard, RATE_HZ, block)).toEqual(whole);
  });

  it('spans nothing across lost sound', () => {
    const watch = new SignalWatch(RATE_HZ);
    const half = new Float32Array(60).fill(0);
    watch.push(sound().subarray(0, 4800));
    watch.push(half);
    watch.interrupt();
    watch.push(half);
    watch.push(sound().subarray(0, 4800));
    watch.finish();
    expect(watch.findings.dropouts).toBe(0);
  });
});
