/** Frames of one batch: many small messages lose sound, so about 23 a second are sent. */
export const BATCH_FRAMES = 2048;
/** Name under which the processor is registered. */
export const CAPTURE_PROCESSOR = 'capture-processor';

/** From the audio thread: sound as it came in. Its buffers are transferred. */
export interface CaptureBatch {
  readonly kind: 'batch';
  /** Place of the first frame on the audio system's own count. */
  readonly startFrame: number;
  /** Frames that hold sound, 1..BATCH_FRAMES; the buffers may be longer. */
  readonly frames: number;
  /** One array a channel. */
  readonly channels: readonly Float32Array<ArrayBuffer>[];
}

/** To the audio thread: buffers to be filled again. */
export interface RecycledBuffers {
  readonly kind: 'recycle';
  readonly channels: readonly Float32Array<ArrayBuffer>[];
}
