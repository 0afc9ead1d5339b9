import type { Resonance, Sounding } from '../../src/session/hearing/listeningTypes.ts';

/** A sounding, s. @param frequencyHz  told to 0.01 Hz; null: not told */
export const soundingOf = (
  index: number,
  startS: number,
  endS: number | null,
  frequencyHz: number | null = null,
): Sounding => ({
  index,
  startS,
  endS,
  decayTimeS: null,
  frequencyHz,
  frequencyStandardUncertaintyHz: frequencyHz === null ? null : 0.01,
});

/** A passage with its maximum at `timeS`. @param flaggedAtS  null: found by a second look */
export const passageAt = (
  timeS: number,
  soundingIndex: number | null,
  flaggedAtS: number | null = null,
): Resonance => ({
  timeS,
  riseDb: 10,
  centre: null,
  riseStandardUncertaintyDb: 1,
  aboveRoomDb: 20,
  confidence: 0.9,
  certainty: 'sure',
  phaseSwingRad: 2,
  slide: 'longer',
  halfPowerStartS: timeS - 0.1,
  halfPowerEndS: timeS + 0.1,
  soundingIndex,
  flaggedAtS,
});
