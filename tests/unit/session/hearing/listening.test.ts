import { describe, expect, it } from 'vitest';
import { analyseRecording } from '../../../../src/session/recording/analyseRecording.ts';
import { Listening } from '../../../../src/session/hearing/listening.ts';
import type { ListeningUpdate } from '../../../../src/session/hearing/listeningTypes.ts';
import type { Resonance } from '../../../../src/session/hearing/listeningTypes.ts';
import { simulate } from '../../../bench/detector/simulate.ts';
import type { Passage } from '../../../bench/detector/truth.ts';
import { hear } from '../../../support/hear.ts';
import { addStrikes, toneInNoise } from '../../../support/tones.ts';
import { resonanceReason } from '../../../../src/words/resonances.ts';
import { reportWarnings } from '../../../../src/words/listening.ts';

const slide = simulate(
  { condition: 'quiet', durationS: 18, clean: true, nominalHz: 512, sampleRateHz: 44_100 },
  3,
);
const fork = { nominalHz: 512, toleranceHz: 2 };

/**
 * For each audible passage, how many flags stand within 0.35 s of it; and how many stand where nothing was passed at
 * all. As in the benchmark, a passage that isn't counted (the tube turned back on it) may be flagged or not.
 */
function matchFlags(flags: readonly Resonance[], passages: readonly Passage[]) {
  const isAt = (flag: Resonance, passage: Passage): boolean =>
    Math.abs(flag.timeS - passage.timeS) < Math.max(0.35, passage.halfWidthS);
  const audible = passages.filter((passage) => passage.audible);
  return {
    counts: audible.map((passage) => flags.filter((flag) => isAt(flag, passage)).length),
    elsewhere: flags.filter((flag) => !passages.some((passage) => isAt(flag, passage))).length,
  };
}

/** What listens is told how to find a centre; the one that is compared with isn't. */
const withoutCentre = (resonance: Resonance): Resonance => ({
  ...resonance,
  centre: null,
});

describe('listening to a clean slide', () => {
  const audible = slide.truth.passages.filter((passage) => passage.audible);
  const heard = hear(slide.samples, slide.sampleRateHz, 512);

  it('has something to find', () => {
    expect(audible.length).toBeGreaterThanOrEqual(2);
  });

  it.each(['live', 'at the second look'])('flags each passage once and nothing else, %s', (when) => {
    const flags = when === 'live' ? heard.flagged : heard.report.resonances;
    const { counts, elsewhere } = matchFlags(flags, slide.truth.passages);
    expect(counts).toEqual(audible.map(() => 1));
    expect(elsewhere).toBe(0);
  });

  it('flags live after the maximum, never before it, within two seconds', () => {
    for (const flag of heard.flagged) {
      expect((flag.flaggedAtS ?? NaN) - flag.timeS).toBeGreaterThan(0);
      expect((flag.flaggedAtS ?? NaN) - flag.timeS).toBeLessThan(2);
    }
  });

  it('gives each flag its evidence', () => {
    for (const flag of [...heard.flagged, ...heard.report.resonances]) {
      expect(flag.confidence).toBeGreaterThan(0.3);
      expect(flag.confidence).toBeLessThanOrEqual(1);
      expect(flag.halfPowerStartS).toBeLessThan(flag.timeS);
      expect(flag.halfPowerEndS).toBeGreaterThan(flag.timeS);
      expect(flag.riseStandardUncertaintyDb).toBeGreaterThan(0);
      expect(flag.phaseSwingRad).toBeGreaterThan(0.3);
      expect(resonanceReason(flag)).toMatch(
        /dB above the fork alone, .* dB above the room, phase turned \d+°/,
      );
    }
  });

  it('measures the fork’s pitch within its stated uncertainty', () => {
    const { measuredHz, standardUncertaintyHz } = heard.report.fork;
    const error = Math.abs((measuredHz ?? NaN) - (slide.truth.fork?.actualHz ?? NaN));
    expect(error).toBeLessThan(0.02);
    expect(error).toBeLessThan(2.5 * (standardUncertaintyHz ?? NaN));
  });

  it.each([1, 127, 128, slide.samples.length])(
    'gives the same report, points and live flags in blocks of %d as of 4096',
    (blockSize) => {
      const other = hear(slide.samples, slide.sampleRateHz, 512, blockSize);
      expect(other.report).toEqual(heard.report);
      expect(other.flagged).toEqual(heard.flagged);
      expect(other.points).toEqual(heard.points);
      expect(other.warned).toEqual(heard.warned);
    },
    60_000,
  );

  it('gives from a file what it gave live', () => {
    const { check, following, ...report } = analyseRecording(slide.samples, {
      sampleRateHz: slide.sampleRateHz,
      fork,
    });
    expect([check, following]).toEqual([null, null]);
    expect({ ...report, resonances: report.resonances.map(withoutCentre) }).toEqual(heard.report);
    const live = analyseRecording(slide.samples, { sampleRateHz: slide.sampleRateHz, fork, live: true });
    expect(live.resonances.map(withoutCentre)).toEqual([...heard.flagged].sort((a, b) => a.timeS - b.timeS));
    expect(live.resonances.every((resonance) => resonance.flaggedAtS !== null)).toBe(true);
  });

  it('guides back: the way to the best level is never above it, and shrinks to nothing there', () => {
    const listening = new Listening({ sampleRateHz: slide.sampleRateHz, fork });
    const below: number[] = [];
    for (let start = 0; start < slide.samples.length; start += 4096) {
      const samples = slide.samples.subarray(start, start + 4096);
      const { guidance } = listening.push({ samples, startFrame: start, discontinuity: false });
      if (guidance !== null) below.push(guidance.belowBestDb);
    }
    expect(below.length).toBeGreaterThan(10);
    expect(Math.max(...below)).toBeLessThanOrEqual(0);
    expect(Math.min(...below)).toBeLessThan(-6);
  });

  it('flags nothing across lost sound, and tells of it', () => {
    const [passage] = audible;
    if (passage === undefined) throw new Error('no passage');
    const rate = slide.sampleRateHz;
    const lostFrom = Math.round((passage.timeS - 0.05) * rate);
    const lostTo = lostFrom + Math.round(0.1 * rate);
    const listening = new Listening({ sampleRateHz: rate, fork });
    listening.push({ samples: slide.samples.subarray(0, lostFrom), startFrame: 0, discontinuity: false });
    const update = listening.push({
      samples: slide.samples.subarray(lostTo),
      startFrame: lostTo,
      discontinuity: true,
    });
    listening.finish();
    const report = listening.offlineReport();
    for (const flags of [listening.resonances, report.resonances]) {
      expect(flags.filter((flag) => Math.abs(flag.timeS - passage.timeS) < 0.3)).toEqual([]);
    }
    // Time hasn't drifted: the other passages stand where they are.
    const others = audible.filter((other) => Math.abs(other.timeS - passage.timeS) > 1.5);
    expect(matchFlags(report.resonances, others).counts).toEqual(others.map(() => 1));
    expect(report.durationS).toBeCloseTo(slide.samples.length / rate, 6);
    expect(update.warnings.map(({ code }) => code)).toContain('gap');
    expect(reportWarnings(report).find(({ code }) => code === 'gap')?.message).toMatch(/lost once, first at/);
  });

  it.each([127, 1000, 100_000])(
    'tells the same around lost sound in blocks of %d as of 4096',
    (blockSize) => {
      const rate = slide.sampleRateHz;
      // Lost at places that fall into no step: 1.3 s that are loud, and 10 ms.
      const losses = [
        [4.0001 * rate, 5.3 * rate],
        [9.77 * rate, 9.78 * rate],
      ].map((edges) => edges.map(Math.round));
      const told = (size: number): unknown => {
        const listening = new Listening({ sampleRateHz: rate, fork });
        const updates: ListeningUpdate[] = [];
        let [from, discontinuity] = [0, false];
        for (const [until = 0, next = 0] of [...losses, [slide.samples.length, 0]]) {
          for (let start = from; start < until; start += size) {
            const samples = slide.samples.subarray(start, Math.min(until, start + size));
            updates.push(listening.push({ samples, startFrame: start, discontinuity }));
            discontinuity = false;
          }
          [from, discontinuity] = [next, true];
        }
        updates.push(listening.finish());
        return {
          points: updates.flatMap(({ points }) => points),
          warnings: updates.flatMap(({ warnings }) => warnings),
          flagged: [...listening.resonances],
          report: listening.offlineReport(),
        };
      };
      expect(told(blockSize)).toEqual(told(4096));
    },
  );
});

describe('listening where there is nothing to flag', () => {
  const sampleRateHz = 8000;
  const quiet = (durationS: number, noiseRms: number): Float32Array =>
    toneInNoise({ sampleRateHz, durationS, frequencyHz: 512, amplitude: 0, noiseRms }, 8);

  it.each([
    ['silence', quiet(20, 0)],
    ['noise', quiet(40, 0.02)],
  ])('flags nothing in %s, and finds no fork', (_, samples) => {
    const { flagged, report } = hear(samples, sampleRateHz, 512);
    expect(flagged).toEqual([]);
    expect(report.resonances).toEqual([]);
    expect(report.soundings).toEqual([]);
    expect(report.fork.measuredHz).toBeNull();
  });

  it('flags nothing while a fork is struck, sounds steadily, is struck again and damped', () => {
    const samples = quiet(24, 0.001);
    addStrikes(samples, sampleRateHz, 512.2, [
      { strikeS: 2, amplitude: 0.05, decayTimeS: 9 },
      { strikeS: 11, amplitude: 0.06, decayTimeS: 9, dampedS: 19 },
    ]);
    const { flagged, report } = hear(samples, sampleRateHz, 512);
    expect(flagged).toEqual([]);
    expect(report.resonances).toEqual([]);
    expect(report.soundings).toHaveLength(2);
    expect(Math.abs((report.fork.measuredHz ?? NaN) - 512.2)).toBeLessThan(0.005);
  });

  it('says how long it listened, whatever is left over', () => {
    const { report } = hear(quiet(3.21, 0.01), sampleRateHz, 512, 777);
    expect(report.durationS).toBeCloseTo(3.21, 9);
  });
});

describe('live soundings', () => {
  const SAMPLE_RATE_HZ = 8000;

  it('are told once each: struck, struck again while sounding, damped, and nothing after', () => {
    const samples = toneInNoise(
      { sampleRateHz: SAMPLE_RATE_HZ, durationS: 24, frequencyHz: 512, amplitude: 0, noiseRms: 0.001 },
      7,
    );
    addStrikes(samples, SAMPLE_RATE_HZ, 512, [
      { strikeS: 1, amplitude: 0.03, decayTimeS: 10, dampedS: 5 },
      { strikeS: 7, amplitude: 0.02, decayTimeS: 10 },
      { strikeS: 12, amplitude: 0.03, decayTimeS: 10, dampedS: 16 },
    ]);
    const { soundings } = hear(samples, SAMPLE_RATE_HZ, 512);
    expect(soundings.map(({ index }) => index)).toEqual([1, 2, 3]);
    const times = soundings.flatMap(({ startS, endS }) => [startS, endS ?? NaN]);
    [1, 5, 7, 12, 12, 16].forEach((timeS, i) => {
      expect(Math.abs((times[i] ?? NaN) - timeS)).toBeLessThan(0.1);
    });
  });

  it.each(['talk-0', 'turning', 'pause-and-return'] as const)(
    'of a simulated recording, %s, are as many as are found afterwards, give or take one',
    (condition) => {
      const { samples, sampleRateHz, truth } = simulate({ condition, durationS: 20 }, 4);
      const { soundings, report } = hear(samples, sampleRateHz, truth.nominalHz);
      expect(soundings.length).toBeGreaterThan(0);
      expect(Math.abs(soundings.length - report.soundings.length)).toBeLessThanOrEqual(1);
    },
  );
});
