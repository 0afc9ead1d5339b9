import { browserAudio } from './audioSystem.ts';
import type { AudioSystem } from './audioSystem.ts';
import { CaptureRun } from './captureRun.ts';
import type { SoundListener, SoundSource } from './soundSource.ts';

export interface MicrophoneOptions {
  /** A device of the browser's list; null or absent for the default one. */
  readonly deviceId?: string | null;
  /** Stands in for the browser's audio system in tests. */
  readonly system?: AudioSystem;
}

/**
 * The microphone, unprocessed as far as the browser obeys. It owns one stream and one audio context at a time;
 * starting again rebuilds both.
 */
export class MicrophoneSource implements SoundSource {
  readonly kind = 'microphone';
  private run: CaptureRun | null = null;
  private listener: SoundListener | null = null;

  constructor(private readonly options: MicrophoneOptions = {}) {}

  /** Call it from a button's handler, or the browser may keep the sound paused. */
  start(listener: SoundListener): Promise<void> {
    this.run?.close();
    this.listener = listener;
    this.run = new CaptureRun(this.options.system ?? browserAudio, listener, this.options.deviceId ?? null);
    return this.run.open();
  }

  stop(): void {
    this.run?.close();
    this.run = null;
    const listener = this.listener;
    this.listener = null;
    listener?.onState({ kind: 'idle' });
  }
}
