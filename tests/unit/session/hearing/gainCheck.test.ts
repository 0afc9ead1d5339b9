import { describe, expect, it } from 'vitest';
import { judgeGain } from '../../../../src/session/hearing/gainCheck.ts';
import { REWRITTEN_DB, STEADY_DB } from '../../../../src/session/hearing/gainLimits.ts';
import type { GainAnswer } from '../../../../src/session/hearing/gainCheck.ts';
import { Random } from '../../../bench/detector/random.ts';
import { generatedVoice } from '../../../bench/detector/voices/generatedVoice.ts';
import { hear } from '../../../support/hear.ts';
import { addStrikes, toneInNoise } from '../../../support/tones.ts';

const RATE_HZ = 16_000;
const FORK_HZ = 512;

interface Course {
  readonly talk?: boolean;
  readonly seed?: number;
  readonly amplitude?: number;
  readonly strikes?: readonly { readonly strikeS: number; readonly amplitude: number }[];
  /** The gain that something applies at a time, s. */
  readonly gain?: (timeS: number) => number;
}

/** Two seconds of room, a strike, twelve seconds of decay; talk from four seconds on. */
function answer({
  talk = true,
  seed = 1,
  amplitude = 0.1,
  strikes = [{ strikeS: 2, amplitude }],
  gain = () => 1,
}: Course): GainAnswer {
  const samples = toneInNoise(
    { sampleRateHz: RATE_HZ, durationS: 14, frequencyHz: FORK_HZ, amplitude: 0, noiseRms: 0.0005 },
    seed,
  );
  addStrikes(
    samples,
    RATE_HZ,
    FORK_HZ,
    strikes.map((strike) => ({ ...strike, decayTimeS: 7 })),
  );
  if (talk) {
    const voice = generatedVoice(new Random(seed), 10 * RATE_HZ, RATE_HZ);
    voice.forEach((value, i) => (samples[4 * RATE_HZ + i] = (samples[4 * RATE_HZ + i] ?? 0) + 0.02 * value));
  }
  return judgeGain(
    hear(
      samples.map((value, i) => value * gain(i / RATE_HZ)),
      RATE_HZ,
      FORK_HZ,
    ).points,
  );
}

describe('judgeGain', () => {
  it.each([1, 2, 3])('finds a raw level steady while somebody talks (talker %d)', (seed) => {
    const got = answer({ seed });
    expect(got).toMatchObject({ verdict: 'steady', missing: null });
    expect(got.departureDb).toBeLessThan(STEADY_DB);
  });

  it('asks for talk, because a quiet check reveals nothing', () => {
    expect(answer({ talk: false })).toMatchObject({ verdict: 'cannot-tell', missing: 'talk' });
  });

  it('asks for a strike, and for time', () => {
    expect(judgeGain([])).toMatchObject({ verdict: 'cannot-tell', missing: 'strike' });
    expect(answer({ strikes: [{ strikeS: 11, amplitude: 0.1 }] })).toMatchObject({
      verdict: 'cannot-tell',
      missing: 'time',
    });
  });

  it('asks for a stronger fork rather than clear a faint one', () => {
    expect(answer({ amplitude: 0.001 }).verdict).toBe('cannot-tell');
  });

  it('begins anew with the strike that follows a faint try', () => {
    const strikes = [
      { strikeS: 0.5, amplitude: 0.02 },
      { strikeS: 3.5, amplitude: 0.1 },
    ];
    expect(answer({ strikes }).verdict).toBe('steady');
  });

  it.each([
    ['a gain that steps by 6 dB', (t: number) => (t > 7 ? 2 : 1)],
    ['a gain that swells by 2 dB a second', (t: number) => 10 ** (Math.max(0, t - 4) / 10)],
    ['a gain that ducks under talk', (t: number) => (t > 4 && t % 2.4 < 1.2 ? 0.5 : 1)],
    ['a suppression that eats a steady tone', (t: number) => 10 ** -Math.min(1, Math.max(0, (t - 3) / 2.5))],
  ])('finds %s', (_, gain) => {
    const got = answer({ gain });
    expect(got.verdict).toBe('rewritten');
    expect(got.departureDb).toBeGreaterThan(REWRITTEN_DB);
  });
});
