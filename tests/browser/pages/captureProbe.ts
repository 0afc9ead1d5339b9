import { browserAudio } from '../../../src/capture/audioSystem.ts';
import { MicrophoneSource } from '../../../src/capture/microphoneSource.ts';
import { PracticeSource } from '../../../src/capture/practiceSource.ts';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import { RecordingSource } from '../../../src/capture/recordingSource.ts';
import type { CaptureBatch } from '../../../src/capture/worklet/captureMessages.ts';
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

  /** Kinds of state in turn; a source may tell again that it runs, with what it has learnt since. */
  get kinds(): string[] {
    const kinds = this.states.map((state) => state.kind);
    return kinds.filter((kind, i) => kind !== kinds[i - 1]);
  }

  get frames(): number {
    return this.blocks.reduce((sum, block) => sum + block.samples.length, 0);
  }

  /** All sound so far, at its place on the time axis, as bytes of a Float32Array. */
  base64(): string {
    const last = this.blocks.at(-1);
    const samples = new Float32Array(last === undefined ? 0 : last.startFrame + last.samples.length);
    for (const block of this.blocks) samples.set(block.samples, block.startFrame);
    return base64Of(samples);
  }

  /**
   * Records the microphone twice at once for a benchmark: as the browser gives it by default, and with everything off.
   * @param seconds  how long
   */
  async record(seconds: number): Promise<RecordedMicrophone[]> {
    const context = new AudioContext();
    const kept = await Promise.all(
      (['defaults', 'off'] as const).map(async (processing) => {
        const off = { echoCancellation: false, noiseSuppression: false, autoGainControl: false };
        const stream = await navigator.mediaDevices.getUserMedia({
          audio: processing === 'off' ? off : true,
        });
        const node = await browserAudio.createCaptureNode(context);
        const batches: Float32Array[] = [];
        node.port.onmessage = ({ data }: MessageEvent<CaptureBatch>) =>
          batches.push(data.channels[0]?.slice(0, data.frames) ?? new Float32Array(0));
        const source = context.createMediaStreamSource(stream);
        source.connect(node);
        node.connect(context.destination);
        return {
          processing,
          settings: stream.getAudioTracks()[0]?.getSettings() ?? {},
          batches,
          source,
          stream,
        };
      }),
    );
    await new Promise((resolve) => setTimeout(resolve, seconds * 1000));
    const recorded = kept.map(({ processing, settings, batches, stream }) => {
      for (const track of stream.getTracks()) track.stop();
      const samples = new Float32Array(batches.reduce((sum, batch) => sum + batch.length, 0));
      let at = 0;
      for (const batch of batches) {
        samples.set(batch, at);
        at += batch.length;
      }
      return { processing, settings, sampleRateHz: context.sampleRate, base64: base64Of(samples) };
    });
    await context.close();
    return recorded;
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

/** One microphone stream as a page got it. */
export interface RecordedMicrophone {
  readonly processing: 'defaults' | 'off';
  readonly settings: MediaTrackSettings;
  readonly sampleRateHz: number;
  /** Samples as bytes of a Float32Array. */
  readonly base64: string;
}

function base64Of(samples: Float32Array<ArrayBuffer>): string {
  const bytes = new Uint8Array(samples.buffer);
  let text = '';
  for (let i = 0; i < bytes.length; i += 8192) text += String.fromCharCode(...bytes.subarray(i, i + 8192));
  return btoa(text);
}

declare global {
  interface Window {
    probe: CaptureProbe;
  }
}

window.probe = new CaptureProbe();
