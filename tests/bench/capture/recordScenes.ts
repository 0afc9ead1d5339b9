import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { findChromium } from '../../browser/findChromium.ts';
import { serveCapturePage } from '../../browser/support/capturePage.ts';
import { openPage } from '../../browser/support/openPage.ts';
import type {} from '../../browser/pages/captureProbe.ts';
import { writeMicrophoneFile } from '../../support/wavFile.ts';
import type { Voices } from '../detector/voices/voices.ts';
import { makeScene, SCENE_RATE_HZ, SCENE_S } from './scene.ts';
import type { SceneKind } from './scene.ts';

/** A scene as it came out of the browser. */
export interface RecordedScene {
  readonly kind: SceneKind;
  readonly seed: number;
  readonly forkHz: number;
  readonly processing: Processing;
  readonly sampleRateHz: number;
  readonly samples: Float32Array;
}

/** What the browser was asked for: nothing at all, which leaves its defaults on, or every step off. */
export type Processing = 'defaults' | 'off';

const MOST_ATTEMPTS = 5;
/** Before this the file has not begun, or the device is still opening. */
const LEAD_IN_S = 1;
const LONGEST_HOLE_S = 0.25;

interface Order {
  readonly kind: SceneKind;
  readonly seed: number;
}

/** Half a second of silence before the scene; a little of the end is left out, where the file may be over. */
const RECORDED_S = SCENE_S + 0.2;

/**
 * Plays each scene to a real Chromium as its microphone and keeps what the page gets, with processing and without,
 * both from the same device at once. What the folder holds already is not recorded again.
 * @param folder  outside the project: about 4 MB a scene
 * @param atOnce  browsers side by side, 1..8
 * @param voices  who talks; recordings with other voices are other recordings
 */
export async function recordScenes(
  orders: readonly Order[],
  folder: string,
  atOnce: number,
  voices: Voices,
): Promise<RecordedScene[]> {
  mkdirSync(folder, { recursive: true });
  const missing = orders.filter((order) => !existsSync(paths(folder, order, voices).facts));
  if (missing.length > 0) {
    const chromiumPath = findChromium();
    const served = await serveCapturePage();
    try {
      const queue = [...missing];
      const work = async (): Promise<void> => {
        for (let order = queue.shift(); order !== undefined; order = queue.shift()) {
          await recordOne(order, folder, voices, chromiumPath, served.url);
          process.stderr.write(`recorded ${missing.length - queue.length}/${missing.length}\r`);
        }
      };
      await Promise.all(Array.from({ length: atOnce }, work));
    } finally {
      await served.close();
    }
  }
  return orders.flatMap((order) => readRecorded(order, folder, voices));
}

async function recordOne(
  order: Order,
  folder: string,
  voices: Voices,
  chromiumPath: string,
  url: string,
): Promise<void> {
  const scene = makeScene(order.kind, order.seed, voices);
  const files = paths(folder, order, voices);
  writeMicrophoneFile(files.wav, scene.samples, SCENE_RATE_HZ);
  try {
    for (let attempt = 1; attempt <= MOST_ATTEMPTS; attempt += 1) {
      const opened = await openPage({ chromiumPath, url, microphoneWav: files.wav });
      try {
        const recorded = await opened.page.evaluate((seconds) => window.probe.record(seconds), RECORDED_S);
        const sounds = recorded.map(({ base64 }) => Buffer.from(base64, 'base64'));
        if (!sounds.every((sound) => isWhole(floatsOf(sound), recorded[0]?.sampleRateHz ?? 0))) continue;
        recorded.forEach(({ processing }, i) =>
          writeFileSync(files[processing], sounds[i] ?? Buffer.alloc(0)),
        );
        const facts = { sampleRateHz: recorded[0]?.sampleRateHz, forkHz: scene.forkHz, what: scene.facts };
        writeFileSync(
          files.facts,
          JSON.stringify({ ...facts, settings: recorded.map((one) => one.settings) }),
        );
        return;
      } finally {
        await opened.close();
      }
    }
    throw new Error(
      `Scene ${order.kind} ${order.seed} came through with holes ${MOST_ATTEMPTS} times: is the machine busy?`,
    );
  } finally {
    rmSync(files.wav, { force: true });
  }
}

/** A busy machine loses the sound for seconds: such a recording says nothing about processing. */
function isWhole(samples: Float32Array, sampleRateHz: number): boolean {
  let zeros = 0;
  let longest = 0;
  for (let i = Math.round(LEAD_IN_S * sampleRateHz); i < samples.length; i += 1) {
    zeros = samples[i] === 0 ? zeros + 1 : 0;
    longest = Math.max(longest, zeros);
  }
  return samples.length > (RECORDED_S - 0.5) * sampleRateHz && longest < LONGEST_HOLE_S * sampleRateHz;
}

function floatsOf(bytes: Buffer): Float32Array {
  return new Float32Array(Uint8Array.from(bytes).buffer);
}

function readRecorded(order: Order, folder: string, voices: Voices): RecordedScene[] {
  const files = paths(folder, order, voices);
  const facts = JSON.parse(readFileSync(files.facts, 'utf8')) as { sampleRateHz: number; forkHz: number };
  return (['defaults', 'off'] as const).map((processing) => {
    return { ...order, ...facts, processing, samples: floatsOf(readFileSync(files[processing])) };
  });
}

function paths(folder: string, { kind, seed }: Order, voices: Voices) {
  const path = (ending: string): string => join(folder, `${voices.kind}-${kind}-${seed}.${ending}`);
  return { wav: path('wav'), defaults: path('defaults.f32'), off: path('off.f32'), facts: path('json') };
}
