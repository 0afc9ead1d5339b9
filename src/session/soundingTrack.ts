import { decayTimeS, findSoundings, soundingPitch } from '../resonance/soundings.ts';
import { typicalNoise } from '../resonance/secondLook.ts';
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
  #workedOutS = -Infinity;

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
    return this.#soundings.findLast((sounding) => sounding.decayTimeS !== null)?.decayTimeS ?? null;
  }

  /** @param view  the newest seconds @returns soundings that began, grew more certain or ended */
  advance(view: ToneView): readonly Sounding[] {
    const { rateHz } = this.#series;
    const last = this.#soundings.at(-1);
    const lastEndS = last?.endS ?? null;
    const lastEnd = lastEndS === null ? null : Math.round(lastEndS * rateHz);
    const since =
      last === undefined ? 0 : lastEnd === null ? Math.round(last.startS * rateHz) : lastEnd - REOPEN;
    const spans = findSoundings(view, Math.min(view.length, Math.max(0, since - view.firstIndex)));
    let changed: Sounding[] | null = null;
    for (const span of spans) {
      // What begins before the last end is the last sounding: its own tail again, or the tone come back.
      const isTail = lastEnd !== null && span.from < lastEnd;
      if (isTail && span.ended && span.to <= lastEnd + SAME_END) continue;
      const isLast = changed === null && last !== undefined && (lastEnd === null || isTail);
      const index = isLast ? last.index : this.#soundings.length + 1;
      const old = this.#soundings[index - 1];
      const startS = Math.min(old?.startS ?? Infinity, span.from / rateHz);
      const endS = span.ended ? span.to / rateHz : null;
      const isOldStill = old?.startS === startS && old.endS === null && endS === null;
      if (isOldStill && !this.#isDueAnew(startS, span.to)) continue;
      const sounding: Sounding = {
        index,
        startS,
        endS,
        ...this.#character(old, startS, span.to, endS !== null),
      };
      this.#soundings[index - 1] = sounding;
      changed = withOne(changed, sounding);
    }
    return changed ?? NOTHING;
  }

  /** Is there so much more of a sounding that its character is worth a new look? */
  #isDueAnew(startS: number, to: number): boolean {
    const anewS = Math.max(ANEW_S, ANEW_SHARE * (this.#workedOutS - startS));
    return to / this.#series.rateHz >= this.#workedOutS + anewS;
  }

  /** Decay and pitch over all of a sounding so far; what was known before where nothing much was added. */
  #character(
    old: Sounding | undefined,
    startS: number,
    to: number,
    hasEnded: boolean,
  ): Pick<Sounding, 'decayTimeS' | 'frequencyHz' | 'frequencyStandardUncertaintyHz'> {
    const { rateHz } = this.#series;
    if (old !== undefined && !hasEnded && !this.#isDueAnew(startS, to)) {
      const { decayTimeS: decay, frequencyHz, frequencyStandardUncertaintyHz } = old;
      return { decayTimeS: decay, frequencyHz, frequencyStandardUncertaintyHz };
    }
    this.#workedOutS = to / rateHz;
    const span = { from: Math.round(startS * rateHz), to, ended: hasEnded };
    const pitch = soundingPitch(this.#series, span, this.#fork.toleranceHz, typicalNoise(this.#series, 150));
    return {
      decayTimeS: decayTimeS(this.#series, span),
      frequencyHz: pitch === null ? null : this.#fork.nominalHz + pitch.offsetHz,
      frequencyStandardUncertaintyHz: pitch?.standardUncertaintyHz ?? null,
    };
  }
}
