import type {
  Guidance,
  LevelPoint,
  ListeningUpdate,
  ListeningWarning,
  Resonance,
  Sounding,
} from './listeningTypes.ts';
import { withoutMaybe } from './withoutMaybe.ts';
import { WayBackTrack } from './wayBack.ts';
import type { WayBack } from './wayBack.ts';

/** Length of trace that the strip shows, s. */
export const TRACE_S = 60;
/** So long what was heard last is still told, s. */
const HELD_S = 2;

/** What was heard in the last minute, and every flag and sounding of this run. */
export class RecentLevels {
  /** Oldest first, the last `TRACE_S` seconds. */
  points: LevelPoint[] = [];
  resonances: Resonance[] = [];
  /** By index; the list is in order of time. */
  soundings: Sounding[] = [];
  /** The newest warning of each code. */
  warnings: ListeningWarning[] = [];
  guidance: Guidance | null = null;
  private readonly way = new WayBackTrack();

  /** The way back to the resonance that was passed last. */
  get wayBack(): WayBack {
    return this.way.now;
  }

  add(update: ListeningUpdate): void {
    this.points.push(...update.points);
    const last = this.points.at(-1);
    if (last !== undefined) {
      const keepFrom = this.points.findIndex((point) => point.timeS >= last.timeS - TRACE_S);
      if (keepFrom > 0) this.points.splice(0, keepFrom);
    }
    for (const resonance of update.resonances) {
      this.resonances = [...withoutMaybe(this.resonances, resonance.maybeS), resonance];
    }
    for (const sounding of update.soundings) {
      const at = this.soundings.findIndex((other) => other.index === sounding.index);
      if (at < 0) this.soundings.push(sounding);
      else this.soundings[at] = sounding;
    }
    for (const warning of update.warnings) {
      this.warnings = [...this.warnings.filter((other) => other.code !== warning.code), warning];
    }
    this.guidance = update.guidance;
    this.way.add(update, this.presentSounding !== null);
  }

  /**
   * Ends the sounding that goes on, because sound was lost in it; flags and soundings before it stay.
   * @returns whether one was going on
   */
  voidOpenSounding(): boolean {
    const open = this.presentSounding;
    this.guidance = null;
    this.way.clear();
    if (open === null) return false;
    const ended = { ...open, endS: this.latest?.timeS ?? open.startS };
    this.soundings = this.soundings.map((one) => (one.index === open.index ? ended : one));
    return true;
  }

  /** The newest point; null before the first. */
  get latest(): LevelPoint | null {
    return this.points.at(-1) ?? null;
  }

  /** The newest rise that was heard in the last two seconds, dB; null where there is none: talk hides the tone now and then. */
  get heldRiseDb(): number | null {
    const newest = this.points.findLast(({ riseDb }) => riseDb !== null);
    return newest !== undefined && newest.timeS >= (this.latest?.timeS ?? 0) - HELD_S ? newest.riseDb : null;
  }

  /** Whether a fork sounds, or did within the last two seconds: talk parts a sounding now and then. */
  get soundsOrDid(): boolean {
    const last = this.soundings.at(-1);
    return last !== undefined && (last.endS === null || last.endS >= (this.latest?.timeS ?? 0) - HELD_S);
  }

  /** The sounding that goes on now; null in silence. */
  get presentSounding(): Sounding | null {
    const last = this.soundings.at(-1);
    return last !== undefined && last.endS === null ? last : null;
  }
}
