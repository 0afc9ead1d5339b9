import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { WavReader } from '../../src/capture/wav.ts';
import type { CaptureFailure } from '../../src/capture/soundSource.ts';
import { captureFailureWords } from '../../src/words/capture.ts';
import { inFull } from '../../src/words/faultWords.ts';
import { writeMicrophoneFile, writeWavFile } from '../support/wavFile.ts';
import { openBrowser, openPage } from './support/openPage.ts';
import type { OpenedPage, OpenPageOptions } from './support/openPage.ts';
import { serveCapturePage } from './support/capturePage.ts';
import type { ServedPage } from './support/capturePage.ts';
import type {} from './pages/captureProbe.ts';

const FORK_HZ = 512;
const RATE_HZ = 48_000;
const TONE_AMPLITUDE = 0.05;
const folder = mkdtempSync(join(tmpdir(), 'capture-test-'));
let served: ServedPage;
let shared: Browser;
let opened: OpenedPage | null = null;

beforeAll(async () => {
  served = await serveCapturePage();
  shared = await openBrowser({
    chromiumPath: inject('chromiumPath'),
    // A name that is no secure context, for the test that needs one.
    args: ['--host-resolver-rules=MAP bench.test 127.0.0.1'],
  });
});

afterEach(async () => {
  await opened?.close();
  opened = null;
});

afterAll(async () => {
  await shared.close();
  await served.close();
  rmSync(folder, { recursive: true, force: true });
});

/** Opens the page in the shared browser, unless the test needs a microphone of another kind. */
async function open(options: Partial<OpenPageOptions> = {}): Promise<OpenedPage['page']> {
  const needsItsOwn = options.microphoneWav !== undefined || options.microphone !== undefined;
  opened = await openPage({
    chromiumPath: inject('chromiumPath'),
    url: served.url,
    ...(needsItsOwn ? {} : { browser: shared }),
    ...options,
  });
  return opened.page;
}

describe('the microphone in Chromium', () => {
  it(
    'delivers a 512 Hz tone within 0.1 dB of the same file read by pure code',
    { timeout: 60_000 },
    async () => {
      const path = join(folder, 'tone.wav');
      writeMicrophoneFile(path, tone(4));
      const page = await open({ microphoneWav: path });
      await page.evaluate(() => window.probe.microphone());
      await page.waitForFunction(() => window.probe.frames > 4.4 * 44_100, null, { timeout: 30_000 });
      const heard = await page.evaluate(() => {
        window.probe.stop();
        const running = window.probe.states.find((state) => state.kind === 'running');
        return {
          sampleRateHz: running?.sampleRateHz ?? 0,
          settings: running?.settings ?? null,
          kinds: window.probe.kinds,
          base64: window.probe.base64(),
          gaps: window.probe.blocks.filter((block) => block.discontinuity).length,
        };
      });
      const live = floats(heard.base64);
      const pure = await readMono(path);

      expect(opened?.faults).toEqual([]);
      expect(heard.kinds).toEqual(['starting', 'running', 'idle']);
      // A loaded machine may lose frames once; they are counted and marked.
      expect(heard.gaps).toBeLessThanOrEqual(1);
      expect(heard.settings).toMatchObject({
        echoCancellation: 'off',
        noiseSuppression: 'off',
        autoGainControl: 'off',
      });
      // A loaded machine may lose 10 ms here and there; the levels of most eighths of a second are whole.
      const liveDb = toneLevelDb(live, heard.sampleRateHz);
      const pureDb = toneLevelDb(pure, RATE_HZ);
      // 20 lg 0.05: 0 dB is a sine of amplitude 1.
      expect(pureDb).toBeCloseTo(-26.02, 2);
      expect(Math.abs(liveDb - pureDb)).toBeLessThan(0.1);
    },
  );

  it('says that the microphone was refused', async () => {
    const page = await open({ microphone: 'refused' });
    expect(await failureOfMicrophone(page)).toMatchObject({ code: 'refused-by-user' });
  });

  it('says that there is no microphone', async () => {
    const page = await open({ microphone: 'absent', browser: shared });
    expect(await failureOfMicrophone(page)).toMatchObject({ code: 'no-microphone' });
  });

  it('says that the microphone is busy', async () => {
    const page = await open({ beforeScripts: rejectingWith('NotReadableError') });
    expect(await failureOfMicrophone(page)).toMatchObject({ code: 'microphone-busy' });
  });

  it('says that a plain http address gets no microphone', async () => {
    const page = await open({
      url: `http://bench.test:${served.port}/`,
    });
    expect(await page.evaluate(() => window.isSecureContext)).toBe(false);
    expect(await failureOfMicrophone(page)).toMatchObject({ code: 'insecure-context' });
  });

  it('hints at an unanswered question', { timeout: 30_000 }, async () => {
    const page = await open({
      beforeScripts: 'navigator.mediaDevices.getUserMedia = () => new Promise(() => {});',
    });
    await page.evaluate(() => void window.probe.microphone());
    await page.waitForFunction(() => window.probe.states.length > 1, null, { timeout: 15_000 });
    const states = await page.evaluate(() => window.probe.states);
    expect(states[1]).toEqual({ kind: 'starting', waitsFor: 'permission' });
  });

  it('ends with the microphone’s loss, and one start brings it back', { timeout: 60_000 }, async () => {
    const page = await open({ beforeScripts: KEEP_TRACKS });
    await page.evaluate(() => window.probe.microphone());
    await page.waitForFunction(() => window.probe.frames > 0);
    // What the browser does when the device is unplugged; there is no switch for it.
    await page.evaluate(() => window.testTracks.at(-1)?.dispatchEvent(new Event('ended')));
    expect(await page.evaluate(() => window.probe.states.at(-1))).toMatchObject({
      kind: 'failed',
      failure: { code: 'microphone-lost' },
    });
    expect(await page.evaluate(() => window.testTracks.at(-1)?.readyState)).toBe('ended');

    await page.evaluate(() => window.probe.again());
    await page.waitForFunction(() => window.probe.frames > 0);
    expect(await page.evaluate(() => window.probe.kinds)).toEqual(['starting', 'running']);
  });

  it('pauses while the audio system is suspended and marks the gap', { timeout: 60_000 }, async () => {
    const page = await open({ beforeScripts: KEEP_CONTEXTS });
    await page.evaluate(() => window.probe.microphone());
    await page.waitForFunction(() => window.probe.frames > 0);
    await page.evaluate(() => window.testContexts.at(-1)?.suspend());
    // Left alone the page goes on by itself within its next look, half a second later.
    await page.waitForFunction(() => window.probe.blocks.some((block) => block.discontinuity), null, {
      timeout: 20_000,
    });
    expect(await page.evaluate(() => window.probe.kinds)).toEqual([
      'starting',
      'running',
      'interrupted',
      'running',
    ]);
  });

  it('releases track and context on stop', async () => {
    const page = await open({ beforeScripts: KEEP_TRACKS + KEEP_CONTEXTS });
    await page.evaluate(() => window.probe.microphone());
    await page.waitForFunction(() => window.probe.frames > 0);
    await page.evaluate(() => window.probe.stop());
    await page.waitForFunction(() => window.testContexts.at(-1)?.state === 'closed');
    expect(await page.evaluate(() => window.testTracks.map((track) => track.readyState))).toEqual(['ended']);
  });
});

describe('a recording in Chromium', () => {
  it('delivers a WAV sample by sample as pure code reads it', async () => {
    const path = join(folder, 'recording.wav');
    writeWavFile(path, tone(6));
    const page = await open();
    const got = await page.evaluate(async (file) => {
      await window.probe.recording(file);
      return { kinds: window.probe.kinds, base64: window.probe.base64(), progress: window.probe.progress };
    }, readFileSync(path).toString('base64'));
    expect(got.kinds).toEqual(['starting', 'running', 'ended']);
    expect(got.progress.at(-1)).toBe(1);
    expect(floats(got.base64)).toEqual(await readMono(path));
  });

  it('has the browser decode what is no WAV', { timeout: 60_000 }, async () => {
    const page = await open();
    const got = await page.evaluate(async () => {
      // A compressed recording of the browser's own making: one second of a 512 Hz tone.
      const context = new AudioContext();
      const oscillator = new OscillatorNode(context, { frequency: 512 });
      const gain = new GainNode(context, { gain: 0.1 });
      const target = context.createMediaStreamDestination();
      oscillator.connect(gain).connect(target);
      const recorder = new MediaRecorder(target.stream);
      const parts: Blob[] = [];
      recorder.ondataavailable = (event) => parts.push(event.data);
      const stopped = new Promise((resolve) => (recorder.onstop = resolve));
      oscillator.start();
      recorder.start();
      await new Promise((resolve) => setTimeout(resolve, 1500));
      recorder.stop();
      await stopped;
      await context.close();
      const bytes = new Uint8Array(await new Blob(parts).arrayBuffer());
      await window.probe.recording(btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join('')));
      return { kinds: window.probe.kinds, base64: window.probe.base64() };
    });
    expect(got.kinds).toEqual(['starting', 'running', 'ended']);
    // 20 lg 0.1 = -20 dB; a lossy coder keeps a steady tone within half a decibel.
    expect(Math.abs(toneLevelDb(floats(got.base64), RATE_HZ) + 20)).toBeLessThan(0.5);
  });

  it.each([
    ['no sound at all', 'not-audio', Buffer.from('a list of lengths, not a sound')],
    ['nothing', 'empty-recording', Buffer.alloc(0)],
  ])('names a file with %s', async (_, code, bytes) => {
    const page = await open();
    const state = await page.evaluate(async (file) => {
      await window.probe.recording(file);
      return window.probe.states.at(-1);
    }, bytes.toString('base64'));
    expect(state).toMatchObject({ kind: 'failed', failure: { code } });
  });
});

describe('the practice column in Chromium', () => {
  it('needs no microphone and runs in real time', { timeout: 30_000 }, async () => {
    const page = await open();
    const got = await page.evaluate(async () => {
      const start = performance.now();
      await window.probe.practice();
      await new Promise((resolve) => setTimeout(resolve, 2000));
      const elapsedS = (performance.now() - start) / 1000;
      window.probe.stop();
      return { kinds: window.probe.kinds, elapsedS, frames: window.probe.frames };
    });
    expect(got.kinds).toEqual(['running', 'idle']);
    // One block (43 ms) and one tick of the clock may be outstanding; a busy machine delays a tick.
    expect(Math.abs(got.frames / RATE_HZ - got.elapsedS)).toBeLessThan(0.25);
  });
});

declare global {
  interface Window {
    testTracks: MediaStreamTrack[];
    testContexts: AudioContext[];
  }
}

const KEEP_TRACKS = `
  window.testTracks = [];
  const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
  navigator.mediaDevices.getUserMedia = async (wish) => {
    const stream = await ask(wish);
    window.testTracks.push(...stream.getTracks());
    return stream;
  };
`;

const KEEP_CONTEXTS = `
  window.testContexts = [];
  window.AudioContext = class extends window.AudioContext {
    constructor(options) {
      super(options);
      window.testContexts.push(this);
    }
  };
`;

function rejectingWith(name: string): string {
  return `navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('none', '${name}'));`;
}

async function failureOfMicrophone(page: OpenedPage['page']): Promise<CaptureFailure> {
  const state = await page.evaluate(async () => {
    await window.probe.microphone();
    return window.probe.states.at(-1);
  });
  if (state?.kind !== 'failed') throw new Error(`The microphone did not fail: ${JSON.stringify(state)}`);
  // Each message is whole sentences that name a way on.
  expect(inFull(captureFailureWords(state.failure))).toMatch(/^[A-Z].*\. .*practice column\.$/s);
  return state.failure;
}

function tone(seconds: number): Float32Array {
  const step = (2 * Math.PI * FORK_HZ) / RATE_HZ;
  return Float32Array.from({ length: seconds * RATE_HZ }, (_, i) => TONE_AMPLITUDE * Math.sin(step * i));
}

function floats(base64: string): Float32Array {
  const bytes = Uint8Array.from(Buffer.from(base64, 'base64'));
  return new Float32Array(bytes.buffer);
}

async function readMono(path: string): Promise<Float32Array> {
  const reader = await WavReader.fromBytes(readFileSync(path));
  const channel = (await reader.readChannels(0, reader.format.frameCount))[0];
  if (channel === undefined) throw new Error('no channel');
  return channel;
}

/**
 * Level at 512 Hz in dB re a sine of amplitude 1, by correlation with sine and cosine: the fifth loudest eighth of a
 * second, which neither a lost moment nor the silence around the tone can touch.
 */
function toneLevelDb(samples: Float32Array, sampleRateHz: number): number {
  const part = Math.round(0.125 * sampleRateHz);
  const levels: number[] = [];
  for (let start = 0; start + part <= samples.length; start += part) {
    let re = 0;
    let im = 0;
    for (let i = 0; i < part; i += 1) {
      const angle = (2 * Math.PI * FORK_HZ * (start + i)) / sampleRateHz;
      re += (samples[start + i] ?? 0) * Math.cos(angle);
      im += (samples[start + i] ?? 0) * Math.sin(angle);
    }
    // 0.125 s hold exactly 64 periods of 512 Hz.
    levels.push(20 * Math.log10((2 * Math.hypot(re, im)) / part + 1e-9));
  }
  levels.sort((a, b) => b - a);
  return levels[4] ?? -Infinity;
}
