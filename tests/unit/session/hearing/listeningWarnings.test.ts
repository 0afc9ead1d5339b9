import { describe, expect, it } from 'vitest';
import type { ListeningWarning } from '../../../../src/session/hearing/listeningTypes.ts';
import { listeningWarningWords } from '../../../../src/words/listening.ts';
import { simulate } from '../../../bench/detector/simulate.ts';
import { hear } from '../../../support/hear.ts';
import { addStrikes, toneInNoise } from '../../../support/tones.ts';

const SAMPLE_RATE_HZ = 8000;
const FORK_HZ = 512;

const room = (durationS: number, noiseRms = 0.0005): Float32Array =>
  toneInNoise({ sampleRateHz: SAMPLE_RATE_HZ, durationS, frequencyHz: FORK_HZ, amplitude: 0, noiseRms }, 31);

const warningsOf = (samples: Float32Array): readonly ListeningWarning[] =>
  hear(samples, SAMPLE_RATE_HZ, FORK_HZ).report.warnings;

const codes = (samples: Float32Array): string[] => warningsOf(samples).map(({ code }) => code);

const find = (
  warnings: readonly ListeningWarning[],
  code: ListeningWarning['code'],
): { readonly message: string; readonly timeS: number | null } => {
  const found = warnings.find((warning) => warning.code === code);
  if (found === undefined) throw new Error(`no ${code} among ${warnings.map((w) => w.code).join(', ')}`);
  return { message: listeningWarningWords(found), timeS: found.timeS };
};

/** A fork that sounds for 10 s in a quiet room. */
function steadyFork(offsetHz = 0.1, amplitude = 0.05): Float32Array {
  const samples = room(14);
  addStrikes(samples, SAMPLE_RATE_HZ, FORK_HZ + offsetHz, [
    { strikeS: 2, amplitude, decayTimeS: 10, dampedS: 12 },
  ]);
  return samples;
}

describe('warnings of a finished listening', () => {
  it('are none for a fork in a quiet room', () => {
    expect(warningsOf(steadyFork())).toEqual([]);
  });

  it.each([-32, 5, 40, 192])(
    'name the tone that was there when it is %d Hz off what the bench was set to, and flag no fork',
    (offsetHz) => {
      const { report } = hear(steadyFork(offsetHz), SAMPLE_RATE_HZ, FORK_HZ);
      expect(report.fork.measuredHz).toBeNull();
      expect(report.warnings.map(({ code }) => code)).toEqual(['no-fork-heard']);
      const named = /one at about (\d+) Hz/.exec(find(report.warnings, 'no-fork-heard').message)?.[1];
      // Half of the last digit shown, and the line's own accuracy.
      expect(Math.abs(Number(named) - FORK_HZ - offsetHz)).toBeLessThanOrEqual(1);
    },
  );

  it('name no tone where people only talk', () => {
    const { samples, sampleRateHz, truth } = simulate({ condition: 'talk-alone', durationS: 14 }, 3);
    const { report } = hear(samples, sampleRateHz, truth.nominalHz);
    for (const warning of report.warnings) expect(listeningWarningWords(warning)).not.toMatch(/one at about/);
  });

  it('name the beat of another fork of nearly the same pitch', () => {
    const samples = steadyFork();
    addStrikes(samples, SAMPLE_RATE_HZ, FORK_HZ + 0.9, [{ strikeS: 1, amplitude: 0.02, decayTimeS: 20 }]);
    const { message, timeS } = find(warningsOf(samples), 'beating');
    // 0.9 − 0.1 Hz.
    expect(Number(/([\d.]+) Hz above yours/.exec(message)?.[1])).toBeCloseTo(0.8, 1);
    expect(message).toMatch(/damped|died away/);
    expect(timeS).toBeGreaterThan(2);
  });

  it('don’t take a hand that trembles at 1.5 Hz for another fork', () => {
    const samples = steadyFork();
    for (let i = 0; i < samples.length; i += 1) {
      samples[i] = samples[i] * (1 + 0.2 * Math.sin((2 * Math.PI * 1.5 * i) / SAMPLE_RATE_HZ));
    }
    expect(codes(samples)).toEqual([]);
  });

  it('tell of a fork that is turned about its stem', () => {
    const samples = room(14, 0);
    addStrikes(samples, SAMPLE_RATE_HZ, FORK_HZ, [
      { strikeS: 2, amplitude: 0.05, decayTimeS: 10, dampedS: 12 },
    ]);
    // A quadrupole, cos 2θ, turned once in 6 s from 4 s on: nulls every 1.5 s.
    for (let i = 0; i < samples.length; i += 1) {
      const angle = (2 * Math.PI * Math.max(0, i / SAMPLE_RATE_HZ - 4)) / 6;
      samples[i] = samples[i] * Math.cos(2 * angle);
    }
    const { message, timeS } = find(warningsOf(samples), 'fork-turned');
    expect(message).toMatch(/keep one prong facing the mouth/);
    expect(Math.abs((timeS ?? NaN) - 4.75)).toBeLessThan(0.15);
  });

  it('tell of a gain that rides on the sound', () => {
    const samples = room(20, 0.003);
    addStrikes(
      samples,
      SAMPLE_RATE_HZ,
      FORK_HZ,
      [2, 6, 10, 14].map((strikeS) => ({ strikeS, amplitude: 0.05, decayTimeS: 8, dampedS: strikeS + 2 })),
    );
    const raw = hear(samples, SAMPLE_RATE_HZ, FORK_HZ);
    expect([...raw.warned, ...raw.report.warnings].map(({ code }) => code)).not.toContain('gain-pumping');
    let mean = 0.003;
    for (let i = 0; i < samples.length; i += 1) {
      const size = Math.abs(samples[i]);
      mean += (size > mean ? 1 / 240 : 1 / 4800) * (size - mean);
      samples[i] = (samples[i] * 0.05) / Math.max(mean, 0.002);
    }
    const pumped = hear(samples, SAMPLE_RATE_HZ, FORK_HZ);
    // At once when the sounding ends, and again for the whole.
    for (const told of [pumped.warned, pumped.report.warnings]) {
      expect(find(told, 'gain-pumping').message).toMatch(/Turn off automatic gain/);
    }
  });

  it('tell of sound that is too faint, in per cent of full scale', () => {
    const samples = steadyFork(0.1, 0.05).map((sample) => sample / 50);
    expect(find(warningsOf(samples), 'too-faint').message).toMatch(/0\.1\d % of full scale.*gain/);
  });

  it('tell of clipping, and only of clipping, when a sine is cut off', () => {
    const samples = steadyFork(0.1, 1.6).map((sample) => Math.max(-1, Math.min(1, sample)));
    expect(find(warningsOf(samples), 'clipping').message).toMatch(/too loud.*(away|gain down)/);
    expect(codes(steadyFork(0.1, 0.95))).not.toContain('clipping');
  });

  it('tell of silence, of no fork, and of a recording that is too short', () => {
    expect(codes(new Float32Array(3 * SAMPLE_RATE_HZ))).toEqual(['silent', 'no-fork-heard']);
    expect(find(warningsOf(room(8, 0.02)), 'no-fork-heard').message).toMatch(/within 2\.0 Hz of 512 Hz/);
    expect(codes(steadyFork().subarray(2 * SAMPLE_RATE_HZ, 2.8 * SAMPLE_RATE_HZ))).toEqual(['too-short']);
  });

  it('tell of a fork off its stamp, with pitch and difference', () => {
    const { message } = find(warningsOf(steadyFork(1.7)), 'off-stamp');
    expect(message).toMatch(/513\.70 Hz, 1\.70 Hz above its stamp/);
    // 1.28 Hz is what makers grant at 512 Hz.
    expect(codes(steadyFork(-1.1))).toEqual([]);
  });

  it('tell of a slide that is too fast for the column to ring up, not of a slow one', () => {
    const make = (condition: 'fast-slide' | 'slow-slide', seed: number): string[] => {
      const { samples, sampleRateHz, truth } = simulate(
        { condition, clean: true, durationS: 16, sampleRateHz: 44_100, nominalHz: 512 },
        seed,
      );
      return hear(samples, sampleRateHz, truth.nominalHz).report.warnings.map(({ code }) => code);
    };
    expect(make('fast-slide', 5)).toContain('slide-too-fast');
    expect(make('slow-slide', 4)).not.toContain('slide-too-fast');
  });
});
