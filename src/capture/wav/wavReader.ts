import { ChannelJudge } from '../channelJudge.ts';
import type { ChannelChoice, ChannelReason } from '../channelJudge.ts';
import type { SampleBlock } from '../soundSource.ts';
import { decodeChannel, decodeSamples } from './decodeSamples.ts';
import { WavError } from './wavFormat.ts';
import type { WavFormat } from './wavFormat.ts';
import { walkWavHeader } from './wavHeader.ts';

/** Gives `length` bytes from `offset`, good until the next call; fewer only where the file ends. */
export type ReadBytes = (offset: number, length: number) => Promise<Uint8Array>;

/** Frames fetched from the file at once: about a second, so that an hour never lies in memory. */
const PIECE_FRAMES = 65_536;
/** Pieces of the file that the choice of channel rests on, spread evenly from start to end. */
const JUDGED_PIECES = 24;
const JUDGED_FRAMES = 8192;

/** Something to know of a file that can be used all the same. */
export type FileRemark =
  { readonly code: 'cut-off' } | { readonly code: 'one-channel'; readonly reason: ChannelReason };

/** Reads a WAV file piece by piece. */
export class WavReader {
  private choice: ChannelChoice | null = null;

  private constructor(
    private readonly read: ReadBytes,
    /** How the file is coded and how long it is. */
    readonly format: WavFormat,
  ) {}

  /**
   * Reads the header.
   * @param read  gives bytes of the file
   * @param fileLength  bytes of the whole file
   * @throws WavError when the file can't be used (rejects)
   */
  static async open(read: ReadBytes, fileLength: number): Promise<WavReader> {
    const walk = walkWavHeader(fileLength);
    let step = walk.next();
    while (step.done !== true) {
      step = walk.next(await read(step.value.offset, step.value.length));
    }
    return new WavReader(read, step.value);
  }

  /** A reader over a file that is in memory. */
  static fromBytes(bytes: Uint8Array): Promise<WavReader> {
    return WavReader.open(
      (offset, length) =>
        Promise.resolve(
          bytes.subarray(Math.min(offset, bytes.length), Math.min(offset + length, bytes.length)),
        ),
      bytes.length,
    );
  }

  get durationS(): number {
    return this.format.frameCount / this.format.sampleRateHz;
  }

  /**
   * Frames of all channels; fewer than asked where the file ends.
   * @param startFrame  0..frameCount
   * @param frames  >= 0
   * @throws RangeError on an argument out of range; WavError when the file shrank while it was read (rejects)
   */
  async readChannels(startFrame: number, frames: number): Promise<Float32Array<ArrayBuffer>[]> {
    return decodeSamples(await this.readFrames(startFrame, frames), this.format);
  }

  /** The frames' bytes, as they lie in the file. */
  private async readFrames(startFrame: number, frames: number): Promise<Uint8Array> {
    const { dataOffset, bytesPerFrame, frameCount } = this.format;
    if (!Number.isInteger(startFrame) || startFrame < 0 || startFrame > frameCount) {
      throw new RangeError(`startFrame must be an integer 0..${frameCount}, got ${startFrame}`);
    }
    if (!Number.isInteger(frames) || frames < 0) {
      throw new RangeError(`frames must be an integer >= 0, got ${frames}`);
    }
    const length = Math.min(frames, frameCount - startFrame) * bytesPerFrame;
    const bytes = await this.read(dataOffset + startFrame * bytesPerFrame, length);
    if (bytes.length < length) {
      throw new WavError({ code: 'not-audio', fault: 'shorter' }, true);
    }
    return bytes;
  }

  /** Which channel is used for the whole run, and why; judged once, on pieces from start to end. */
  async chooseChannel(): Promise<ChannelChoice> {
    if (this.choice !== null) return this.choice;
    const judge = new ChannelJudge(this.format.channelCount);
    if (this.format.channelCount > 1) {
      const last = Math.max(0, this.format.frameCount - JUDGED_FRAMES);
      const pieces = Math.min(JUDGED_PIECES, Math.ceil(this.format.frameCount / JUDGED_FRAMES));
      for (let i = 0; i < pieces; i += 1) {
        const start = pieces === 1 ? 0 : Math.round((last * i) / (pieces - 1));
        judge.add(await this.readChannels(start, JUDGED_FRAMES));
      }
    }
    this.choice = judge.choose();
    return this.choice;
  }

  /** What should be known of the file before its sound is trusted: that its end is missing, that one channel isn't used. */
  async remarks(): Promise<readonly FileRemark[]> {
    const { reason } = await this.chooseChannel();
    const remarks: FileRemark[] = [];
    if (this.format.truncated) remarks.push({ code: 'cut-off' });
    if (reason !== null) remarks.push({ code: 'one-channel', reason });
    return remarks;
  }

  /**
   * The chosen channel from start to end in blocks. They are cut at the same places whatever the medium, so
   * that a page and a command line do the very same arithmetic.
   * @param blockFrames  frames a block, 128..65536; the last block may be shorter
   * @param isKept  false: a block's samples are good until the next one is asked for, in memory that is filled again
   *   and again
   */
  async *blocks(blockFrames = 4096, isKept = true): AsyncGenerator<SampleBlock, void, undefined> {
    if (!Number.isInteger(blockFrames) || blockFrames < 128 || blockFrames > PIECE_FRAMES) {
      throw new RangeError(`blockFrames must be an integer 128..${PIECE_FRAMES}, got ${blockFrames}`);
    }
    const { channel } = await this.chooseChannel();
    const pieceFrames = Math.floor(PIECE_FRAMES / blockFrames) * blockFrames;
    let piece = new Float32Array(Math.min(pieceFrames, this.format.frameCount));
    for (let start = 0; start < this.format.frameCount; start += pieceFrames) {
      if (isKept && start > 0) piece = new Float32Array(piece.length);
      const count = decodeChannel(await this.readFrames(start, pieceFrames), this.format, channel, piece);
      for (let at = 0; at < count; at += blockFrames) {
        const samples = piece.subarray(at, Math.min(count, at + blockFrames));
        yield { samples, startFrame: start + at, discontinuity: false };
      }
    }
  }
}
