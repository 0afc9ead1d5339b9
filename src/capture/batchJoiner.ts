import { ChannelJudge } from './channelJudge.ts';
import type { ChannelChoice } from './channelJudge.ts';
import type { SampleBlock } from './soundSource.ts';
import { BATCH_FRAMES } from './worklet/captureMessages.ts';
import type { CaptureBatch } from './worklet/captureMessages.ts';

/** Sound that the choice of channel rests on, s; it is held back until the choice is made. */
const JUDGED_S = 0.5;

/** Exact silence of the chosen channel after which another one is taken, s. */
const DEAD_S = 1;

/**
 * Turns batches of the audio thread into mono blocks on one time axis: counts lost frames, marks gaps, and picks
 * one channel for the whole run.
 */
export class BatchJoiner {
  private hasBegun = false;
  private firstFrame: number | null = null;
  private nextFrame = 0;
  private addedFrames = 0;
  private broken = false;
  private judge: ChannelJudge | null = null;
  private choice: ChannelChoice | null = null;
  private held: CaptureBatch[] = [];
  private deadFrames = 0;

  constructor(private readonly sampleRateHz: number) {}

  /** Which channel is used; null until it is chosen. */
  get channelChoice(): ChannelChoice | null {
    return this.choice;
  }

  /**
   * Notes that sound was lost which the audio system did not count, as while it was suspended.
   * @param seconds  about how long, >= 0
   */
  interrupt(seconds: number): void {
    this.broken = true;
    // The audio system's count stands still meanwhile; the time axis must not.
    if (this.firstFrame !== null) this.addedFrames += Math.max(0, Math.round(seconds * this.sampleRateHz));
  }

  /** Blocks that this batch makes ready, oldest first; its samples are copied. */
  add(batch: CaptureBatch): SampleBlock[] {
    // While the browser opens the device its sound comes and goes: time begins with the first whole batch.
    if (!this.hasBegun && batch.frames < BATCH_FRAMES) return [];
    this.hasBegun = true;
    if (this.choice !== null) {
      this.leaveDeadChannel(batch, this.choice);
      return [this.blockOf(batch, this.choice.channel)];
    }
    this.judge ??= new ChannelJudge(batch.channels.length);
    this.judge.add(batch.channels.map((channel) => channel.subarray(0, batch.frames)));
    if (batch.channels.length > 1 && this.judge.frames < JUDGED_S * this.sampleRateHz) {
      this.held.push({ ...batch, channels: batch.channels.map((channel) => channel.slice(0, batch.frames)) });
      return [];
    }
    const choice = this.judge.choose();
    this.choice = choice;
    const ready = [...this.held, batch].map((one) => this.blockOf(one, choice.channel));
    this.held = [];
    return ready;
  }

  /** A channel that falls silent while another sounds (a plug half out) is left for the other. */
  private leaveDeadChannel(batch: CaptureBatch, choice: ChannelChoice): void {
    const isSilent = (channel: number): boolean =>
      batch.channels[channel]?.subarray(0, batch.frames).every((sample) => sample === 0) ?? true;
    if (batch.channels.length < 2 || !isSilent(choice.channel)) {
      this.deadFrames = 0;
      return;
    }
    const other = batch.channels.findIndex((_, channel) => !isSilent(channel));
    this.deadFrames = other < 0 ? 0 : this.deadFrames + batch.frames;
    if (other < 0 || this.deadFrames < DEAD_S * this.sampleRateHz) return;
    this.choice = {
      channel: other,
      reason: {
        channel: other,
        channelCount: batch.channels.length,
        faults: [{ channel: choice.channel, fault: 'fell-silent' }],
        isLessNoisy: false,
      },
    };
    this.deadFrames = 0;
    this.broken = true;
  }

  private blockOf(batch: CaptureBatch, channel: number): SampleBlock {
    // A device that came back with fewer channels has only its first.
    const samples = (batch.channels[channel] ?? batch.channels.at(0) ?? new Float32Array(0)).slice(
      0,
      batch.frames,
    );
    const isFirst = this.firstFrame === null;
    this.firstFrame ??= batch.startFrame;
    const startFrame = batch.startFrame - this.firstFrame + this.addedFrames;
    const discontinuity = !isFirst && (this.broken || startFrame !== this.nextFrame);
    this.broken = false;
    this.nextFrame = startFrame + samples.length;
    return { samples, startFrame, discontinuity };
  }
}
