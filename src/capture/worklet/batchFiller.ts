import type { CaptureBatch } from './captureMessages.ts';

/**
 * Gathers the small pieces that the audio system hands over into batches. Runs on the audio thread: in steady
 * state it takes its buffers from those that came back.
 */
export class BatchFiller {
  private channels: Float32Array<ArrayBuffer>[] = [];
  private startFrame = 0;
  private filled = 0;
  private readonly spare: Float32Array<ArrayBuffer>[] = [];

  /**
   * @param batchFrames  frames a batch, > 0
   * @param mostChannels  further channels are left out
   * @param emit  takes each batch; its buffers are its own from then on
   */
  constructor(
    private readonly batchFrames: number,
    private readonly mostChannels: number,
    private readonly emit: (batch: CaptureBatch) => void,
  ) {}

  /**
   * Adds a piece. A jump in the count, or a change in the number of channels, ends the batch before it.
   * @param input  one array a channel, of any one length; none where nothing is connected
   * @param frame  place of its first frame on the audio system's count
   */
  push(input: readonly Float32Array[], frame: number): void {
    const count = Math.min(input.length, this.mostChannels);
    const length = input.at(0)?.length ?? 0;
    if (count === 0 || length === 0) {
      this.flush();
      return;
    }
    if (this.filled > 0 && (frame !== this.startFrame + this.filled || count !== this.channels.length))
      this.flush();
    for (let done = 0; done < length;) {
      if (this.filled === 0) this.begin(count, frame + done);
      const part = Math.min(length - done, this.batchFrames - this.filled);
      for (let channel = 0; channel < count; channel += 1) {
        const from = input[channel];
        const to = this.channels[channel];
        if (from === undefined || to === undefined) continue;
        // Copied one by one: a subarray would be garbage on the audio thread.
        for (let i = 0; i < part; i += 1) to[this.filled + i] = from[done + i] ?? 0;
      }
      this.filled += part;
      done += part;
      if (this.filled === this.batchFrames) this.flush();
    }
  }

  /** Takes buffers back. */
  recycle(channels: readonly Float32Array<ArrayBuffer>[]): void {
    for (const channel of channels) {
      // More than a few are never in flight; what comes beyond is left to the collector.
      if (channel.length === this.batchFrames && this.spare.length < 16) this.spare.push(channel);
    }
  }

  private begin(count: number, startFrame: number): void {
    this.startFrame = startFrame;
    const channels: Float32Array<ArrayBuffer>[] = [];
    for (let i = 0; i < count; i += 1) channels.push(this.spare.pop() ?? new Float32Array(this.batchFrames));
    this.channels = channels;
  }

  private flush(): void {
    if (this.filled === 0) return;
    const { channels, startFrame, filled } = this;
    this.channels = [];
    this.filled = 0;
    this.emit({ kind: 'batch', startFrame, frames: filled, channels });
  }
}
