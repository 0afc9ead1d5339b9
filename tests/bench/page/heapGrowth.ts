import { join } from 'node:path';
import type { Browser } from 'playwright-core';
import { openPage } from '../../browser/support/openPage.ts';
import { pinkNoise } from '../detector/noises.ts';
import { Random } from '../detector/random.ts';
import type { Voices } from '../detector/voices/voices.ts';
import { slideRecording } from '../../support/slideRecording.ts';
import { writeWavFile } from '../../support/wavFile.ts';

/** Memory of the page after so much listening, garbage collected. */
export interface HeapUse {
  readonly minutes: number;
  /** V8's heap, MB: objects, strings, code. */
  readonly heapMb: number;
  /** What array buffers hold beside it, MB, the bench's own programme left out. */
  readonly buffersMb: number;
  readonly marks: number;
}

/**
 * An hour of sound in minutes of clock time. The page runs as it is, with its whole live path and all its pictures; only
 * the parts of the browser at its edge are other ones: the microphone's worklet node is a stand-in that hands over
 * batches as fast as the page takes them, and `performance.now()` follows the sound, so that every limit of the page's
 * own ("ten pictures a second") counts in simulated time. Half a second of sound is handed over in one task.
 */
const FAST_MICROPHONE = `(() => {
  const RATE = 48000, FRAMES = 2048, BATCHES_A_TASK = 12;
  let soundMs = 0, frame = 0, port = null, programme = null;
  const zero = performance.now();
  performance.now = () => zero + soundMs;
  const Context = AudioContext;
  window.AudioContext = class extends Context {
    constructor(options) { super({ ...options, sampleRate: RATE }); }
  };
  window.AudioWorkletNode = function (context) {
    const node = context.createGain();
    port = { onmessage: null, postMessage() {}, close() {} };
    return Object.defineProperty(node, 'port', { value: port });
  };
  navigator.mediaDevices.getUserMedia = async () => {
    const { stream } = new Context().createMediaStreamDestination();
    const settings = { channelCount: 1, sampleRate: RATE };
    for (const step of ['echoCancellation', 'noiseSuppression', 'autoGainControl']) settings[step] = false;
    stream.getAudioTracks()[0].getSettings = () => settings;
    return stream;
  };
  const rest = () => new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => { port1.close(); port2.close(); resolve(); };
    port2.postMessage(null);
  });
  window.hear = async (seconds) => {
    programme ??= new Int16Array((await (await fetch('bench-programme.wav')).arrayBuffer()).slice(44));
    const end = frame + seconds * RATE;
    for (let batches = 1; frame < end; batches += 1) {
      const samples = new Float32Array(FRAMES);
      for (let i = 0; i < FRAMES; i += 1) samples[i] = programme[(frame + i) % programme.length] / 32768;
      soundMs += (1000 * FRAMES) / RATE;
      port.onmessage({ data: { kind: 'batch', startFrame: frame, frames: FRAMES, channels: [samples] } });
      frame += FRAMES;
      if (batches % BATCHES_A_TASK === 0) await rest();
    }
    await rest();
  };
  window.isHeard = () => port?.onmessage != null;
  window.programmeBytes = () => programme?.byteLength ?? 0;
})();`;

const PROGRAMME_FILE = 'bench-programme.wav';
const RATE_HZ = 48_000;

/** Four slides past two resonances each, amid talk, with ten seconds of room between. @returns its length, s */
export function addProgrammeTo(siteFolder: string, voices: Voices): number {
  const parts = [3, 5, 7, 9].flatMap((seed) => {
    const { samples } = slideRecording({ forkHz: 512, closed: true, seed, talkDb: -6, voices });
    const room = pinkNoise(new Random(seed), 10 * RATE_HZ, RATE_HZ).map((value) => 0.001 * value);
    return [samples, room];
  });
  const all = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  parts.reduce((at, part) => (all.set(part, at), at + part.length), 0);
  writeWavFile(join(siteFolder, PROGRAMME_FILE), all, RATE_HZ);
  return all.length / RATE_HZ;
}

/** Listens and measures after each of these times. @param minutes  rising */
export async function heapGrowth(
  browser: Browser,
  chromiumPath: string,
  url: string,
  minutes: readonly number[],
): Promise<readonly HeapUse[]> {
  const opened = await openPage({ chromiumPath, browser, url, beforeScripts: FAST_MICROPHONE });
  const { page } = opened;
  try {
    await page.getByRole('radio', { name: 'Microphone' }).check();
    await page.getByRole('button', { name: 'Listen', exact: true }).click();
    await page.waitForFunction(() => (window as unknown as { isHeard(): boolean }).isHeard());
    const session = await page.context().newCDPSession(page);
    await session.send('HeapProfiler.enable');
    const found: HeapUse[] = [];
    let heardS = 0;
    for (const minute of minutes) {
      // A minute at a time: no command to the page waits for long.
      for (; heardS < minute * 60; heardS += 60) await page.evaluate('window.hear(60)');
      await session.send('HeapProfiler.collectGarbage');
      await session.send('HeapProfiler.collectGarbage');
      const usage = (await session.send('Runtime.getHeapUsage')) as {
        usedSize: number;
        backingStorageSize?: number;
      };
      const programmeBytes = Number(await page.evaluate('window.programmeBytes()'));
      found.push({
        minutes: minute,
        heapMb: usage.usedSize / 1e6,
        buffersMb: ((usage.backingStorageSize ?? NaN) - programmeBytes) / 1e6,
        marks: await page.getByRole('group', { name: /^Mark \d+$/ }).count(),
      });
    }
    if (opened.faults.length > 0) throw new Error(opened.faults.join('; '));
    return found;
  } finally {
    await opened.close();
  }
}
