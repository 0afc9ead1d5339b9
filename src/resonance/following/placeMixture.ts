import { HAND } from './handModel.ts';
import { PlaceState, X } from './placeState.ts';
import type { HeardBlock } from './placeState.ts';

/** Nearer than this the side doesn't matter: it is here, half widths. */
const HERE = 0.35;
/** States lighter than this aren't kept. */
const LIGHTEST = 1e-7;

/**
 * Several ideas of where the column is, each with its weight (a Gaussian sum: Alspach & Sorenson 1972, IEEE Trans.
 * Autom. Control 17, 439). Each block every state goes on in two ways, with the speed that it had and with another one;
 * then those that have become alike are merged and the lightest are let go.
 */
export class PlaceMixture {
  readonly states: PlaceState[] = [];
  /** ln of how probable all that was heard is under this mixture, up to a constant. */
  logEvidence = 0;
  /** How badly the states foresaw the newest block, on average: about 2 where they do. */
  surprise = 2;
  private readonly most: number;
  private readonly spare: PlaceState[] = [];
  private readonly next: PlaceState[] = [];

  /** @param most  states that are kept */
  constructor(most: number) {
    this.most = most;
  }

  /** A new state to be filled. */
  add(): PlaceState {
    const state = this.spare.pop() ?? new PlaceState();
    this.states.push(state);
    return state;
  }

  /** On by a block, and what was heard in it; null: nothing that counts. */
  step(stepS: number, timeS: number, heard: HeardBlock | null): void {
    const changes = 1 - Math.exp(-stepS * HAND.changesPerS);
    const next = this.next;
    for (const state of this.states) {
      state.advance(stepS, timeS);
      const changed = this.spare.pop() ?? new PlaceState();
      changed.copy(state);
      changed.weight *= changes;
      state.weight *= 1 - changes;
      state.goOn(stepS, false);
      changed.goOn(stepS, true);
      next.push(state, changed);
    }
    if (heard !== null) {
      let [whole, sum] = [0, 0];
      for (const state of next) {
        const surprise = state.observe(heard);
        whole += state.weight;
        sum += state.weight * Math.min(20, surprise);
      }
      if (whole > 0) this.surprise = sum / whole;
    }
    this.states.length = 0;
    this.keepBest(next);
    next.length = 0;
  }

  /** On by a block while the column's motion is given. @param place  sets it */
  stepAlong(stepS: number, heard: HeardBlock, place: (state: PlaceState, index: number) => void): void {
    for (const [index, state] of this.states.entries()) {
      state.advanceLevel(stepS);
      place(state, index);
      state.observe(heard);
    }
    this.normalise();
  }

  normalise(): void {
    let whole = 0;
    for (const { weight } of this.states) whole += weight;
    if (!(whole > 0)) whole = Number.MIN_VALUE;
    this.logEvidence += Math.log(whole);
    for (const state of this.states) state.weight /= whole;
  }

  /** Moves the next states here, merged and thinned out. */
  private keepBest(next: PlaceState[]): void {
    let whole = 0;
    for (const { weight } of next) whole += weight;
    next.sort(byWeight);
    for (const state of next) {
      const twin =
        state.weight < LIGHTEST * whole ? undefined : this.states.find((kept) => kept.isNear(state));
      if (twin !== undefined) twin.merge(state);
      else if (this.states.length < this.most && state.weight >= LIGHTEST * whole) {
        this.states.push(state);
        continue;
      }
      this.spare.push(state);
    }
    this.normalise();
  }

  /** Where the column is. */
  read(): PlaceReading {
    let [mean, square, beyondLong, beyondShort] = [0, 0, 0, 0];
    for (const state of this.states) {
      const x = state.mean[X];
      const variance = Math.max(1e-6, state.variance(X));
      mean += state.weight * x;
      square += state.weight * (x * x + variance);
      beyondLong += state.weight * normalShare((x - HERE) / Math.sqrt(variance));
      beyondShort += state.weight * normalShare((-HERE - x) / Math.sqrt(variance));
    }
    const standardUncertainty = Math.sqrt(Math.max(1e-6, square - mean * mean));
    return { halfWidths: mean, standardUncertainty, beyondLong, beyondShort };
  }

  /** The same with so many states at most from now on. */
  thinned(most: number): PlaceMixture {
    const thin = new PlaceMixture(most);
    thin.states.push(...[...this.states].sort(byWeight).slice(0, most));
    for (const state of thin.states) state.seeksCrossing = false;
    thin.normalise();
    thin.logEvidence = this.logEvidence;
    return thin;
  }

  /** The weightiest state. */
  get best(): PlaceState | null {
    let best: PlaceState | null = null;
    for (const state of this.states) if (best === null || state.weight > best.weight) best = state;
    return best;
  }
}

/** Where a mixture sees the column. */
export interface PlaceReading {
  readonly halfWidths: number;
  /** In half widths. */
  readonly standardUncertainty: number;
  /** Probability that the column is too long, or too short, by more than what counts as here; 0..1. */
  readonly beyondLong: number;
  readonly beyondShort: number;
}

const byWeight = (a: PlaceState, b: PlaceState): number => b.weight - a.weight;

/** Share of a standard normal below z (Abramowitz & Stegun 26.2.17, good to 8e-8). */
export function normalShare(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const poly =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  const above = 0.3989422804 * Math.exp((-z * z) / 2) * poly;
  return z > 0 ? 1 - above : above;
}
