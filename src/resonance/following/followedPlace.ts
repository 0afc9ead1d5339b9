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

/** A place isn't told where the column may be beyond resonance on the other side, with more than this probability. */
const DOUBT = 0.01;

/** Can the place be told: is it hardly possible that the column lies on the other side, and not just beside resonance? */
export const canTell = ({ halfWidths, beyondLong, beyondShort }: PlaceReading): boolean =>
  (halfWidths > 0 ? beyondShort : beyondLong) <= DOUBT;
