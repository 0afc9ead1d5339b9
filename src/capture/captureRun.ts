import type { AudioSystem } from './audioSystem.ts';
import { BatchJoiner } from './batchJoiner.ts';
import {
  CAPTURE_BROKEN,
  failureBeforeAsking,
  failureOfError,
  MICROPHONE_LOST,
  PERMISSION_WITHDRAWN,
  UNEVEN_SOUND,
} from './captureFailures.ts';
import type { ChannelReason } from './channelJudge.ts';
import { rawAudioConstraints, readSettings } from './captureSettings.ts';
import { ClockWatch } from './clockWatch.ts';
import type {
  CaptureFailure,
  CaptureHold,
  CaptureSettings,
  SampleBlock,
  SoundListener,
} from './soundSource.ts';
import type { CaptureBatch, RecycledBuffers } from './worklet/captureMessages.ts';

/** A question of the browser that stands this long may have been overlooked, ms. */
const PROMPT_HINT_MS = 6000;
const TICK_MS = 500;
/** A browser that waits for a press of a button never answers a wish to go on; look after this long, ms. */
const RESUME_PATIENCE_MS = 700;
/** As many ticks without sound mean that the audio clock stands still. */
const FROZEN_TICKS = 4;
/** As many zeros in a row are no quiet room, whose noise is some bits large, s. */
const SILENT_S = 2.5;

/** One run of the microphone, from the question to the release; never used twice. */
export class CaptureRun {
  private over = false;
  private readonly releases: (() => void)[] = [];
  private context: AudioContext | null = null;
  private settings: CaptureSettings | null = null;
  private joiner: BatchJoiner | null = null;
  private readonly holds = new Map<CaptureHold, number>();
  private ticksWithoutSound = 0;
  private readonly clockWatch = new ClockWatch();
  /** Frames by the audio system's own count since the first batch; null before it. */
  private heard: { readonly firstFrame: number; frames: number } | null = null;
  private channel: ChannelReason | null = null;
  /** Exact zeros so far, up to the last sample. */
  private silentFrames = 0;

  constructor(
    private readonly system: AudioSystem,
    private readonly listener: SoundListener,
    private readonly deviceId: string | null,
  ) {}

  /** Asks, opens and starts; a failure becomes a state. Call it from a button's handler. */
  async open(): Promise<void> {
    this.listener.onState({ kind: 'starting' });
    const mediaDevices = this.system.mediaDevices();
    // Older browsers lack the method, whatever the types say.
    const canAsk = typeof mediaDevices?.getUserMedia === 'function';
    const refusal = failureBeforeAsking(this.system.surroundings(), canAsk);
    if (refusal !== null || mediaDevices === undefined) {
      this.fail(refusal ?? CAPTURE_BROKEN);
      return;
    }
    try {
      // Before the question is answered, while the button's press still counts.
      this.context = this.system.createContext();
      const stream = await this.ask(mediaDevices);
      if (this.over) stopTracks(stream);
      else await this.connect(stream, mediaDevices, this.context);
    } catch (error) {
      this.fail(failureOfError(error, this.system.surroundings()));
    }
  }

  /** Releases everything. Nothing is told afterwards. Safe to call at any time and twice. */
  close(): void {
    this.over = true;
    for (const release of this.releases.splice(0).reverse()) release();
    const context = this.context;
    this.context = null;
    if (context !== null && context.state !== 'closed') context.close().catch(() => undefined);
  }

  private async ask(mediaDevices: MediaDevices): Promise<MediaStream> {
    const endHint = this.system.every(PROMPT_HINT_MS, () => {
      if (!this.over) this.listener.onState({ kind: 'starting', waitsFor: 'permission' });
      endHint();
    });
    this.releases.push(endHint);
    try {
      return await mediaDevices.getUserMedia({ audio: rawAudioConstraints(this.deviceId), video: false });
    } finally {
      endHint();
    }
  }

  private async connect(
    stream: MediaStream,
    mediaDevices: MediaDevices,
    context: AudioContext,
  ): Promise<void> {
    this.releases.push(() => stopTracks(stream));
    const track = stream.getAudioTracks().at(0);
    if (track === undefined || track.readyState === 'ended') {
      this.fail(MICROPHONE_LOST);
      return;
    }
    this.settings = readSettings(track);
    const node = await this.system.createCaptureNode(context);
    if (this.over) return;
    const source = context.createMediaStreamSource(stream);
    source.connect(node);
    // The node puts out silence; only what reaches the destination is sure to be run.
    node.connect(context.destination);
    this.releases.push(() => {
      source.disconnect();
      node.disconnect();
      node.port.onmessage = null;
      node.port.close();
    });
    this.joiner = new BatchJoiner(context.sampleRate);
    this.watch(track, mediaDevices, node, context);
    if (context.state !== 'running') await this.resume(context);
    if (this.isOver()) return;
    if (track.muted) this.holds.set('muted', this.system.nowMs());
    if (context.state !== 'running') this.holds.set('suspended', this.system.nowMs());
    this.releases.push(this.system.keepScreenOn());
    this.announce();
    node.port.onmessage = (event: MessageEvent<CaptureBatch>) => this.take(event.data, node);
  }

  private resume(context: AudioContext): Promise<void> {
    return new Promise((resolve) => {
      const finish = (): void => {
        endPatience();
        resolve();
      };
      const endPatience = this.system.every(RESUME_PATIENCE_MS, finish);
      this.releases.push(finish);
      context.resume().then(finish, finish);
    });
  }

  private watch(
    track: MediaStreamTrack,
    mediaDevices: MediaDevices,
    node: AudioWorkletNode,
    context: AudioContext,
  ): void {
    this.listen(track, 'ended', () => this.fail(MICROPHONE_LOST));
    this.listen(track, 'mute', () => this.hold('muted'));
    this.listen(track, 'unmute', () => this.release('muted'));
    // Some systems switch a voice mode on behind the page's back.
    this.listen(track, 'configurationchange', () => this.readAgain(track));
    this.listen(node, 'processorerror', () => this.fail(CAPTURE_BROKEN));
    this.listen(context, 'statechange', () => {
      if (context.state === 'running') this.release('suspended');
      else if (context.state === 'closed') this.fail(CAPTURE_BROKEN);
      else this.hold('suspended');
    });
    // Some systems tell of an unplugged device only here.
    this.listen(mediaDevices, 'devicechange', () => {
      if (track.readyState === 'ended') this.fail(MICROPHONE_LOST);
      else void this.lookForDevice(track, mediaDevices);
    });
    this.releases.push(this.system.watchPermission(() => this.fail(PERMISSION_WITHDRAWN)));
    this.releases.push(this.system.every(TICK_MS, () => this.tick(context, track)));
  }

  /** A device that is gone from the list may leave its track running, in silence. */
  private async lookForDevice(track: MediaStreamTrack, mediaDevices: MediaDevices): Promise<void> {
    const { deviceId } = track.getSettings();
    const present = await mediaDevices.enumerateDevices().catch(() => null);
    if (present === null) return;
    const ids = present.filter(({ kind }) => kind === 'audioinput').map((device) => device.deviceId);
    // Without permission the list has no ids and tells nothing; one without any microphone tells enough.
    const isThere =
      ids.length > 0 && (deviceId === undefined || ids.every((id) => id === '') || ids.includes(deviceId));
    if (!isThere) this.fail(MICROPHONE_LOST);
  }

  /** Announces what the browser now says of its processing, where that has changed. */
  private readAgain(track: MediaStreamTrack): void {
    const now = readSettings(track);
    if (this.over || JSON.stringify(now) === JSON.stringify(this.settings)) return;
    this.settings = now;
    this.announce();
  }

  private take(batch: CaptureBatch, node: AudioWorkletNode): void {
    if (this.over || this.joiner === null) return;
    this.ticksWithoutSound = 0;
    this.release('frozen');
    const firstFrame = this.heard?.firstFrame ?? batch.startFrame;
    this.heard = { firstFrame, frames: batch.startFrame + batch.frames - firstFrame };
    const blocks = this.joiner.add(batch);
    const recycled: RecycledBuffers = { kind: 'recycle', channels: batch.channels };
    node.port.postMessage(
      recycled,
      batch.channels.map((channel) => channel.buffer),
    );
    // What comes in while muted is silence that nobody made.
    if (this.holds.size > 0) {
      this.joiner.interrupt(0);
      return;
    }
    const { channelChoice } = this.joiner;
    if (channelChoice !== null && channelChoice.reason !== this.channel) {
      this.channel = channelChoice.reason;
      this.announce();
    }
    for (const block of blocks) {
      if (this.isOver()) return;
      this.watchSilence(block);
      this.listener.onBlock(block);
    }
  }

  /** Announces when no sound at all has come for a while, and when it comes. */
  private watchSilence({ samples }: SampleBlock): void {
    const wasSilent = this.isSilent;
    this.silentFrames = samples.every((sample) => sample === 0) ? this.silentFrames + samples.length : 0;
    if (this.isSilent !== wasSilent) this.announce();
  }

  private get isSilent(): boolean {
    return this.context !== null && this.silentFrames >= SILENT_S * this.context.sampleRate;
  }

  private tick(context: AudioContext, track: MediaStreamTrack): void {
    // A hidden page's timers are no measure of anything.
    if (this.system.isPageHidden()) {
      this.ticksWithoutSound = 0;
      return;
    }
    if (this.holds.has('suspended')) {
      // Back in sight: most browsers let the page go on by itself.
      context.resume().catch(() => undefined);
      return;
    }
    this.readAgain(track);
    this.ticksWithoutSound += 1;
    if (this.ticksWithoutSound >= FROZEN_TICKS) this.hold('frozen');
    else this.compareClocks(context.sampleRate);
  }

  /** Time that was lost without a count (sleep, a starved machine) is put back into the time axis. */
  private compareClocks(sampleRateHz: number): void {
    if (this.heard === null || this.holds.size > 0) return;
    const found = this.clockWatch.look(this.system.nowMs() / 1000, this.heard.frames / sampleRateHz);
    if (found.kind === 'wrong-rate') this.fail(UNEVEN_SOUND);
    if (found.kind === 'lost') this.joiner?.interrupt(found.lostS);
  }

  private hold(hold: CaptureHold): void {
    if (this.over || this.holds.has(hold)) return;
    this.holds.set(hold, this.system.nowMs());
    this.joiner?.interrupt(0);
    this.announce();
  }

  private release(hold: CaptureHold): void {
    const sinceMs = this.holds.get(hold);
    if (this.over || sinceMs === undefined) return;
    this.holds.delete(hold);
    // Muted sound is counted by the audio system; a suspended or frozen one stands still.
    const lostS = hold === 'suspended' ? (this.system.nowMs() - sinceMs) / 1000 : 0;
    this.joiner?.interrupt(lostS);
    this.clockWatch.skip(lostS);
    this.ticksWithoutSound = 0;
    this.announce();
  }

  /** Tells the state that the holds amount to. */
  private announce(): void {
    const [hold] = this.holds.keys();
    if (hold !== undefined) {
      this.listener.onState({ kind: 'interrupted', hold });
    } else if (this.context !== null) {
      this.listener.onState({
        kind: 'running',
        sampleRateHz: this.context.sampleRate,
        settings: this.settings,
        ...(this.channel === null ? {} : { channel: this.channel }),
        ...(this.isSilent ? { isSilent: true } : {}),
      });
    }
  }

  private fail(failure: CaptureFailure): void {
    if (this.over) return;
    this.close();
    this.listener.onState({ kind: 'failed', failure });
  }

  private listen(target: EventTarget, type: string, callback: () => void): void {
    target.addEventListener(type, callback);
    this.releases.push(() => target.removeEventListener(type, callback));
  }

  /** A function, because the compiler would take the flag for unchanged across an await. */
  private isOver(): boolean {
    return this.over;
  }
}

function stopTracks(stream: MediaStream): void {
  for (const track of stream.getTracks()) track.stop();
}
