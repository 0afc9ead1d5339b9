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
  /** Id of the mark whose resonance was passed again here: a repeat needs no length of its own. */
  readonly repeatOf?: string | null;
  /** How the length was found. Absent: at the loudest place. */
  readonly locatedBy?: LocatedBy;
}

/**
 * `centre`: where the bench showed the resonance's centre. `loudest`: at the loudest place, by ear or by level, which
 * lies beside the resonance, for all marks of one fork and setup to the same side.
 */
export type LocatedBy = 'centre' | 'loudest';

export const COLUMN_ENDS = ['closed', 'open'] as const;

export type ColumnEnds = (typeof COLUMN_ENDS)[number];

export interface MarkEvidence {
  readonly source: 'microphone' | 'recording' | 'practice';
  readonly timeS: number;
  readonly riseDb: number;
  readonly aboveRoomDb: number;
  readonly confidence: number;
  readonly frequencyHz: number | null;
  readonly frequencyStandardUncertaintyHz: number | null;
  readonly reason: string;
  /** What the strip showed around the peak; null where it wasn't kept. */
  readonly trace: LevelStretch | null;
  /** When the length was right, and how the column answered; null or absent where it couldn't be told. */
  readonly centre?: ResonanceCentre | null;
  /** What spoke against the sound when it was flagged; absent where nothing did. */
  readonly doubt?: readonly MarkDoubt[];
}

/**
 * Why a mark's level may be wrong: a step of the browser's processing was on, the gain check had failed, the sound
 * itself looked processed. `suppressed`: the tone was gated away within the passage, and the mark was let in by hand.
 */
export type MarkDoubt = (typeof MARK_DOUBTS)[number];

export const MARK_DOUBTS = ['processing-on', 'gain-check-failed', 'sounds-processed', 'suppressed'] as const;

/** The moment in which a sliding column had the resonant length: the level peaks later, and beside it. */
export interface ResonanceCentre {
  /** On the source's own axis, s. */
  readonly timeS: number;
  /** Of the place in which the column was then, half widths of the resonance, > 0. */
  readonly standardUncertaintyHalfWidths: number;
  /** The column's part over the fork's direct sound at resonance, m e^{iθ} / d, as a complex number. */
  readonly shareRe: number;
  readonly shareIm: number;
}

/** A stretch of the level trace: evenly spaced points, both lists of one length. 0 dB as in the live trace. */
export interface LevelStretch {
  /** Time of the first point on the source's own axis, s. */
  readonly startS: number;
  /** From one point to the next, s. */
  readonly stepS: number;
  /** Level of the tone at the fork's pitch, dB; null where it wasn't heard above the noise. */
  readonly toneDb: readonly (number | null)[];
  /** The room's noise at the fork's pitch, dB. */
  readonly roomDb: readonly number[];
}

/** Rule reading of a mark, the middle of a bracket, m; null while it waits. */
export function markLengthM(mark: Pick<Mark, 'lengthM' | 'otherLengthM'>): number | null {
  if (mark.lengthM === null || mark.otherLengthM === null) return mark.lengthM;
  return (mark.lengthM + mark.otherLengthM) / 2;
}
