import { describe, expect, it } from 'vitest';
import { Random } from '../../bench/detector/random.ts';
import { talk } from '../../bench/detector/talk.ts';
import { chooseVoices } from '../../bench/detector/voices/chooseVoices.ts';
import { generatedVoice } from '../../bench/detector/voices/generatedVoice.ts';
import { slideRecording } from '../../support/slideRecording.ts';
import { LONG_TERM_SPEECH, thirdOctavesDb } from '../../support/thirdOctaves.ts';

const RATE_HZ = 48_000;

/** Levels of pieces of 50 ms, dB re full scale, rising. */
function pieceLevelsDb(samples: Float32Array): number[] {
  const piece = 0.05 * RATE_HZ;
  return Array.from({ length: Math.floor(samples.length / piece) }, (_, i) => {
    const part = samples.subarray(i * piece, (i + 1) * piece);
    return 10 * Math.log10(part.reduce((sum, value) => sum + value * value, 0) / piece);
  }).sort((one, other) => one - other);
}

/** The longest run of one and the same value. */
function longestRun(samples: Float32Array): number {
  let longest = 1;
  let run = 1;
  for (let i = 1; i < samples.length; i += 1) {
    run = samples[i] === samples[i - 1] ? run + 1 : 1;
    longest = Math.max(longest, run);
  }
  return longest;
}

describe('the generated voice', () => {
  it.each([
    [48_000, 16_000],
    [16_000, 6300],
  ])('has the long-term spectrum of talk, at %d samples a second', (sampleRateHz, upToHz) => {
    const voices = Array.from({ length: 12 }, (_, seed) =>
      generatedVoice(new Random(seed + 1), 10 * sampleRateHz, sampleRateHz),
    );
    const expected = LONG_TERM_SPEECH.filter(([hz]) => hz <= upToHz);
    const bands = thirdOctavesDb(
      voices,
      sampleRateHz,
      expected.map(([hz]) => hz),
    );
    const offDb = expected.map(([, level], i) => bands[i] - level);
    // Real talkers differ by some dB: 6 dB in a band, 2.5 dB on average.
    for (const [i, off] of offDb.entries()) expect(Math.abs(off), `${expected[i]?.[0]} Hz`).toBeLessThan(6);
    expect(offDb.reduce((sum, off) => sum + Math.abs(off), 0) / offDb.length).toBeLessThan(2.5);
  });

  it('comes and goes as talk does, and is never silent as only a file is', () => {
    const said = generatedVoice(new Random(5), 20 * RATE_HZ, RATE_HZ);
    expect(longestRun(said)).toBeLessThan(3);
    const levels = pieceLevelsDb(said);
    const at = (part: number): number => levels[Math.floor(part * (levels.length - 1))];
    // A breath is heard in the pauses: no piece is 60 dB below the talk.
    expect(levels[0]).toBeGreaterThan(-60);
    // Pauses: a tenth of the time at least 25 dB down. Syllables: peaks 4 to 12 dB above the mean.
    expect(at(0.1)).toBeLessThan(-25);
    expect(at(0.98)).toBeGreaterThan(4);
    expect(at(0.98)).toBeLessThan(12);
  });

  it('says the same again for the same seed, and something else for another', () => {
    const say = (seed: number): Buffer =>
      Buffer.from(generatedVoice(new Random(seed), RATE_HZ, RATE_HZ).buffer);
    expect(say(3).equals(say(3))).toBe(true);
    expect(say(3).equals(say(4))).toBe(false);
  });

  it('is who talks where nobody else is named', () => {
    const own = talk(new Random(9), RATE_HZ, RATE_HZ, 2);
    const named = talk(new Random(9), RATE_HZ, RATE_HZ, 2, chooseVoices('generated'));
    expect(Buffer.from(own.buffer).equals(Buffer.from(named.buffer))).toBe(true);
  });
});

describe('voices named by an option', () => {
  it('are refused where the word is none of them, with the words that are', () => {
    expect(() => chooseVoices('loud')).toThrow('--voices: generated, recorded, synthesised; got "loud".');
  });
});

describe('a recorded slide', () => {
  it('has a room’s floor and a microphone’s own noise between the words', () => {
    const { samples } = slideRecording({ forkHz: 512, closed: true, seed: 3, talkDb: -24 });
    const levels = pieceLevelsDb(samples);
    // The quietest twentieth of a second: the room at -65 dB, give or take what noise does in so short a time.
    expect(levels[0]).toBeGreaterThan(-70);
    expect(levels[0]).toBeLessThan(-60);
    expect(longestRun(samples)).toBeLessThan(3);
    // Above 16 kHz there is still the microphone.
    const [top] = thirdOctavesDb([samples.subarray(0, RATE_HZ)], RATE_HZ, [17_500]);
    expect(top).toBeGreaterThan(20);
  });
});
