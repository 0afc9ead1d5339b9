/** The sound of one sounding as it is kept, without its samples. */
export interface KeptSound {
  readonly id: string;
  readonly experimentId: string;
  readonly createdAt: string;
  readonly source: 'microphone' | 'recording' | 'practice';
  /** Stamp of the fork that was listened for, Hz. */
  readonly forkHz: number;
  /** Whole hertz. */
  readonly sampleRateHz: number;
  readonly frameCount: number;
  /** Marks that were flagged in it: seconds from its first frame. */
  readonly marks: readonly { readonly markId: string; readonly timeS: number }[];
}

/** Two bytes a sample. */
export function soundBytes(sound: KeptSound): number {
  return 2 * sound.frameCount;
}
