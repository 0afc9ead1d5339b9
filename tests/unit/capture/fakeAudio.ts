import type { AudioSystem } from '../../../src/capture/audioSystem.ts';
import { BATCH_FRAMES } from '../../../src/capture/worklet/captureMessages.ts';
import type { CaptureBatch } from '../../../src/capture/worklet/captureMessages.ts';
import { ManualClock } from './manualClock.ts';

class FakeTrack extends EventTarget {
  readonly label = 'Test microphone';
  readyState: 'live' | 'ended' = 'live';
  muted = false;
  settings: MediaTrackSettings = { deviceId: 'device-1' };
  stop(): void {
    this.readyState = 'ended';
  }
  getSettings(): MediaTrackSettings {
    return { channelCount: 1, echoCancellation: false, noiseSuppression: false, ...this.settings };
  }
}

class FakeContext extends EventTarget {
  readonly sampleRate = 48_000;
  readonly destination = {};
  state: AudioContextState = 'running';
  resumes = 0;
  createMediaStreamSource(): unknown {
    return { connect: () => undefined, disconnect: () => undefined };
  }
  resume(): Promise<void> {
    this.resumes += 1;
    // A browser that waits for a press of a button leaves the promise open.
    return this.state === 'suspended' ? new Promise(() => undefined) : Promise.resolve();
  }
  close(): Promise<void> {
    this.state = 'closed';
    return Promise.resolve();
  }
  become(state: AudioContextState): void {
    this.state = state;
    this.dispatchEvent(new Event('statechange'));
  }
}

class FakeNode extends EventTarget {
  readonly port = {
    onmessage: null as ((event: { data: CaptureBatch }) => void) | null,
    postMessage: () => undefined,
    close: () => undefined,
  };
  connect(): void {
    // Sound goes nowhere.
  }
  disconnect(): void {
    // Sound went nowhere.
  }
}

/** An audio system whose every part a test can break; each start makes new parts, as the browser's does. */
export class FakeAudio {
  readonly clock = new ManualClock();
  readonly tracks: FakeTrack[] = [];
  readonly contexts: FakeContext[] = [];
  readonly nodes: FakeNode[] = [];
  readonly devices = Object.assign(new EventTarget(), {
    getUserMedia: () => this.ask(),
    enumerateDevices: () =>
      Promise.resolve(this.deviceIds.map((deviceId) => ({ kind: 'audioinput', deviceId, label: deviceId }))),
  });
  screenLocks = 0;
  isHidden = false;
  startsSuspended = false;
  isSecure = true;
  /** What the question is answered with: a stream at once, unless a test wants otherwise. */
  answer: () => Promise<void> = () => Promise.resolve();
  nodeAnswer: () => Promise<void> = () => Promise.resolve();
  readonly permissionWatchers = new Set<() => void>();
  /** Devices that the list holds; ids as the browser gives them. */
  deviceIds: string[] = ['device-1'];
  private frame = 0;

  readonly system: AudioSystem = {
    surroundings: () => ({ isSecureContext: this.isSecure, isFramed: false, policyAllows: null }),
    mediaDevices: () => this.devices as unknown as MediaDevices,
    createContext: () => {
      const context = new FakeContext();
      if (this.startsSuspended) context.state = 'suspended';
      this.contexts.push(context);
      return context as unknown as AudioContext;
    },
    createCaptureNode: async () => {
      await this.nodeAnswer();
      const node = new FakeNode();
      this.nodes.push(node);
      return node as unknown as AudioWorkletNode;
    },
    isPageHidden: () => this.isHidden,
    watchPermission: (onDenied) => {
      this.permissionWatchers.add(onDenied);
      return () => this.permissionWatchers.delete(onDenied);
    },
    keepScreenOn: () => {
      this.screenLocks += 1;
      return () => (this.screenLocks -= 1);
    },
    nowMs: this.clock.now,
    every: this.clock.every,
  };

  get track(): FakeTrack {
    return last(this.tracks);
  }

  get context(): FakeContext {
    return last(this.contexts);
  }

  get node(): FakeNode {
    return last(this.nodes);
  }

  /** One constant sample value a channel. */
  levels: readonly number[] = [0.1];

  /**
   * Sound comes in for this many batches of 43 ms, while time passes.
   * @param speed  of the sound against the clock: 1, unless the device runs at another rate
   */
  sound(batches: number, speed = 1): void {
    for (let i = 0; i < batches; i += 1) {
      this.clock.pass((BATCH_FRAMES / 48_000 / speed) * 1000);
      const channels = this.levels.map((level) => new Float32Array(BATCH_FRAMES).fill(level));
      const data: CaptureBatch = { kind: 'batch', startFrame: this.frame, frames: BATCH_FRAMES, channels };
      this.frame += BATCH_FRAMES;
      for (const node of this.nodes) node.port.onmessage?.({ data });
    }
  }

  /** The audio system loses frames, and counts them. */
  lose(frames: number): void {
    this.frame += frames;
  }

  /** True when nothing is held any more. */
  get isReleased(): boolean {
    return (
      this.tracks.every((track) => track.readyState === 'ended') &&
      this.contexts.every((context) => context.state === 'closed') &&
      this.nodes.every((node) => node.port.onmessage === null) &&
      this.clock.waiting === 0 &&
      this.permissionWatchers.size === 0 &&
      this.screenLocks === 0
    );
  }

  private async ask(): Promise<MediaStream> {
    await this.answer();
    const track = new FakeTrack();
    this.tracks.push(track);
    const stream = { getTracks: () => [track], getAudioTracks: () => [track] };
    return stream as unknown as MediaStream;
  }
}

function last<T>(list: readonly T[]): T {
  const item = list.at(-1);
  if (item === undefined) throw new Error('nothing was opened yet');
  return item;
}
