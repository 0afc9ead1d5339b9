import { decodeRecording } from './decodedRecording.ts';
import type { OpenRecording } from './decodedRecording.ts';
import type { CaptureFailure, SoundCue, SoundListener, SoundSource } from './soundSource.ts';
import { WavError, WavReader, bytesOfBlob, readCues } from './wav.ts';
import type { FileRemark } from './wav.ts';
import { yieldToPage } from './yieldToPage.ts';

const BLOCK_FRAMES = 4096;
/** Work between two looks at what else the page has to do, ms: shorter than one picture of the screen. */
const WORK_MS = 12;
/** Longer than any lesson: more is a mistake, and hours of points would fill the memory. */
const MOST_S = 4 * 3600;

export interface RecordingOptions {
  /** Told now and then how much has been delivered, 0..1. */
  readonly onProgress?: (share: number) => void;
  /** Marked moments, where they are known better than the file tells. */
  readonly cues?: readonly SoundCue[];
}

/**
 * A recording as a source of sound, delivered as fast as the listener takes it. A WAV goes through the reader of
 * the command line, so that both give the same results; all else through the browser's decoder.
 */
export class RecordingSource implements SoundSource {
  readonly kind = 'recording';
  private listener: SoundListener | null = null;
  private opened: OpenRecording | null = null;

  /** @param file  what the person chose */
  constructor(
    private readonly file: Blob,
    private readonly options: RecordingOptions = {},
  ) {}

  /** Seconds of sound; null before the file was opened. */
  get durationS(): number | null {
    return this.opened === null ? null : this.opened.frameCount / this.opened.sampleRateHz;
  }

  /** What should be known of the file: a cut-off end, the channel used; none before it was opened. */
  get remarks(): readonly FileRemark[] {
    return this.opened?.remarks ?? [];
  }

  /** The file's cue points, or those given; none before the file was opened. */
  get cues(): readonly SoundCue[] {
    return this.options.cues ?? this.opened?.cues ?? [];
  }

  /** Settles when all is delivered, stopped or failed. */
  async start(listener: SoundListener): Promise<void> {
    this.stop();
    this.listener = listener;
    listener.onState({ kind: 'starting' });
    try {
      const recording = await openRecording(this.file);
      if (this.listener !== listener) return;
      this.opened = recording;
      listener.onState({ kind: 'running', sampleRateHz: recording.sampleRateHz, settings: null });
      await this.deliver(recording, listener);
    } catch (error) {
      if (this.listener !== listener) return;
      this.listener = null;
      listener.onState({ kind: 'failed', failure: failureOf(error) });
    }
  }

  stop(): void {
    const listener = this.listener;
    this.listener = null;
    listener?.onState({ kind: 'idle' });
  }

  private async deliver(recording: OpenRecording, listener: SoundListener): Promise<void> {
    let restedMs = performance.now();
    for await (const block of recording.blocks(BLOCK_FRAMES)) {
      if (this.listener !== listener) return;
      listener.onBlock(block);
      if (performance.now() - restedMs < WORK_MS) continue;
      this.options.onProgress?.(block.startFrame / recording.frameCount);
      await yieldToPage();
      restedMs = performance.now();
    }
    if (this.listener !== listener) return;
    this.listener = null;
    this.options.onProgress?.(1);
    listener.onState({ kind: 'ended' });
  }
}

async function openRecording(file: Blob): Promise<OpenRecording> {
  try {
    return await openWav(file);
  } catch (error) {
    // A WAV in a coding of its own, or no WAV at all, may still be sound to the browser.
    const isEmpty = error instanceof WavError && error.code !== 'not-audio';
    if (isEmpty || !(error instanceof WavError)) throw error;
    try {
      return await decodeRecording(file);
    } catch (decodeError) {
      throw error.isWav ? error : decodeError;
    }
  }
}

async function openWav(file: Blob): Promise<OpenRecording> {
  const read = bytesOfBlob(file);
  const reader = await WavReader.open(read, file.size);
  const { sampleRateHz, frameCount } = reader.format;
  if (reader.durationS > MOST_S) {
    const { durationS } = reader;
    throw new WavError({ code: 'recording-too-long', fault: 'duration', durationS, mostS: MOST_S }, true);
  }
  const remarks = await reader.remarks();
  const cues = (await readCues(read, file.size)).filter((cue) => cue.frame <= frameCount);
  return {
    sampleRateHz,
    frameCount,
    cues: cues.map(({ frame, label }) => ({ timeS: frame / sampleRateHz, label, markId: null })),
    remarks,
    blocks: (blockFrames) => reader.blocks(blockFrames),
  };
}

function failureOf(error: unknown): CaptureFailure {
  if (error instanceof WavError) return { code: error.fault.code, why: error.fault };
  // A file that was moved or changed since it was chosen, or a fault of the stages behind.
  const isUnreadable = error instanceof DOMException;
  return isUnreadable
    ? { code: 'not-audio', why: { code: 'not-audio', fault: 'unreadable' } }
    : { code: 'capture-broken', what: 'recording', said: String(error) };
}
