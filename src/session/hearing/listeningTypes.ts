import type { Certainty } from '../../resonance/passages/passageProbability.ts';
import type { FileRemark } from '../../capture/wav.ts';
import type { FollowedPlace } from '../../resonance/following/followedPlace.ts';
import type { ResonanceCentre } from '../../marks/mark.ts';

/** The fork that is listened for. */
export interface ForkPitch {
  /** As stamped, Hz, 100..2100. */
  readonly nominalHz: number;
  /** How far the real pitch may be from the stamp, Hz, > 0 (common practice, no source: 0.5 % or 1 Hz). */
  readonly toleranceHz: number;
}

/**
 * One point of the level trace, 20 points a second. 0 dB is a sine of amplitude 1 (mean square ½).
 * `null` where the tone is not heard above the noise.
 */
export interface LevelPoint {
  readonly timeS: number;
  /** Level of the tone at the fork's pitch, room's power taken off. */
  readonly toneDb: number | null;
  /** The room's noise in the same band: the rolling baseline. */
  readonly roomDb: number;
  /** The whole sound's level, for comparison. */
  readonly broadbandDb: number;
  /** toneDb - roomDb. */
  readonly riseDb: number | null;
}

/** From one strike to its damping or dying out. */
export interface Sounding {
  /** 1, 2, 3… in order of time. */
  readonly index: number;
  readonly startS: number;
  /** null while it sounds. */
  readonly endS: number | null;
  /** Time in which the amplitude falls to 1/e; null where it can't be told. */
  readonly decayTimeS: number | null;
  readonly frequencyHz: number | null;
  readonly frequencyStandardUncertaintyHz: number | null;
}

/** A passage through a resonance, with its evidence. */
export interface Resonance {
  /** When the level peaked, on the source's time axis. */
  readonly timeS: number;
  /** When the length was right: the level peaks later, and beside it. null where it can't be told. */
  readonly centre: ResonanceCentre | null;
  /** Rise of the level over the fork alone (before and after), dB. */
  readonly riseDb: number;
  readonly riseStandardUncertaintyDb: number;
  /** Rise over the room's noise at the fork's pitch, dB. */
  readonly aboveRoomDb: number;
  /** That it is one, 0..1: of resonances told 0.9, nine of ten are right. */
  readonly confidence: number;
  /** A sure one becomes a mark. The other becomes one when it recurs or when a person says so. */
  readonly certainty: Certainty;
  /** Full swing of the tone's phase through the passage, rad. */
  readonly phaseSwingRad: number;
  /** Which way the phase turned: as in a column that grows longer, or as in one that grows shorter. */
  readonly slide: 'longer' | 'shorter';
  /** The two half-power moments. */
  readonly halfPowerStartS: number;
  readonly halfPowerEndS: number;
  /** Index of the sounding it belongs to; null where none was made out. */
  readonly soundingIndex: number | null;
  /** Live: the source's time at which it was flagged. Offline: null. */
  readonly flaggedAtS: number | null;
  /**
   * Whether it is the resonance that the column was followed around when it was passed. Absent where that isn't known.
   */
  readonly isFollowed?: boolean;
  /** When the level peaked of the maybe that it takes the place of, s. Absent where it is new. */
  readonly maybeS?: number;
  /** The tone was gated away within it: its shape may be the gate's. Absent where it wasn't. */
  readonly isGated?: true;
}

/** What the listener should know of, as a value; `timeS`: when it was noticed, on the source's time axis. */
type Finding =
  | {
      readonly code: 'no-fork-heard';
      readonly nominalHz: number;
      readonly toleranceHz: number;
      /** Another steady tone beyond the tolerance; null where there is none. */
      readonly otherHz: number | null;
      readonly timeS: null;
    }
  /** The offset is measured minus stamped. */
  | {
      readonly code: 'off-stamp';
      readonly measuredHz: number;
      readonly offsetHz: number;
      readonly timeS: null;
    }
  /** The offset is the other fork's pitch minus this one's. */
  | { readonly code: 'beating'; readonly offsetHz: number; readonly timeS: number }
  | { readonly code: 'fork-turned'; readonly turns: number; readonly timeS: number }
  /**
   * A time between two half-power moments: of a whole recording the middle one, with no moment; live that of the passage
   * that was too fast, with its moment.
   */
  | { readonly code: 'slide-too-fast'; readonly halfPowerS: number; readonly timeS: number | null }
  /** `times` at full scale; or cut off below it, at `limit` of full scale. */
  | {
      readonly code: 'clipping';
      readonly times: number;
      readonly limit: number | null;
      readonly timeS: null;
    }
  /** The largest sample, of full scale. */
  | { readonly code: 'too-faint'; readonly largest: number; readonly timeS: null }
  | { readonly code: 'gain-pumping' | 'too-short' | 'silent' | 'high-band-missing'; readonly timeS: null }
  | { readonly code: 'gap'; readonly losses: number; readonly timeS: number }
  | { readonly code: 'dropouts'; readonly times: number; readonly timeS: number | null }
  | { readonly code: 'narrow-band'; readonly edgeHz: number; readonly timeS: null }
  | { readonly code: 'floor-fell'; readonly fallDb: number; readonly timeS: null }
  /** The mean, of full scale. */
  | { readonly code: 'offset'; readonly offset: number; readonly timeS: null }
  | { readonly code: 'hum'; readonly mainsHz: number; readonly levelDb: number; readonly timeS: null }
  | (FileRemark & { readonly timeS: null });

/** A stretch of a recording. */
export interface SoundStretch {
  readonly fromS: number;
  readonly toS: number;
}

/** A finding; with a stretch it holds of that part of a long recording, without one of all. */
export type ListeningWarning = Finding & { readonly stretch?: SoundStretch };

/** The way back to the maximum of the present sounding, the fork's dying taken out. */
export interface Guidance {
  /** Present level minus the best of this sounding, dB, <= 0. */
  readonly belowBestDb: number;
  readonly bestTimeS: number;
  /** Whether the maximum was passed twice, so that it is the maximum of the place and not of the fork's dying. */
  readonly isMetFromBothSides: boolean;
}

/** What one push of samples added. Arrays are empty where nothing happened. */
export interface ListeningUpdate {
  readonly points: readonly LevelPoint[];
  /** Resonances newly flagged, live. */
  readonly resonances: readonly Resonance[];
  /** Soundings that began, grew more certain or ended: replace by `index`. */
  readonly soundings: readonly Sounding[];
  readonly warnings: readonly ListeningWarning[];
  /** How far the column was from the resonance that was passed last, ten times a second since the first flag. */
  readonly followed: readonly FollowedPlace[];
  /** null while no resonance of this sounding has been flagged. */
  readonly guidance: Guidance | null;
}

/** What was detected offline in a finished recording. */
export interface ListeningReport {
  readonly durationS: number;
  readonly sampleRateHz: number;
  readonly fork: {
    readonly nominalHz: number;
    readonly measuredHz: number | null;
    readonly standardUncertaintyHz: number | null;
  };
  readonly soundings: readonly Sounding[];
  readonly resonances: readonly Resonance[];
  readonly warnings: readonly ListeningWarning[];
}
