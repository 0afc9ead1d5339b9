import { decayTimeS, findSoundings, FoundSoundings, soundingPitch } from '../resonance/soundings.ts';
import type { SoundingSpan } from '../resonance/soundings.ts';
import { typicalNoise } from '../resonance/passages/offlineDetector.ts';
import type { ToneView } from '../resonance/toneView.ts';
import { NOTHING, withOne } from '../resonance/shortList.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';
import type { ForkPitch, Sounding } from './listeningTypes.ts';

/** An open sounding's pitch and decay are worked out anew after so much more of it, s, or as a share of what there was. */
const ANEW_S = 1;
const ANEW_SHARE = 0.15;
/** A tone that has gone may come back within this and be the same sounding, values. */
const REOPEN = 50;
/** Looked at from another place, an end may be found this much later, values. */
const SAME_END = 5;

/** Soundings as they begin, grow and end, from a view of the newest seconds. */
export class SoundingTrack {
  readonly #series: ToneSeries;
  readonly #fork: ForkPitch;
  readonly #soundings: Sounding[] = [];
  readonly #found = new FoundSoundings();
  /** The newest sounding in whole values of the series: its first, one past its last (−1: it goes on). */
  #lastFrom = 0;
  #lastTo = -1;
  /** How far it must have grown until its character is worked out anew. */
  #dueAnew = 0;

  constructor(series: ToneSeries, fork: ForkPitch) {
    this.#series = series;
    this.#fork = fork;
  }

  get soundings(): readonly Sounding[] {
    return this.#soundings;
  }

  /** The sounding that still goes on; null: none does. */
  get open(): Sounding | null {
    const last = this.#soundings.at(-1);
    return last?.endS === null ? last : null;
  }

  /** The newest decay time that is known, s. */
  get decayTimeS(): number | null {
    // A loop: asked for with every block, and a search by a function would make that function anew each time.
    for (let i = this.#soundings.length - 1; i >= 0; i -= 1) {
      const { decayTimeS: known } = this.#soundings[i];
      if (known !== null) return known;
    }
    return null;
  }

  /** @param view  the newest seconds @returns soundings that began, grew more certain or ended */
  advance(view: ToneView): readonly Sounding[] {
    const last = this.#soundings.at(-1);
    // As it was before this look.
    const lastEnd = this.#lastTo;
    const hasLastEnded = lastEnd >= 0;
    const since = hasLastEnded ? lastEnd - REOPEN : this.#lastFrom;
    findSoundings(view, this.#found, Math.min(view.length, Math.max(0, since - view.firstIndex)));
    let changed: Sounding[] | null = null;
    for (let i = 0; i < this.#found.count; i += 1) {
      const span = this.#found.spans[i] as SoundingSpan;
      // What begins before the last end is the last sounding: its own tail again, or the tone come back.
      const isTail = hasLastEnded && span.from < lastEnd;
      if (isTail && span.ended && span.to <= lastEnd + SAME_END) continue;
      const isLast: boolean = changed === null && last !== undefined && (!hasLastEnded || isTail);
      const from: number = isLast ? Math.min(this.#lastFrom, span.from) : span.from;
      const isOldStill = isLast && from === this.#lastFrom && !hasLastEnded && !span.ended;
      if (isOldStill && span.to < this.#dueAnew) continue;
      changed = withOne(changed, this.#follow(isLast ? last : undefined, { ...span, from }));
    }
    return changed ?? NOTHING;
  }

  /** Notes a sounding as it is now. @param old  the same before; undefined: it is new */
  #follow(old: Sounding | undefined, span: SoundingSpan): Sounding {
    const { rateHz } = this.#series;
    const sounding: Sounding = {
      index: old?.index ?? this.#soundings.length + 1,
      startS: span.from / rateHz,
      endS: span.ended ? span.to / rateHz : null,
      ...this.#character(old, span),
    };
    this.#soundings[sounding.index - 1] = sounding;
    this.#lastFrom = span.from;
    this.#lastTo = span.ended ? span.to : -1;
    return sounding;
  }

  /** Decay and pitch over all of a sounding so far; what was known before where nothing much was added. */
  #character(
    old: Sounding | undefined,
    span: SoundingSpan,
  ): Pick<Sounding, 'decayTimeS' | 'frequencyHz' | 'frequencyStandardUncertaintyHz'> {
    if (old !== undefined && !span.ended && span.to < this.#dueAnew) {
      const { decayTimeS: decay, frequencyHz, frequencyStandardUncertaintyHz } = old;
      return { decayTimeS: decay, frequencyHz, frequencyStandardUncertaintyHz };
    }
    const grown = Math.max(ANEW_S * this.#series.rateHz, ANEW_SHARE * (span.to - span.from));
    this.#dueAnew = Math.ceil(span.to + grown);
    const pitch = soundingPitch(this.#series, span, this.#fork.toleranceHz, typicalNoise(this.#series, 150));
    return {
      decayTimeS: decayTimeS(this.#series, span),
      frequencyHz: pitch === null ? null : this.#fork.nominalHz + pitch.offsetHz,
      frequencyStandardUncertaintyHz: pitch?.standardUncertaintyHz ?? null,
    };
  }
}
