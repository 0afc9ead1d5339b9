import { describe, expect, it } from 'vitest';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import type { PracticeSettings } from '../../../src/capture/practice/practiceSettings.ts';
import type { SoundListener, SoundSource } from '../../../src/capture/soundSource.ts';
import { LIMITS } from '../../../src/limits/limits.ts';
import { newFork } from '../../../src/notebook/newExperiment.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { analyseRecording } from '../../../src/session/recording/analyseRecording.ts';
import { PracticeRun } from '../../../src/session/hearing/practiceRun.ts';
import { SweepRun } from '../../../src/session/hearing/sweepRun.ts';
import { defaultToleranceHz, WIDEST_TOLERANCE_HZ } from '../../../src/session/hearing/forkTolerance.ts';
import { Listening } from '../../../src/session/hearing/listening.ts';
import { sweepFault } from '../../../src/session/hearing/sweepFault.ts';
import type { SweepFault } from '../../../src/session/hearing/sweepFault.ts';
import { inFull } from '../../../src/words/faultWords.ts';
import { unheardPitchWords } from '../../../src/words/listening.ts';
import { sweepFaultWords } from '../../../src/words/sweep.ts';
import { whyNotHeard } from '../../../src/session/hearing/whyNotHeard.ts';
import { PracticeSweep } from '../../../src/capture/practice/practiceSweep.ts';
import { exampleExperiment } from '../notebook/exampleExperiment.ts';
import { benchInTest } from '../session/benchInTest.ts';

const RATE_HZ = 48_000;

/** A column that is slid past its first resonances, one strike each, and when it was at them. */
class SlideByHand {
  readonly parts: Float32Array[] = [];
  readonly passagesS: number[] = [];
  private timeS = 0;

  constructor(private readonly column: PracticeColumn) {}

  /** @param lengthsM  of resonances  @param halfM  how far before and behind the slide begins and ends */
  pass(lengthsM: readonly number[], halfM: number, speedMps: number): void {
    const { shortestM, longestM } = this.column.apparatus;
    this.column.setSlideSpeed(speedMps);
    this.render(3);
    for (const lengthM of lengthsM) {
      this.column.setLengthM(Math.max(shortestM, lengthM - halfM));
      this.render(0.5);
      this.column.strike();
      this.render(1.5);
      this.column.slideTo(Math.min(longestM, lengthM + halfM));
      let passedS: number | null = null;
      while (this.column.isSliding) {
        this.render(0.02);
        if (passedS === null && this.column.lengthM >= lengthM) passedS = this.timeS;
      }
      this.passagesS.push(passedS ?? this.timeS);
      this.render(1);
      this.column.damp();
      this.render(1.5);
    }
    this.render(2);
  }

  get samples(): Float32Array {
    const all = new Float32Array(this.parts.reduce((sum, part) => sum + part.length, 0));
    this.parts.reduce((at, part) => (all.set(part, at), at + part.length), 0);
    return all;
  }

  private render(seconds: number): void {
    this.parts.push(this.column.render(Math.round(seconds * RATE_HZ)));
    this.timeS += seconds;
  }
}

/** As far as a hand slides about a resonance: 7 cm, a low fork's so far that the level falls on both sides. */
const slideHalfM = (wavelengthM: number): number =>
  Math.min(wavelengthM / 8, Math.max(0.07, wavelengthM / 32));

function slide(
  settings: Partial<PracticeSettings> & { readonly stampedHz: number },
  seed: number,
  halfM = slideHalfM(344 / settings.stampedHz),
) {
  const { stampedHz } = settings;
  const wavelengthM = 344 / stampedHz;
  const longestM = Math.min(5, Math.max(1.2, 0.9 * wavelengthM));
  const column = new PracticeColumn({ longestM, noise: 'quiet', ...settings }, seed);
  const lengthsM = column.resonantLengthsM.filter((m) => m > 0.03 && m < longestM - 0.01).slice(0, 3);
  const hand = new SlideByHand(column);
  hand.pass(lengthsM, halfM, Math.min(0.05, halfM / 1.5));
  return { samples: hand.samples, passagesS: hand.passagesS, forkHz: column.forkHz };
}

describe('forks at both ends of what the bench takes', { timeout: 120_000 }, () => {
  // The usual tube of 35 mm radiates so much at 4096 Hz that its level rises by 2 dB only.
  it.each([
    { stampedHz: 64, diameterM: 0.035, count: 2 },
    { stampedHz: 100, diameterM: 0.035, count: 2 },
    { stampedHz: 2100, diameterM: 0.035, count: 3 },
    { stampedHz: 4096, diameterM: 0.016, count: 3 },
  ])('$stampedHz Hz: each resonance of a recording is found, and nothing else', ({ count, ...settings }) => {
    const { stampedHz } = settings;
    const { samples, passagesS, forkHz } = slide(settings, 3);
    const fork = { nominalHz: stampedHz, toleranceHz: defaultToleranceHz(stampedHz) };
    const report = analyseRecording(samples, { sampleRateHz: RATE_HZ, fork });
    expect(passagesS).toHaveLength(count);
    expect(report.resonances).toHaveLength(count);
    for (const [index, { timeS }] of report.resonances.entries()) {
      // A low fork's column answers late: it rings up for half a second.
      expect(Math.abs(timeS - (passagesS[index] ?? 0))).toBeLessThan(0.8);
    }
    // A column at resonance pulls a low fork's phase by a turn a passage.
    expect(Math.abs((report.fork.measuredHz ?? 0) - forkHz)).toBeLessThan(0.1);
  });

  it.each([
    ['live', true],
    ['in the second look', false],
  ])(
    '64 Hz: a slide of 7 cm to either side, less than two half widths of the second resonance, flags both %s',
    (_, live) => {
      const { samples, passagesS } = slide({ stampedHz: 64, diameterM: 0.035 }, 3, 0.07);
      const fork = { nominalHz: 64, toleranceHz: defaultToleranceHz(64) };
      const report = analyseRecording(samples, { sampleRateHz: RATE_HZ, fork, live });
      expect(report.resonances).toHaveLength(2);
      for (const [index, { timeS }] of report.resonances.entries()) {
        expect(Math.abs(timeS - (passagesS[index] ?? 0))).toBeLessThan(0.8);
      }
    },
  );

  it('4096 Hz: a fork that is off its stamp by as much as makers allow is heard, too', () => {
    const stampedHz = 4096;
    for (const off of [-0.0045, 0.0045]) {
      const settings = { stampedHz, forkHz: stampedHz * (1 + off), diameterM: 0.016 };
      const { samples, passagesS, forkHz } = slide(settings, 1);
      const fork = { nominalHz: stampedHz, toleranceHz: defaultToleranceHz(stampedHz) };
      const report = analyseRecording(samples, { sampleRateHz: RATE_HZ, fork });
      expect(report.resonances).toHaveLength(passagesS.length);
      expect(Math.abs((report.fork.measuredHz ?? 0) - forkHz)).toBeLessThan(0.1);
    }
    expect(defaultToleranceHz(LIMITS.stampedHz.highest)).toBeLessThanOrEqual(WIDEST_TOLERANCE_HZ);
  });
});

const withFork = (nominalHz: number, travelM = 1.2): Experiment => {
  const example = exampleExperiment();
  return {
    ...example,
    forks: [newFork('fork-1', nominalHz)],
    tube: { diameterM: null, otherDiameterM: null, mouth: null, stopper: 'piston', travelM },
  };
};

describe('practice', { timeout: 120_000 }, () => {
  it.each([
    { stampedHz: 64, travelM: 2 },
    { stampedHz: 512, travelM: 1.2 },
    { stampedHz: 4096, travelM: 0.3 },
  ])('with a fork of $stampedHz Hz flags a resonance at the hand’s own speed', ({ stampedHz, travelM }) => {
    const practice = new PracticeRun(withFork(stampedHz, travelM), 2);
    const { column } = practice;
    const firstM = column.resonantLengthsM.find((m) => m > 0.04) ?? 0;
    const fork = { nominalHz: stampedHz, toleranceHz: defaultToleranceHz(stampedHz) };
    const listening = new Listening({ sampleRateHz: RATE_HZ, fork });
    let frame = 0;
    let flags = 0;
    const hear = (seconds: number): void => {
      const samples = column.render(Math.round(seconds * RATE_HZ));
      const { resonances } = listening.push({ samples, startFrame: frame, discontinuity: false });
      // A maybe that becomes sure is told again.
      flags += resonances.filter(({ maybeS }) => maybeS === undefined).length;
      frame += samples.length;
    };
    const halfM = Math.min(0.15, 43 / stampedHz);
    column.setLengthM(Math.max(0.02, firstM - halfM));
    hear(3);
    column.strike();
    hear(1.5);
    practice.slideTo(firstM + halfM, true);
    while (column.isSliding) hear(0.1);
    hear(2);
    expect(flags).toBe(1);
  });

  it('plays every fork in every tube, and follows from one to the other', () => {
    const { stampedHz, travelM } = LIMITS;
    for (const hz of [stampedHz.lowest, 512, 2500, 2501, stampedHz.highest]) {
      for (const longestM of [travelM.lowest, 0.03, 1, 5, travelM.highest]) {
        const practice = new PracticeRun(withFork(hz, longestM), 1);
        practice.slideTo(longestM, false);
        expect(practice.column.lengthM).toBe(longestM);
        practice.follow(withFork(512, 1));
        practice.follow(withFork(hz, longestM));
        expect(practice.column.apparatus).toMatchObject({ stampedHz: hz, longestM });
        expect(practice.column.render(480).every(Number.isFinite)).toBe(true);
      }
    }
  });

  it('says up to which frequency a wide tube can be swept', () => {
    const wide: Experiment = {
      ...withFork(512),
      tube: { diameterM: 0.1, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1 },
    };
    const plan = { fromHz: 200, toHz: 4096, rateHzPerS: 12 };
    // ka = 1.5 at a radius of 50 mm and 343 m/s: 1638 Hz.
    expect(faultWords(sweepFault(wide, 0.5, plan, true))).toMatch(
      /a tube of 100 mm up to 16\d\d Hz, not to 4096 Hz/,
    );
    expect(sweepFault(wide, 0.5, plan, false)).toBeNull();
    expect(sweepFault(wide, 0.5, { ...plan, toHz: 1600 }, true)).toBeNull();
    expect(faultWords(sweepFault(wide, 0.5, { ...plan, toHz: 200 }, true))).toContain('higher frequency');
    const far = { ...wide, rule: { ...wide.rule, zeroOffsetM: 0.6 } };
    expect(faultWords(sweepFault(far, 0.5, plan, false))).toContain(
      'a reading of 50 cm would be a column of −10 cm',
    );
    const settings = {
      ...plan,
      toHz: 1600,
      sampleRateHz: RATE_HZ,
      radiusM: 0.05,
      ends: 'closed',
      air: { temperatureC: 20 },
    } as const;
    for (const lengthM of [LIMITS.lengthM.lowest, LIMITS.lengthM.highest]) {
      expect(new PracticeSweep({ ...settings, lengthM }, 1).render(2000).every(Number.isFinite)).toBe(true);
    }
  });
});

const faultWords = (fault: SweepFault | null): string | null =>
  fault === null ? null : sweepFaultWords(fault);

function unheardWords(sampleRateHz: number, pitchHz: number): string | null {
  const why = whyNotHeard(sampleRateHz, pitchHz);
  return why === null ? null : inFull(unheardPitchWords(why));
}

/** A source that runs at this rate and then is silent. */
function sourceAt(
  sampleRateHz: number,
): SoundSource & { listener: SoundListener | null; isStopped: boolean } {
  return {
    kind: 'recording',
    listener: null,
    isStopped: false,
    start(listener) {
      this.listener = listener;
      listener.onState({ kind: 'running', sampleRateHz, settings: null });
      return Promise.resolve();
    },
    stop() {
      this.isStopped = true;
    },
  };
}

describe('a pitch that the sample rate doesn’t carry', () => {
  it('is said with the pitches that it does carry, and what to do', () => {
    expect(unheardWords(8000, 4096)).toBe(
      'A frequency of 4096 Hz can’t be heard at this sound’s sample rate of 8000 Hz: 60 to 3360 Hz can. Record at 44 100 or 48 000 Hz (a headset’s microphone often gives less), or choose another frequency. You can still type lengths.',
    );
    expect(unheardWords(4000, 512)).toContain('this page can use 8000 to 384000 Hz');
    for (const rateHz of [44_100, 48_000, 96_000, 192_000]) {
      expect(whyNotHeard(rateHz, LIMITS.stampedHz.lowest)).toBeNull();
      expect(whyNotHeard(rateHz, LIMITS.pitchHz.highest)).toBeNull();
    }
  });

  it('ends the listening with that message in its own place, and the rest goes on', async () => {
    const bench = benchInTest({ createListening: (options) => new Listening(options) });
    bench.change('open file', () => withFork(4096));
    const source = sourceAt(8000);
    await bench.hearing.start(source);
    expect(bench.hearing.capture).toEqual({
      kind: 'failed',
      failure: { code: 'pitch-unheard', why: whyNotHeard(8000, 4096) },
    });
    expect(source.isStopped).toBe(true);
    bench.addMarkByHand(0.058);
    expect(bench.experiment.marks).toHaveLength(1);
    bench.change('change fork', () => withFork(512));
    await bench.hearing.start(sourceAt(8000));
    expect(bench.hearing.capture.kind).toBe('running');
  });

  it('ends a sweep likewise', async () => {
    const source = sourceAt(8000);
    const sweep = new SweepRun(source, { fromHz: 200, toHz: 4096, rateHzPerS: 12 }, null, () => undefined);
    await sweep.start();
    expect(sweep.state).toEqual({
      kind: 'failed',
      failure: { code: 'pitch-unheard', why: whyNotHeard(8000, 4096) },
    });
    expect(source.isStopped).toBe(true);
  });
});
