import { describe, expect, it } from 'vitest';
import { LongListening } from '../../../../src/session/recording/longListening.ts';
import type { ListeningLike } from '../../../../src/session/hearing/listeningLike.ts';
import type { ListeningUpdate, Resonance, Sounding } from '../../../../src/session/hearing/listeningTypes.ts';
import { PracticeColumn } from '../../../../src/capture/practice/practiceColumn.ts';
import { followingTools } from '../../../../src/session/hearing/followingTools.ts';
import { Listening } from '../../../../src/session/hearing/listening.ts';
import { passageAt, soundingOf } from '../../../support/heardParts.ts';
import { reportWarnings } from '../../../../src/words/listening.ts';
import { NOTHING_HEARD } from '../../../support/nothingHeard.ts';

const RATE_HZ = 1000;
/** Hears a sounding of 10 s at the beginning of each minute of the source, with a flag in its middle. */
class MinuteListening implements ListeningLike {
  private frames = 0;
  private soundings = 0;
  private open: Sounding | null = null;

  /** @param beganS  where on the source's axis it begins, known to the test alone */
  constructor(private readonly beganS: () => number) {}

  push({ samples, startFrame }: { samples: Float32Array; startFrame: number }): ListeningUpdate {
    const began = this.beganS();
    const ownS = startFrame / RATE_HZ;
    expect(startFrame).toBe(this.frames);
    this.frames += samples.length;
    const minuteS = Math.round(ownS + began) % 60;
    if (minuteS === 0) {
      this.soundings += 1;
      this.open = soundingOf(this.soundings, ownS, null);
      return { ...NOTHING_HEARD, soundings: [this.open] };
    }
    if (this.open === null) return NOTHING_HEARD;
    if (minuteS === 5) return { ...NOTHING_HEARD, resonances: [flag(ownS, this.open.index)] };
    if (minuteS !== 10) return NOTHING_HEARD;
    const ended = soundingOf(this.open.index, this.open.startS, ownS);
    this.open = null;
    return { ...NOTHING_HEARD, soundings: [ended] };
  }

  finish(): ListeningUpdate {
    return NOTHING_HEARD;
  }

  offlineReport(): never {
    throw new Error('not asked for');
  }
}

const flag = (timeS: number, soundingIndex: number): Resonance =>
  passageAt(timeS, soundingIndex, timeS + 0.5);

describe('LongListening', () => {
  it('gives each flag and sounding once, in order, on the source’s own axis, through every handover', () => {
    let nowS = 0;
    let made = 0;
    const long = new LongListening(RATE_HZ, () => {
      made += 1;
      let began: number | null = null;
      return new MinuteListening(() => (began ??= nowS));
    });
    const flags: Resonance[] = [];
    const soundings = new Map<number, Sounding>();
    for (nowS = 0; nowS < 3600; nowS += 1) {
      const block = { samples: new Float32Array(RATE_HZ), startFrame: nowS * RATE_HZ, discontinuity: false };
      const update = long.push(block);
      flags.push(...update.resonances);
      for (const one of update.soundings) soundings.set(one.index, one);
    }
    expect(made).toBeGreaterThan(10);
    const minutes = Array.from({ length: 60 }, (_, minute) => 60 * minute);
    expect(flags.map(({ timeS }) => timeS)).toEqual(minutes.map((s) => s + 5));
    expect(flags.map(({ flaggedAtS }) => flaggedAtS)).toEqual(minutes.map((s) => s + 5.5));
    expect(flags.map(({ soundingIndex }) => soundingIndex)).toEqual(minutes.map((_, i) => i + 1));
    expect([...soundings.values()].map(({ startS, endS }) => [startS, endS])).toEqual(
      minutes.map((s) => [s, s + 10]),
    );
  });

  it('names moments in words on the source’s axis, too', () => {
    const lost: ListeningUpdate['warnings'][number] = {
      code: 'gap',
      losses: 2,
      timeS: 12.3,
    };
    let nowS = 0;
    const long = new LongListening(RATE_HZ, () => {
      const began = nowS;
      return {
        push: ({ startFrame }) =>
          began > 0 && startFrame === 100 * RATE_HZ ? { ...NOTHING_HEARD, warnings: [lost] } : NOTHING_HEARD,
        finish: () => NOTHING_HEARD,
        offlineReport: () => ({
          durationS: 100,
          sampleRateHz: RATE_HZ,
          fork: { nominalHz: 512, measuredHz: null, standardUncertaintyHz: null },
          soundings: [soundingOf(1, 4, 9)],
          resonances: [flag(5, 1)],
          warnings: [lost],
        }),
      };
    });
    const warned: ListeningUpdate['warnings'][number][] = [];
    for (; nowS < 300; nowS += 1) {
      const block = { samples: new Float32Array(RATE_HZ), startFrame: nowS * RATE_HZ, discontinuity: false };
      warned.push(...long.push(block).warnings);
    }
    const beganS = long.presentSinceS;
    expect(beganS).toBeGreaterThanOrEqual(180);
    const expected = { code: 'gap', losses: 2, timeS: beganS + 12.3 };
    expect(warned).toEqual([expected]);
    const report = long.offlineReport();
    expect(report.warnings).toEqual([expected]);
    const said = `Sound was lost 2 times, first at ${(beganS + 12.3).toFixed(1)} s: no resonance is marked there. Close other programs and slide there again.`;
    expect(reportWarnings(report)).toEqual([{ code: 'gap', message: said }]);
    expect(report.resonances.map(({ timeS }) => timeS)).toEqual([beganS + 5]);
    expect(report.soundings.map(({ startS, endS }) => [startS, endS])).toEqual([[beganS + 4, beganS + 9]]);
  });

  it('begins anywhere on the axis, as after another fork was chosen', () => {
    let nowS = 90;
    const long = new LongListening(RATE_HZ, () => new MinuteListening(() => 90));
    const flags: Resonance[] = [];
    for (; nowS < 130; nowS += 1) {
      const block = {
        samples: new Float32Array(RATE_HZ),
        startFrame: nowS * RATE_HZ,
        discontinuity: nowS === 90,
      };
      flags.push(...long.push(block).resonances);
    }
    expect(flags.map(({ timeS }) => timeS)).toEqual([125]);
  });

  it('still knows the column of the listening before: the next strike is followed without another pass', () => {
    const rateHz = 48_000;
    const column = new PracticeColumn({ stampedHz: 512, ends: 'closed' }, 3, rateHz);
    const [resonantM = NaN] = column.resonantLengthsM;
    const tools = followingTools(() => ({ frequencyHz: 512, ends: 'closed', diameterM: 0.035 }));
    const create = (): Listening =>
      new Listening({ sampleRateHz: rateHz, fork: { nominalHz: 512, toleranceHz: 2.5 }, ...tools });
    const long = new LongListening(rateHz, create, { oldS: 20 });
    let frames = 0;
    const told: (number | null)[] = [];
    const flaggedS: number[] = [];
    const hear = (seconds: number): void => {
      for (let left = seconds * rateHz; left > 0; left -= 4800) {
        const samples = column.render(4800);
        const update = long.push({ samples, startFrame: frames, discontinuity: false });
        frames += samples.length;
        flaggedS.push(...update.resonances.map(({ timeS }) => timeS));
        told.push(...update.followed.map(({ halfWidths }) => halfWidths));
      }
    };
    column.setSlideSpeed(0.02);
    column.setLengthM(resonantM - 0.04);
    hear(3);
    column.strike();
    hear(1);
    column.slideTo(resonantM + 0.004);
    hear(6);
    column.damp();
    hear(65);
    expect(flaggedS).toHaveLength(1);
    expect(long.presentSinceS).toBeGreaterThan(flaggedS[0]);
    told.length = 0;
    column.strike();
    hear(1);
    // Back to resonance, not past it: nothing new is flagged.
    column.setSlideSpeed(0.01);
    column.slideTo(resonantM);
    hear(2);
    expect(flaggedS).toHaveLength(1);
    // The page holds the last place that was told. Within 0.2 half widths it says Here.
    const places = told.filter((halfWidths) => halfWidths !== null);
    expect(places.length).toBeGreaterThan(10);
    expect(Math.abs(places.at(-1) ?? NaN)).toBeLessThan(0.2);
  });

  it('refuses at once what its listening refuses', () => {
    const create = (): never => {
      throw new RangeError('frequencyHz must be 60..3360, got 9000');
    };
    expect(() => new LongListening(8000, create)).toThrow(RangeError);
  });
});
