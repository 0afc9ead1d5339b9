import type { Browser } from 'playwright-core';
import { afterAll, afterEach, beforeAll, describe, expect, inject, it } from 'vitest';
import { BenchPage } from './support/benchPage.ts';
import { openBrowser, openPage } from './support/openPage.ts';
import type { OpenedPage, OpenPageOptions } from './support/openPage.ts';

let shared: Browser;
let opened: OpenedPage | null = null;

beforeAll(async () => {
  shared = await openBrowser({ chromiumPath: inject('chromiumPath') });
});

afterEach(async () => {
  await opened?.close();
  opened = null;
});

afterAll(() => shared.close());

/** Keeps what the page makes, so that a test can break it; and lets a test say what the browser tells of itself. */
const KEEP_PARTS = `
  window.parts = { tracks: [], contexts: [], nodes: [], permission: null, settings: {} };
  const ask = navigator.mediaDevices.getUserMedia.bind(navigator.mediaDevices);
  navigator.mediaDevices.getUserMedia = async (wish) => {
    const stream = await ask(wish);
    for (const track of stream.getTracks()) {
      const tell = track.getSettings.bind(track);
      track.getSettings = () => ({ ...tell(), ...window.parts.settings });
      window.parts.tracks.push(track);
    }
    return stream;
  };
  window.AudioContext = class extends window.AudioContext {
    constructor(options) {
      super(options);
      window.parts.contexts.push(this);
    }
  };
  window.AudioWorkletNode = class extends window.AudioWorkletNode {
    constructor(...given) {
      super(...given);
      window.parts.nodes.push(this);
    }
  };
  navigator.permissions.query = async () => {
    window.parts.permission = Object.assign(new EventTarget(), { state: 'granted' });
    return window.parts.permission;
  };
`;

declare global {
  interface Window {
    parts: {
      tracks: MediaStreamTrack[];
      contexts: AudioContext[];
      nodes: AudioWorkletNode[];
      permission: (EventTarget & { state: string }) | null;
      settings: MediaTrackSettings;
    };
  }
}

async function open(options: Partial<OpenPageOptions> = {}): Promise<BenchPage> {
  opened = await openPage({
    chromiumPath: inject('chromiumPath'),
    url: inject('pageUrl'),
    browser: shared,
    beforeScripts: KEEP_PARTS,
    ...options,
  });
  return new BenchPage(opened.page);
}

/** A page that listens to a microphone, with one mark made by hand. */
async function listening(beforeScripts = ''): Promise<BenchPage> {
  const bench = await open({ beforeScripts: KEEP_PARTS + beforeScripts });
  await bench.page.getByRole('radio', { name: 'Microphone' }).check();
  await bench.listen();
  // The context runs before the worklet is there: only the page knows when all is.
  await bench.page.waitForFunction(
    () => document.querySelector('bench-app')?.session.hearing.capture.kind === 'running',
  );
  await bench.page.keyboard.press('m');
  await expect.poll(() => bench.marks.count()).toBe(1);
  return bench;
}

const ended = (bench: BenchPage) => bench.page.getByRole('region', { name: 'Listening ended' });
const paused = (bench: BenchPage) => bench.page.getByRole('region', { name: 'Listening is paused' });
const trust = (bench: BenchPage) => bench.page.getByRole('region', { name: 'Can the level be trusted?' });

describe('a fault while the page listens', () => {
  it.each<[string, () => void, RegExp]>([
    [
      'the microphone is unplugged',
      () => window.parts.tracks.at(-1)?.dispatchEvent(new Event('ended')),
      /unplugged/,
    ],
    [
      'the device vanishes from the list',
      () => {
        window.parts.settings = { deviceId: 'gone' };
        navigator.mediaDevices.dispatchEvent(new Event('devicechange'));
      },
      /unplugged/,
    ],
    [
      'the permission is taken back',
      () => {
        if (window.parts.permission === null) return;
        window.parts.permission.state = 'denied';
        window.parts.permission.dispatchEvent(new Event('change'));
      },
      /permission for the microphone was withdrawn/,
    ],
    [
      'the worklet fails',
      () => window.parts.nodes.at(-1)?.dispatchEvent(new Event('processorerror')),
      /audio stopped working/,
    ],
    ['the audio system is closed', () => void window.parts.contexts.at(-1)?.close(), /audio stopped working/],
  ])('%s: says so, keeps the mark, and one press rebuilds capture', async (_, breakIt, words) => {
    const bench = await listening();
    await bench.page.evaluate(breakIt);
    await ended(bench).waitFor();
    expect(await ended(bench).innerText()).toMatch(words);
    expect(await bench.marks.count()).toBe(1);
    expect(await bench.page.evaluate(() => window.parts.tracks.map((track) => track.readyState))).toEqual([
      'ended',
    ]);
    await bench.page.evaluate(() => (window.parts.settings = {}));
    await ended(bench).getByRole('button', { name: 'Start again' }).click();
    await bench.page.getByRole('button', { name: 'Stop' }).waitFor();
    await bench.page.waitForFunction(() => window.parts.contexts.at(-1)?.state === 'running');
    expect(await ended(bench).count()).toBe(0);
    expect(await bench.marks.count()).toBe(1);
    expect(opened?.faults).toEqual([]);
  });

  it('pauses while the microphone is muted, and goes on by itself', async () => {
    const bench = await listening();
    await bench.page.evaluate(() => window.parts.tracks.at(-1)?.dispatchEvent(new Event('mute')));
    await paused(bench).waitFor();
    expect(await paused(bench).innerText()).toMatch(/muted/);
    await bench.page.evaluate(() => window.parts.tracks.at(-1)?.dispatchEvent(new Event('unmute')));
    await paused(bench).waitFor({ state: 'detached' });
    expect(await bench.marks.count()).toBe(1);
  });

  it('pauses while the audio system is suspended, and asks it to go on', async () => {
    const bench = await listening();
    await bench.page.evaluate(() => {
      const context = window.parts.contexts.at(-1);
      if (context === undefined) return;
      // It won't go on until the test says so.
      context.resume = () => Promise.resolve();
      return context.suspend();
    });
    await paused(bench).waitFor();
    await bench.page.evaluate(() => AudioContext.prototype.resume.call(window.parts.contexts.at(-1)));
    await paused(bench).waitFor({ state: 'detached' });
  });

  it('doubts the level when the system switches a voice mode on', async () => {
    const bench = await listening();
    expect(await trust(bench).count()).toBe(0);
    await bench.page.evaluate(() => {
      window.parts.settings = { noiseSuppression: true };
      window.parts.tracks.at(-1)?.dispatchEvent(new Event('configurationchange'));
    });
    await trust(bench).waitFor();
    expect(await trust(bench).innerText()).toMatch(/The level is in doubt.*noise suppression on/s);
    expect(await trust(bench).innerText()).toMatch(/Noise suppression: on/);
  });

  it('asks for the gain check where the browser says nothing', async () => {
    const bench = await listening('window.parts.settings = { autoGainControl: undefined };');
    await trust(bench).waitFor();
    expect(await trust(bench).innerText()).toMatch(
      /Not checked yet.*automatic gain.*Automatic gain: unknown/s,
    );
    await trust(bench).getByRole('link', { name: 'Go to the gain check' }).click();
    await bench.page.getByRole('button', { name: 'Begin the gain check' }).click();
    await bench.page.getByText('Strike the fork once and hold it still').waitFor();
  });
});

describe('a microphone that can’t be had', () => {
  it.each([
    ['NotAllowedError', 'refused', /was refused/],
    ['NotFoundError', 'none', /No microphone was found/],
    ['NotReadableError', 'busy', /another program or tab may be using it/],
    ['OverconstrainedError', 'gone', /is not there any more/],
  ])('%s has its own words, and everything else works', async (name, message, words) => {
    const bench = await open({
      beforeScripts: `navigator.mediaDevices.getUserMedia = () => Promise.reject(new DOMException('${message}', '${name}'));`,
    });
    await bench.page.getByRole('radio', { name: 'Microphone' }).check();
    await bench.listen();
    await ended(bench).waitFor();
    expect(await ended(bench).innerText()).toMatch(words);
    await bench.page.keyboard.press('m');
    await expect.poll(() => bench.marks.count()).toBe(1);
    await bench.page.getByRole('radio', { name: 'Practice column' }).check();
    await bench.listen();
    await bench.page.getByRole('button', { name: 'Stop' }).waitFor();
  });

  it('offers a tab of its own inside a frame that keeps the microphone', async () => {
    const bench = await open();
    const outer = new URL('outer.html', inject('pageUrl')).href;
    const body = `<iframe src="${inject('pageUrl')}" allow="microphone 'none'" width="900" height="700"></iframe>`;
    await bench.page.route(outer, (route) => route.fulfill({ contentType: 'text/html', body }));
    await bench.page.goto(outer);
    const frame = bench.page.frameLocator('iframe');
    await frame.getByRole('radio', { name: 'Microphone' }).check();
    await frame.getByRole('button', { name: 'Listen', exact: true }).click();
    const region = frame.getByRole('region', { name: 'Listening ended' });
    await region.waitFor();
    expect(await region.innerText()).toMatch(/Open it in a tab of its own/);
    expect(await region.getByRole('link', { name: 'Open in a tab of its own' }).getAttribute('target')).toBe(
      '_blank',
    );
  });

  it('explains each refusal and the administrator’s switches on a page that loads when asked for', async () => {
    const bench = await open();
    const loaded: string[] = [];
    bench.page.on('request', (request) => loaded.push(request.url()));
    await bench.page.evaluate(() => (location.hash = '#microphone'));
    const help = bench.page.getByRole('article', { name: 'Microphone help' });
    await help.waitFor();
    expect(loaded.some((url) => url.includes('microphoneElement'))).toBe(true);
    for (const words of [
      'Permissions-Policy: microphone=(self)',
      'AudioCaptureAllowedUrls',
      'tab of its own',
    ]) {
      expect(await help.innerText()).toContain(words);
    }
  });
});
