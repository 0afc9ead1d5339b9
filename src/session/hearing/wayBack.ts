import type { FollowedPlace } from '../../resonance/following/followedPlace.ts';
import type { Guidance, ListeningUpdate } from './listeningTypes.ts';

/** A place of which the side is known. */
export interface ToldPlace extends FollowedPlace {
  readonly halfWidths: number;
}

/** The way back to the resonance that was passed last, as far as it can be told. */
export type WayBack =
  /** Nothing was flagged yet. */
  | { readonly kind: 'none' }
  /** The column is at resonance: by its centre, or by the level's maximum, met from both sides. */
  | { readonly kind: 'here'; readonly by: 'centre' | 'level' }
  /** @property ageS  how old this is, s; it is still told while nothing newer can be */
  | { readonly kind: 'off'; readonly place: ToldPlace; readonly ageS: number }
  /** The sound no longer tells where the column is, and there is no level to go by. */
  | { readonly kind: 'lost' }
  /** Only the level is known. @property belowBestDb  below the best of this sounding, dB, >= 0 */
  | { readonly kind: 'level'; readonly belowBestDb: number };

/** Here is where the centre is nearer than this, half widths; once here, the hand may tremble so far. */
const HERE = 0.2;
const STILL_HERE = 0.35;
/** What is uncertain by more than this, half widths, isn't called here. */
const SURE_ENOUGH = 0.3;
/** An older place than this is one that was, s. */
export const FRESH_S = 1;
/** So long the last place is told while the fork sounds and nothing newer is known, s. */
const HELD_S = 4;
/** What is so far below the loudest place, dB, isn't the centre of a resonance that could be heard. */
const MOST_BELOW_DB = 6;
/** At the level's maximum, dB below it. */
const AT_MAXIMUM_DB = 1;

/** Keeps what is told of the way back, so that it doesn't flicker where the room is loud. */
export class WayBackTrack {
  private place: ToldPlace | null = null;
  private isHere = false;
  private guidance: Guidance | null = null;
  private latestS = 0;
  /** From when on the hold counts: while the fork is silent nothing new could be told. */
  private heldFromS = 0;
  /** When the fork fell silent, s; null while it sounds. */
  private silentSinceS: number | null = null;

  /** @param isSounding  whether the fork sounds at the end of this update */
  add({ points, followed, guidance }: ListeningUpdate, isSounding: boolean): void {
    this.latestS = points.at(-1)?.timeS ?? this.latestS;
    if (!isSounding) this.silentSinceS ??= this.latestS;
    else if (this.silentSinceS !== null) {
      this.silentSinceS = null;
      this.heldFromS = this.latestS;
    }
    this.guidance = guidance;
    for (const place of followed) this.take(place);
  }

  /** The sound was interrupted: what was told holds no longer. */
  clear(): void {
    this.place = null;
    this.isHere = false;
    this.guidance = null;
  }

  get now(): WayBack {
    const place = this.place;
    if (place === null) return this.byLevel();
    const heldS = (this.silentSinceS ?? this.latestS) - this.heldFromS;
    if (heldS > HELD_S) return this.guidance === null ? { kind: 'lost' } : this.byLevel();
    const ageS = Math.max(0, this.latestS - place.timeS);
    const isQuiet = this.guidance !== null && -this.guidance.belowBestDb > MOST_BELOW_DB;
    return this.isHere && !isQuiet && ageS < FRESH_S
      ? { kind: 'here', by: 'centre' }
      : { kind: 'off', place, ageS };
  }

  private take(place: FollowedPlace): void {
    const { halfWidths, standardUncertainty } = place;
    if (halfWidths === null || standardUncertainty === null) return;
    const limit = this.isHere ? STILL_HERE : HERE;
    this.isHere = Math.abs(halfWidths) <= limit && standardUncertainty <= SURE_ENOUGH;
    this.place = { ...place, halfWidths };
    this.heldFromS = place.timeS;
  }

  private byLevel(): WayBack {
    if (this.guidance === null) return { kind: 'none' };
    const { belowBestDb, isMetFromBothSides } = this.guidance;
    if (isMetFromBothSides && -belowBestDb <= AT_MAXIMUM_DB) return { kind: 'here', by: 'level' };
    return { kind: 'level', belowBestDb: Math.max(0, -belowBestDb) };
  }
}
