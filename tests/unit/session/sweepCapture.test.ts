// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { PracticeSweep } from '../../../src/capture/practice/practiceSweep.ts';
import type { CaptureSettings, SoundListener, SoundSource } from '../../../src/capture/soundSource.ts';
import { sweepDurationS } from '../../../src/capture/sweepPlan.ts';
import type { GainCheckRecord } from '../../../src/notebook/experiment.ts';
import { PRINT_PALETTE } from '../../../src/report/plots/plot.ts';
import { plotSvg } from '../../../src/report/plots/plotSvg.ts';
import { sweepPlot } from '../../../src/report/plots/sweepPlot.ts';
import { lostWords } from '../../../src/words/sweep.ts';
import { SweepRun } from '../../../src/session/hearing/sweepRun.ts';
import { sweepSource } from '../../../src/ui/check/sweepSource.ts';
import { exampleExperiment } from '../notebook/exampleExperiment.ts';
import { trustWords } from '../../../src/words/captureTrust.ts';

const RATE_HZ = 24_000;
const BLOCK_FRAMES = 2048;
/** 0.6 m closed: 3·v/4(L + e) is near 421 Hz, which is passed at 2.6 s and, on the way back, at 7.4 s. */
const PLAN = { fromHz: 390, toHz: 450, rateHzPerS: 12 };
const COLUMN = {
  lengthM: 0.6,
  radiusM: 0.0175,
  ends: 'closed',
  air: { temperatureC: 21, humidityPct: 45 },
} as const;
const RAW: CaptureSettings = {
  deviceLabel: 'Bench microphone',
  channelCount: 1,
  echoCancellation: 'off',
  noiseSuppression: 'off',
  autoGainControl: 'off',
};

/** The whole sweep with what comes after it, for all tests. */
const SOUND = new PracticeSweep({ ...PLAN, ...COLUMN, sampleRateHz: RATE_HZ }, 1).render(
  (sweepDurationS(PLAN) + 4) * RATE_HZ,
);

interface Lost {
  readonly atS: number;
  readonly lostS: number;
}

/** A source that plays the simulated column at once; sound is lost as the capture tells of it. */
function source(settings: readonly (CaptureSettings | null)[], lost: Lost | null): SoundSource {
  return {
    kind: 'microphone',
    stop: () => undefined,
    start: (listener: SoundListener) => {
      for (const one of settings) listener.onState({ kind: 'running', sampleRateHz: RATE_HZ, settings: one });
      let discontinuity = false;
      for (let startFrame = 0; startFrame < SOUND.length; startFrame += BLOCK_FRAMES) {
        const samples = SOUND.slice(startFrame, startFrame + BLOCK_FRAMES);
        const atS = startFrame / RATE_HZ;
        if (lost !== null && atS >= lost.atS && atS < lost.atS + lost.lostS) {
          discontinuity = true;
          continue;
        }
        listener.onBlock({ samples, startFrame, discontinuity });
        discontinuity = false;
      }
      return Promise.resolve();
    },
  };
}

async function swept(
  settings: readonly (CaptureSettings | null)[] = [null],
  lost: Lost | null = null,
  gainCheck: GainCheckRecord | null = null,
) {
  const sweep = new SweepRun(source(settings, lost), PLAN, gainCheck, () => undefined);
  await sweep.start();
  if (sweep.state.kind !== 'done') throw new Error(`The sweep is ${sweep.state.kind}.`);
  return sweep.state;
}

describe('a sweep that loses sound', () => {
  it.each([0.1, 0.3, 1])('keeps its pitches where %s s are lost far from the resonance', async (lostS) => {
    const whole = (await swept()).found.resonances;
    expect(whole).toHaveLength(1);
    const [true_] = whole;
    for (const atS of [0.5, 4.4, 9]) {
      const { found } = await swept([null], { atS, lostS });
      const [one] = found.resonances;
      const offHz = Math.abs((one?.frequencyHz ?? 0) - (true_?.frequencyHz ?? 0));
      // Time that goes on without the lost sound moved it by half of 12 Hz/s times the loss: 1.8 Hz for 0.3 s.
      expect(offHz, `lost at ${atS} s`).toBeLessThan(one?.standardUncertaintyHz ?? 0);
      expect(found.voidHz).toEqual([]);
      expect(found.lostS).toBeGreaterThan(0.8 * lostS);
      expect(lostWords(found)).toMatch(/^(0\.\d\d|1\.\d\d) s of sound were lost\. No resonance was near\.$/);
    }
  });

  it.each([2.55, 7.35])('voids a resonance that is passed while sound is lost, at %s s', async (atS) => {
    const { found } = await swept([null], { atS, lostS: 0.3 });
    expect(found.resonances).toEqual([]);
    expect(found.voidHz).toHaveLength(1);
    expect(Math.abs((found.voidHz[0] ?? 0) - 421)).toBeLessThan(6);
    expect(lostWords(found)).toMatch(/s of sound were lost\. The resonance near 4[12]\d Hz isn’t used\./);
  });

  it('draws no line across what was lost', async () => {
    const lines = async (lost: Lost | null): Promise<number> =>
      sweepPlot((await swept([null], lost)).found).lines.length;
    expect(await lines(null)).toBe(2);
    expect(await lines({ atS: 1, lostS: 0.5 })).toBe(3);
    expect(plotSvg(sweepPlot((await swept()).found), PRINT_PALETTE)).toContain('421');
  });

  it('says nothing where nothing was lost', async () => {
    expect(lostWords((await swept()).found)).toBeNull();
  });
});

describe('a sweep and the trust in its capture', () => {
  const steady: GainCheckRecord = {
    checkedAt: '2030-03-01T10:00:00.000Z',
    verdict: 'steady',
    departureDb: 0.1,
    limitDb: 0.5,
    device: 'Bench microphone',
  };

  it('is trusted where nothing can process the sound, and where the gain check was passed', async () => {
    expect((await swept([null])).trust.kind).toBe('trusted');
    const unknown: CaptureSettings = { ...RAW, autoGainControl: 'unknown' };
    expect((await swept([unknown], null, steady)).trust.kind).toBe('trusted');
  });

  it('is in doubt where the browser says nothing of a step', async () => {
    const { trust } = await swept([{ ...RAW, autoGainControl: 'unknown' }]);
    expect(trust.kind).toBe('unproven');
    expect(trustWords(trust)).toContain('gain check');
  });

  it('keeps its resonances, in doubt, where a step is on, even if it was on for a while only', async () => {
    const on: CaptureSettings = { ...RAW, noiseSuppression: 'on' };
    for (const settings of [[on], [RAW, on], [RAW, on, RAW]]) {
      const { trust, found } = await swept(settings);
      expect(trust.kind).toBe('doubtful');
      expect(found.resonances).toHaveLength(1);
      expect(trustWords(trust, 'sweep')).toContain('The peaks below may be moved or missing');
      expect(trustWords(trust, 'sweep')).not.toContain('marked');
    }
  });

  it('is in doubt where the gain check found that something changes the level', async () => {
    const { trust, found } = await swept([RAW], null, { ...steady, verdict: 'rewritten' });
    expect(trust.kind).toBe('doubtful');
    expect(found.resonances).toHaveLength(1);
    expect(trustWords(trust, 'sweep')).not.toContain('marked');
  });
});

describe('sweepSource', () => {
  afterEach(() => vi.unstubAllGlobals());

  it('listens to the microphone that was chosen', async () => {
    const asked: MediaStreamConstraints[] = [];
    const mediaDevices = {
      getUserMedia: (constraints: MediaStreamConstraints) => {
        asked.push(constraints);
        return Promise.reject(new DOMException('none here', 'NotFoundError'));
      },
      enumerateDevices: () => Promise.resolve([]),
      addEventListener: () => undefined,
      removeEventListener: () => undefined,
    };
    vi.stubGlobal('isSecureContext', true);
    vi.stubGlobal(
      'AudioContext',
      class {
        state = 'closed';
      },
    );
    vi.stubGlobal('navigator', { mediaDevices });
    const listener = { onBlock: () => undefined, onState: () => undefined };
    await sweepSource(false, exampleExperiment(), 0.6, PLAN, 'the-second').start(listener);
    await sweepSource(false, exampleExperiment(), 0.6, PLAN, null).start(listener);
    expect(asked.map(({ audio }) => (audio as MediaTrackConstraints).deviceId)).toEqual([
      { exact: 'the-second' },
      undefined,
    ]);
  });
});
