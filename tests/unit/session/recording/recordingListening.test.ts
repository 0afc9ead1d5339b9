import { describe, expect, it } from 'vitest';
import { joinReports } from '../../../../src/session/recording/joinReports.ts';
import type { PartReport } from '../../../../src/session/recording/joinReports.ts';
import { Listening } from '../../../../src/session/hearing/listening.ts';
import type { ListeningLike } from '../../../../src/session/hearing/listeningLike.ts';
import type { ListeningReport, ListeningWarning } from '../../../../src/session/hearing/listeningTypes.ts';
import { RecordingListening } from '../../../../src/session/recording/recordingListening.ts';
import { simulate } from '../../../bench/detector/simulate.ts';
import { passageAt, soundingOf } from '../../../support/heardParts.ts';
import { listeningWarningWords, reportWarnings } from '../../../../src/words/listening.ts';

const BLOCK = 4096;

describe('RecordingListening', () => {
  const slide = simulate(
    { condition: 'quiet', durationS: 18, clean: true, nominalHz: 512, sampleRateHz: 8000 },
    3,
  );
  const { sampleRateHz, truth } = slide;
  const fork = { nominalHz: 512, toleranceHz: 2 };
  const listening = (): Listening => new Listening({ sampleRateHz, fork });

  /** The slide so many times in a row. */
  function hearRepeated(listener: ListeningLike, times: number): ListeningReport {
    const { samples } = slide;
    const block = new Float32Array(BLOCK);
    for (let start = 0; start < times * samples.length; start += BLOCK) {
      const count = Math.min(BLOCK, times * samples.length - start);
      for (let i = 0; i < count; i += 1) block[i] = samples[(start + i) % samples.length];
      listener.push({ samples: block.subarray(0, count), startFrame: start, discontinuity: false });
    }
    listener.finish();
    return listener.offlineReport();
  }

  it('hears a short recording as one listening does, to the last bit', () => {
    const own = hearRepeated(new RecordingListening(sampleRateHz, listening), 3);
    expect(own).toEqual(hearRepeated(listening(), 3));
  });

  it('finds in 22 minutes what it finds in one, each once and where it is, in parts', () => {
    // Three parts of ten minutes: the last one begins at twenty.
    const times = 74;
    let made = 0;
    const report = hearRepeated(
      new RecordingListening(sampleRateHz, () => {
        made += 1;
        return listening();
      }),
      times,
    );
    expect(made).toBe(3);
    const durationS = slide.samples.length / sampleRateHz;
    expect(report.durationS).toBeCloseTo(times * durationS, 6);
    const audible = truth.passages.filter((passage) => passage.audible);
    expect(audible.length).toBeGreaterThanOrEqual(2);
    for (let i = 0; i < times; i += 1) {
      const own = report.resonances.filter(
        ({ timeS }) => timeS >= i * durationS && timeS < (i + 1) * durationS,
      );
      for (const { timeS } of audible) {
        const near = own.filter((one) => Math.abs(one.timeS - i * durationS - timeS) < 0.35);
        expect(near, `passage at ${timeS} s of repeat ${i}`).toHaveLength(1);
      }
    }
    // Numbers count on, and each passage names the sounding that it lies in.
    expect(report.soundings.map(({ index }) => index)).toEqual(report.soundings.map((_, i) => i + 1));
    for (let i = 1; i < report.soundings.length; i += 1) {
      const [before, after] = [report.soundings[i - 1], report.soundings[i]];
      expect(after?.startS).toBeGreaterThanOrEqual(before?.endS ?? Infinity);
    }
    for (const { timeS, soundingIndex } of report.resonances) {
      const own = report.soundings.find(({ index }) => index === soundingIndex);
      expect(own?.startS).toBeLessThanOrEqual(timeS + 0.1);
      expect(own?.endS).toBeGreaterThanOrEqual(timeS - 0.1);
    }
    expect(report.fork.measuredHz).toBeCloseTo(truth.fork?.actualHz ?? NaN, 1);
  }, 60_000);

  it('refuses at once what its listening refuses', () => {
    const create = (): Listening =>
      new Listening({ sampleRateHz: 8000, fork: { nominalHz: 9000, toleranceHz: 2 } });
    expect(() => new RecordingListening(8000, create)).toThrow(RangeError);
  });
});

describe('joinReports', () => {
  const part = (fromS: number, untilS: number, heard: Partial<ListeningReport>): PartReport => ({
    fromS,
    untilS,
    report: {
      durationS: 640,
      sampleRateHz: 48_000,
      fork: { nominalHz: 512, measuredHz: null, standardUncertaintyHz: null },
      soundings: [],
      resonances: [],
      warnings: [],
      ...heard,
    },
  });

  const clipping = (times: number, limit: number | null = null): ListeningWarning => ({
    code: 'clipping',
    times,
    limit,
    timeS: null,
  });
  const noFork: ListeningWarning = {
    code: 'no-fork-heard',
    nominalHz: 512,
    toleranceHz: 2.6,
    otherHz: null,
    timeS: null,
  };

  it('keeps what two parts both heard once, and counts the soundings on', () => {
    const joined = joinReports([
      part(0, 640, {
        soundings: [soundingOf(1, 10, 20), soundingOf(2, 610, 625)],
        resonances: [passageAt(15, 1), passageAt(620, 2)],
      }),
      part(600, Infinity, {
        durationS: 300,
        soundings: [soundingOf(1, 610.01, 625), soundingOf(2, 650, 660)],
        resonances: [passageAt(620.01, 1), passageAt(655, 2)],
      }),
    ]);
    expect(joined.durationS).toBe(900);
    expect(joined.soundings.map(({ index, startS }) => [index, startS])).toEqual([
      [1, 10],
      [2, 610],
      [3, 650],
    ]);
    expect(joined.resonances.map(({ timeS, soundingIndex }) => [timeS, soundingIndex])).toEqual([
      [15, 1],
      [620, 2],
      [655, 3],
    ]);
  });

  it('makes one of a sounding that goes on where the parts meet', () => {
    const joined = joinReports([
      part(0, 1320, { soundings: [soundingOf(1, 10, 1320)], resonances: [passageAt(1310, 1)] }),
      part(1280, Infinity, {
        soundings: [soundingOf(1, 1280, 1500), soundingOf(2, 1600, 1610)],
        resonances: [passageAt(1310, 1), passageAt(1400, 1), passageAt(1605, 2)],
      }),
    ]);
    expect(joined.soundings.map(({ startS, endS }) => [startS, endS])).toEqual([
      [10, 1500],
      [1600, 1610],
    ]);
    expect(joined.resonances.map(({ timeS, soundingIndex }) => [timeS, soundingIndex])).toEqual([
      [1310, 1],
      [1400, 1],
      [1605, 2],
    ]);
  });

  it('weighs all soundings for the pitch that are long enough to tell it', () => {
    const { fork } = joinReports([
      part(0, 640, { soundings: [soundingOf(1, 10, 20, 512.2), soundingOf(2, 30, 31, 513)] }),
      part(600, Infinity, { soundings: [soundingOf(1, 650, 660, 512.21), soundingOf(2, 670, 680)] }),
    ]);
    // Mean of two with u = 0.01 that differ by as much: 0.01 / √2, and their scatter is less than that.
    expect(fork.measuredHz).toBeCloseTo(512.205, 9);
    expect(fork.standardUncertaintyHz).toBeCloseTo(0.01 / Math.SQRT2, 9);
  });

  it('takes the pitch of the part that heard it where no sounding is long enough', () => {
    const fork = { nominalHz: 512, measuredHz: 512.3, standardUncertaintyHz: 0.2 };
    expect(joinReports([part(0, 640, {}), part(600, Infinity, { fork })]).fork).toEqual(fork);
  });

  it('says the same words once, and of words that differ where they hold', () => {
    const narrow: ListeningWarning = { code: 'narrow-band', edgeHz: 4000, timeS: null };
    const joined = joinReports([
      part(0, 640, { warnings: [narrow, clipping(1)] }),
      part(600, Infinity, { durationS: 300, warnings: [narrow, clipping(3), noFork] }),
    ]);
    expect(reportWarnings(joined).map(({ message }) => message)).toEqual([
      listeningWarningWords(narrow),
      `Between 0 and 640 s: ${listeningWarningWords(clipping(1))}`,
      `Between 600 and 900 s: ${listeningWarningWords(clipping(3))}`,
    ]);
  });

  it('says once what differs from part to part by less than is said', () => {
    const joined = joinReports([
      part(0, 640, { warnings: [clipping(1, 0.501)] }),
      part(600, Infinity, { durationS: 300, warnings: [clipping(1, 0.502)] }),
    ]);
    expect(joined.warnings).toHaveLength(2);
    expect(reportWarnings(joined)).toEqual([
      { code: 'clipping', message: listeningWarningWords(clipping(1, 0.5)) },
    ]);
    const apart = joinReports([
      part(0, 640, { warnings: [clipping(1, 0.501)] }),
      part(600, 1240, {}),
      part(1200, Infinity, { durationS: 300, warnings: [clipping(1, 0.502)] }),
    ]);
    expect(reportWarnings(apart).map(({ message }) => message.slice(0, 22))).toEqual([
      'Between 0 and 640 s: T',
      'Between 1200 and 1500 ',
    ]);
  });

  it('says that no fork was heard only if none was in any part', () => {
    const both = joinReports([
      part(0, 640, { warnings: [noFork] }),
      part(600, Infinity, { warnings: [noFork] }),
    ]);
    expect(both.warnings).toEqual([noFork]);
  });

  it('refuses to join nothing', () => {
    expect(() => joinReports([])).toThrow(RangeError);
  });
});
