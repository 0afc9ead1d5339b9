import { decayTimeS } from '../../resonance/decayTime.ts';
import { medianNoise } from '../../resonance/noiseFloor.ts';
import { soundingFrequency } from '../../resonance/soundingFrequency.ts';
import { findSoundings } from '../../resonance/soundings.ts';
import type { SoundingSpan } from '../../resonance/soundings.ts';
import type { ToneView } from '../../resonance/toneView.ts';
import { FrequencyEstimator } from '../../tone/frequencyEstimator.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { ForkPitch, Sounding } from './listeningTypes.ts';

/** Narrow values between two searches for soundings. */
export const SOUNDING_STEP = 25;
/** The side bands around a value are complete this many values later. */
export const SIDE_BAND_DELAY = 12;
/** An open sounding's frequency and decay are worked out anew after so much more of it, s, or as a share of what there was. */
const ANEW_S = 1;
const ANEW_SHARE = 0.15;
/** Side-band frames that tell the noise for it: 12 s. */
const NOISE_FRAMES = 150;
/** A tone that has gone may come back within this and be the same sounding, values. */
const REOPEN = 50;
/** Seen from another place, an end may be found this much later, values. */
const SAME_END = 5;

/** What is worked out over all of a sounding so far. */
type Character = Pick<Sounding, 'decayTimeS' | 'frequencyHz' | 'frequencyStandardUncertaintyHz'>;

/** A sounding with its place in the series. */
interface Tracked {
  readonly sounding: Sounding;
  readonly span: SoundingSpan;
  readonly character: Character;
  /** Index that it must have reached until its character is worked out anew. */
  readonly dueAnew: number;
}

/** Soundings as they begin, grow and end, from a view of the newest seconds. */
export class SoundingTrack {
  private readonly series: ToneSeries;
  private readonly fork: ForkPitch;
  private readonly estimator: FrequencyEstimator;
  private readonly heard: Sounding[] = [];
  /** The newest sounding. */
  private last: Tracked | null = null;

  constructor(series: ToneSeries, fork: ForkPitch) {
    this.series = series;
    this.fork = fork;
    this.estimator = new FrequencyEstimator(fork.toleranceHz);
  }

  get soundings(): readonly Sounding[] {
    return this.heard;
  }

  /** The sounding that still goes on; null: none does. */
  get open(): Sounding | null {
    const last = this.heard.at(-1);
    return last?.endS === null ? last : null;
  }

  /** The newest decay time that is known, s. */
  get decayTimeS(): number | null {
    return this.heard.findLast((sounding) => sounding.decayTimeS !== null)?.decayTimeS ?? null;
  }

  /** @param view  the newest seconds @returns soundings that began, grew more certain or ended */
  advance(view: ToneView): readonly Sounding[] {
    // As it was before this step.
    const last = this.last;
    const changed: Sounding[] = [];
    for (const span of findSoundings(view, firstToSearch(view, last))) {
      // What begins before the last end is the last sounding: its own tail again, or the tone come back.
      const isTail = last?.span.ended === true && span.from < last.span.to;
      if (isTail && span.ended && span.to <= last.span.to + SAME_END) continue;
      const isLast = changed.length === 0 && last !== null && (!last.span.ended || isTail);
      if (!isLast) {
        changed.push(this.follow(null, span));
        continue;
      }
      const from = Math.min(last.span.from, span.from);
      const isOldStill = from === last.span.from && !last.span.ended && !span.ended;
      if (isOldStill && span.to < last.dueAnew) continue;
      changed.push(this.follow(last, { ...span, from }));
    }
    return changed;
  }

  /** Notes a sounding as it is now. @param old  the same before; null: it is new */
  private follow(old: Tracked | null, span: SoundingSpan): Sounding {
    const { rateHz } = this.series;
    const isKnown = old !== null && !span.ended && span.to < old.dueAnew;
    const character = isKnown ? old.character : this.newCharacter(span);
    const sounding: Sounding = {
      index: old?.sounding.index ?? this.heard.length + 1,
      startS: span.from / rateHz,
      endS: span.ended ? span.to / rateHz : null,
      ...character,
    };
    const grown = Math.max(ANEW_S * rateHz, ANEW_SHARE * (span.to - span.from));
    const dueAnew = isKnown ? old.dueAnew : Math.ceil(span.to + grown);
    this.heard[sounding.index - 1] = sounding;
    this.last = { sounding, span, character, dueAnew };
    return sounding;
  }

  private newCharacter(span: SoundingSpan): Character {
    const noise = medianNoise(this.series, NOISE_FRAMES);
    const frequency = soundingFrequency(this.series, span, this.estimator, noise);
    return {
      decayTimeS: decayTimeS(this.series.segment(span.from, span.to)),
      frequencyHz: frequency === null ? null : this.fork.nominalHz + frequency.offsetHz,
      frequencyStandardUncertaintyHz: frequency?.standardUncertaintyHz ?? null,
    };
  }
}

/** Index into the view from which on something may have changed. */
function firstToSearch(view: ToneView, last: Tracked | null): number {
  const since = last === null ? 0 : last.span.ended ? last.span.to - REOPEN : last.span.from;
  return Math.min(view.length, Math.max(0, since - view.firstIndex));
}
