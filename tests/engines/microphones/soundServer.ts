import { execFileSync, spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { Random } from '../../bench/detector/random.ts';
import { TEST_RATE_HZ, writeWavFile } from '../../support/wavFile.ts';

/** Tries to reach the server, 100 ms each. */
const TRIES = 100;

/** Noise that every microphone has, dB re full scale, rms: without it a quiet moment would be no sound at all. */
const FLOOR_DB = -65;
const FLOOR_S = 20;

/** A sound server of this run's own, with one microphone into which files are played. */
export interface SoundServer {
  /** What a program is given so that it hears this server and no other. */
  readonly environment: Readonly<Record<string, string>>;
  /** Plays a WAV file into the microphone; settles when it is over. */
  play(wav: string): Promise<void>;
  plugIn(): void;
  unplug(): void;
  end(): Promise<void>;
}

/**
 * Starts PulseAudio with a sink that goes nowhere; its echo is the microphone, which is never wholly silent. What browsers play goes to another sink.
 * @param folder  a folder of its own
 * @throws Error with the line that tells how to get PulseAudio
 */
export async function startSoundServer(folder: string): Promise<SoundServer> {
  const socket = join(folder, 'native');
  mkdirSync(folder, { recursive: true });
  const floor = join(folder, 'floor.wav');
  writeWavFile(floor, floorNoise());
  const environment = { PULSE_SERVER: `unix:${socket}`, XDG_RUNTIME_DIR: folder };
  const loaded = [
    `module-native-protocol-unix auth-anonymous=1 socket=${socket}`,
    'module-null-sink sink_name=loudspeaker',
    'module-null-sink sink_name=air',
  ];
  const server = spawn(
    'pulseaudio',
    ['-n', '--daemonize=no', '--exit-idle-time=-1', ...loaded.flatMap((module) => ['-L', module])],
    { env: { ...process.env, ...environment, HOME: folder }, stdio: 'ignore' },
  );
  let fault: Error | null = null;
  server.once('error', (error) => (fault = error));
  const ask = (...words: string[]): string =>
    execFileSync('pactl', words, {
      env: { ...process.env, ...environment },
      encoding: 'utf8',
      stdio: ['ignore', 'pipe', 'ignore'],
    }).trim();
  await untilReady(
    () => ask('info'),
    () => fault,
  );
  ask('set-default-sink', 'loudspeaker');
  let module = '';
  const plugIn = (): void => {
    module = ask('load-module', 'module-remap-source', 'master=air.monitor', 'source_name=microphone');
    ask('set-default-source', 'microphone');
  };
  plugIn();
  const start = (wav: string): ChildProcess =>
    spawn('paplay', ['--device=air', wav], { env: { ...process.env, ...environment }, stdio: 'ignore' });
  let isOver = false;
  let hum = start(floor);
  const again = (): void => {
    if (!isOver) hum = start(floor).once('exit', again);
  };
  hum.once('exit', again);
  return {
    environment,
    plugIn,
    unplug: () => void ask('unload-module', module),
    play: (wav) =>
      new Promise((resolve, reject) => {
        const player = start(wav);
        player.once('error', reject);
        player.once('exit', (code) =>
          code === 0 ? resolve() : reject(new Error(`paplay ended with ${code}.`)),
        );
      }),
    end: async () => {
      isOver = true;
      hum.kill();
      const hasEnded = new Promise((resolve) => server.once('exit', resolve));
      server.kill();
      await hasEnded;
    },
  };
}

async function untilReady(ask: () => unknown, fault: () => Error | null): Promise<void> {
  for (let tries = 0; tries < TRIES; tries += 1) {
    try {
      ask();
      return;
    } catch {
      if (fault() !== null) break;
      await pause(100);
    }
  }
  throw new Error(
    'PulseAudio did not start. On Debian: apt-get install pulseaudio pulseaudio-utils gstreamer1.0-pulseaudio',
  );
}

/** Even between its limits, whose distance from zero is √3 times its rms. */
function floorNoise(): Float32Array {
  const random = new Random(1);
  const limit = Math.sqrt(3) * 10 ** (FLOOR_DB / 20);
  return Float32Array.from({ length: FLOOR_S * TEST_RATE_HZ }, () => random.uniform(-limit, limit));
}
