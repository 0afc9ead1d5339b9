import { MicrophoneSource } from '../../../src/capture/microphoneSource.ts';
import { PracticeSource } from '../../../src/capture/practiceSource.ts';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import { RecordingSource } from '../../../src/capture/recordingSource.ts';
import type { CaptureState, SampleBlock, SoundSource } from '../../../src/capture/soundSource.ts';

/** Drives the sources from a test and keeps what they deliver. */
class CaptureProbe {
  readonly states: CaptureState[] = [];
  readonly blocks: SampleBlock[] = [];
  readonly progress: number[] = [];
  private source: SoundSource | null = null;

  microphone(): Promise<void> {
    return this.start(new MicrophoneSource());
  }

  practice(): Promise<void> {
    const column = new PracticeColumn();
    column.strike();
    return this.start(new PracticeSource(column));
  }

  /** @param base64  the file's bytes */
  recording(base64: string): Promise<void> {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    return this.start(
      new RecordingSource(new Blob([bytes]), { onProgress: (share) => this.progress.push(share) }),
    );
  }

  /** Starts the source that is there once more. */
  again(): Promise<void> {
    return this.source === null ? Promise.resolve() : this.start(this.source);
  }

  stop(): void {
    this.source?.stop();
  }

  get kinds(): string[] {
    return this.states.map((state) => state.kind);
  }

  get frames(): number {
    return this.blocks.reduce((sum, block) => sum + block.samples.length, 0);
  }

  /** All sound so far, at its place on the time axis, as bytes of a Float32Array. */
  base64(): string {
    const last = this.blocks.at(-1);
    const samples = new Float32Array(last === undefined ? 0 : last.startFrame + last.samples.length);
    for (const block of this.blocks) samples.set(block.samples, block.startFrame);
    const bytes = new Uint8Array(samples.buffer);
    let text = '';
    for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
    return btoa(text);
  }

  private start(source: SoundSource): Promise<void> {
    this.source = source;
    this.states.length = 0;
    this.blocks.length = 0;
    return source.start({
      onBlock: (block) => this.blocks.push(block),
      onState: (state) => this.states.push(state),
    });
  }
}

declare global {
  interface Window {
    probe: CaptureProbe;
  }
}

window.probe = new CaptureProbe();
