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
  /** Rise of the level over the fork alone (before and after), dB. */
  readonly riseDb: number;
  readonly riseStandardUncertaintyDb: number;
  /** Rise over the room's noise at the fork's pitch, dB. */
  readonly aboveRoomDb: number;
  /** 0..1. */
  readonly confidence: number;
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
  /** Why it was flagged, in one line for a person. */
  readonly reason: string;
}

/** Something the listener should know, with what to do about it. */
export interface ListeningWarning {
  readonly code:
    | 'no-fork-heard'
    | 'off-stamp'
    | 'beating'
    | 'fork-turned'
    | 'slide-too-fast'
    | 'clipping'
    | 'too-faint'
    | 'gain-pumping'
    | 'too-short'
    | 'silent'
    | 'gap'
    | 'dropouts'
    | 'narrow-band'
    | 'high-band-missing'
    | 'floor-fell'
    | 'offset'
    | 'hum'
    | 'cut-off'
    | 'one-channel';
  readonly message: string;
  readonly timeS: number | null;
}

/** The way back to the maximum of the present sounding, the fork's dying taken out. */
export interface Guidance {
  /** Present level minus the best of this sounding, dB, <= 0. */
  readonly belowBestDb: number;
  readonly bestTimeS: number;
}

/** What one push of samples added. Arrays are empty where nothing happened. */
export interface ListeningUpdate {
  readonly points: readonly LevelPoint[];
  /** Resonances newly flagged, live. */
  readonly resonances: readonly Resonance[];
  /** Soundings that began, grew more certain or ended: replace by `index`. */
  readonly soundings: readonly Sounding[];
  readonly warnings: readonly ListeningWarning[];
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
