import type { PlaceReading } from './placeMixture.ts';

/** Where the column is at one moment, as far as the sound tells. */
export interface FollowedPlace {
  /** On the source's time axis. */
  readonly timeS: number;
  /** How far the column is from resonance in half widths, > 0 too long; null where the side can't be told. */
  readonly halfWidths: number | null;
  /** In half widths; null with them. */
  readonly standardUncertainty: number | null;
  /** The same in metres; null also where the tube isn't known. */
  readonly distanceM: number | null;
  readonly standardUncertaintyM: number | null;
}

/** A side is named from this probability on. */
const SURE = 0.98;
/** Nearer than this the side doesn't matter: it is here, half widths. */
const HERE = 0.35;

/** Can the place be told: is the side sure, or is it surely so near that there is no side? */
export function canTell({ halfWidths, standardUncertainty, tooLong }: PlaceReading): boolean {
  const side = Math.max(tooLong, 1 - tooLong);
  // The more probable side must be the one on which the mean lies.
  const agrees = halfWidths > 0 === tooLong > 0.5;
  return (side >= SURE && agrees) || Math.abs(halfWidths) + standardUncertainty < HERE;
}
