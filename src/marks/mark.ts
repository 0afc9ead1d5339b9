/** A resonance with its length, or one that still waits for it. */
export interface Mark {
  readonly id: string;
  /** When it was made, ISO 8601; passed in, never read from a clock here. */
  readonly createdAt: string;
  readonly forkId: string;
  readonly placeId: string;
  readonly ends: ColumnEnds;
  /** Rule reading at the resonance, m; null while it waits. Zero offset not yet taken off. */
  readonly lengthM: number | null;
  /** Second reading where the resonance was bracketed: the true length lies between. */
  readonly otherLengthM: number | null;
  /** What the listening found; null for a mark made by hand. */
  readonly evidence: MarkEvidence | null;
  /** Order set by the user; null lets the solver decide. */
  readonly order: number | null;
  /** Left out of the fit by the user. */
  readonly excluded: boolean;
  readonly note: string;
}

export type ColumnEnds = 'closed' | 'open';

export interface MarkEvidence {
  readonly source: 'microphone' | 'recording' | 'practice';
  readonly timeS: number;
  readonly riseDb: number;
  readonly aboveRoomDb: number;
  readonly confidence: number;
  readonly frequencyHz: number | null;
  readonly frequencyStandardUncertaintyHz: number | null;
  readonly reason: string;
}
