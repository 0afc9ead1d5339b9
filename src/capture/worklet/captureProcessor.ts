import { BatchFiller } from './batchFiller.ts';
import { BATCH_FRAMES, CAPTURE_PROCESSOR } from './captureMessages.ts';
import type { RecycledBuffers } from './captureMessages.ts';

const MOST_CHANNELS = 2;

/** Hands what the microphone hears to the page, batch by batch, and does nothing else. */
class CaptureProcessor extends AudioWorkletProcessor {
  private readonly filler: BatchFiller;

  constructor() {
    super();
    this.filler = new BatchFiller(BATCH_FRAMES, MOST_CHANNELS, (batch) =>
      this.port.postMessage(
        batch,
        batch.channels.map((channel) => channel.buffer),
      ),
    );
    this.port.onmessage = (event: MessageEvent<RecycledBuffers>) => this.filler.recycle(event.data.channels);
  }

  process(inputs: Float32Array[][]): boolean {
    this.filler.push(inputs[0] ?? [], currentFrame);
    return true;
  }
}

registerProcessor(CAPTURE_PROCESSOR, CaptureProcessor);
