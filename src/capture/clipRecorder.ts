import type { SampleBlock } from './soundSource.ts';

/** Sound kept before a strike and after a fork has died or was damped, s. */
export const CLIP_MARGIN_S = 1;
/** How long after a strike it may be told that a sounding began, s. */
const BACK_S = 6;
/** A sounding is kept up to this length, s: longer than any fork sounds. */
export const LONGEST_CLIP_S = 120;
/** Handed out in pieces of about this length, s, so that a crash loses no more. */
const PIECE_S = 0.5;
const FULL_SCALE = 32_768;

/** A stretch of one sounding's sound. */
export interface ClipPiece {
  /** Which sounding it belongs to. */
  readonly soundingIndex: number;
  /** Time of the clip's first frame, counted from the recorder's first frame, s. */
  readonly clipStartS: number;
  /** Frames of the clip before this piece. */
  readonly clipFrame: number;
  /** 16-bit, mono, full scale 32768. */
  readonly samples: Int16Array<ArrayBuffer>;
}

interface OpenClip {
  readonly soundingIndex: number;
  readonly fromFrame: number;
  /** One past its last frame; null while the fork sounds. */
  toFrame: number | null;
  /** The next frame to hand out. */
  nextFrame: number;
}

/** Cuts a stream of sound into soundings, each with a margin before and after. Pure: it is told when they begin. */
export class ClipRecorder {
  private recent: { readonly startFrame: number; readonly samples: Int16Array }[] = [];
  private endFrame = 0;
  private originFrame: number | null = null;
  private clip: OpenClip | null = null;

  /** @param sampleRateHz  > 0 */
  constructor(private readonly sampleRateHz: number) {
    if (!(sampleRateHz > 0)) throw new RangeError(`sampleRateHz must be above 0, got ${sampleRateHz}`);
  }

  /** Takes the next sound; frames that were lost become silence. @returns what of a sounding is complete */
  push(block: SampleBlock): readonly ClipPiece[] {
    this.originFrame ??= block.startFrame;
    const startFrame = Math.max(this.endFrame, block.startFrame - this.originFrame);
    const samples = Int16Array.from(block.samples, (sample) =>
      Math.max(-FULL_SCALE, Math.min(FULL_SCALE - 1, Math.round(sample * FULL_SCALE))),
    );
    this.recent.push({ startFrame, samples });
    this.endFrame = startFrame + samples.length;
    const keepFrom = this.endFrame - BACK_S * this.sampleRateHz;
    const needed = Math.min(keepFrom, this.clip?.nextFrame ?? keepFrom);
    const first = this.recent.findIndex((part) => part.startFrame + part.samples.length > needed);
    if (first > 0) this.recent.splice(0, first);
    return this.gather(PIECE_S * this.sampleRateHz);
  }

  /**
   * Says what is known of a sounding, as often as it changes. A new one ends the one before.
   * @param endS  null while it sounds
   * @returns what is complete by that
   */
  sounding(index: number, startS: number, endS: number | null): readonly ClipPiece[] {
    const pieces: ClipPiece[] = [];
    const isNew = this.clip === null || index > this.clip.soundingIndex;
    if (isNew) {
      const startFrame = Math.max(0, Math.round((startS - CLIP_MARGIN_S) * this.sampleRateHz));
      const earliest = this.recent.at(0)?.startFrame ?? 0;
      pieces.push(...this.finish());
      const fromFrame = Math.max(startFrame, earliest, this.clip?.nextFrame ?? 0);
      this.clip = { soundingIndex: index, fromFrame, toFrame: null, nextFrame: fromFrame };
    }
    const { clip } = this;
    if (clip === null || index !== clip.soundingIndex || endS === null) return pieces;
    clip.toFrame = Math.max(clip.nextFrame, Math.round((endS + CLIP_MARGIN_S) * this.sampleRateHz));
    return [...pieces, ...this.gather(PIECE_S * this.sampleRateHz)];
  }

  /** The rest of the sounding that goes on, where the sound ends. */
  finish(): readonly ClipPiece[] {
    return this.gather(1);
  }

  /** @param leastFrames  fewer are left until there are more, unless they are the clip's last */
  private gather(leastFrames: number): readonly ClipPiece[] {
    const { clip } = this;
    if (clip === null) return [];
    const longest = clip.fromFrame + LONGEST_CLIP_S * this.sampleRateHz;
    const limit = Math.min(clip.toFrame ?? longest, longest);
    const until = Math.min(this.endFrame, limit);
    const count = until - clip.nextFrame;
    if (count <= 0 || (count < leastFrames && until < limit)) return [];
    const samples = new Int16Array(count);
    for (const part of this.recent) {
      const from = Math.max(part.startFrame, clip.nextFrame);
      const to = Math.min(part.startFrame + part.samples.length, until);
      if (to <= from) continue;
      const wanted = part.samples.subarray(from - part.startFrame, to - part.startFrame);
      samples.set(wanted, from - clip.nextFrame);
    }
    const clipFrame = clip.nextFrame - clip.fromFrame;
    clip.nextFrame = until;
    return [
      {
        soundingIndex: clip.soundingIndex,
        clipStartS: clip.fromFrame / this.sampleRateHz,
        clipFrame,
        samples,
      },
    ];
  }
}
