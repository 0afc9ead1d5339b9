import { logistic, logOdds } from './perceptron.ts';

/** Less than this says nothing: most of what is looked at is no passage. */
const LEAST = 0.1;
/** Peaks that are no further apart than this are the same, values of the tone series: 150 ms. */
const WITHIN = 15;

/**
 * What the online detector thought of each peak when it passed, its network's output, 0..1. The second look hears what
 * comes later; but the network that judged at once has learned from other windows, so the two err in different places.
 */
export class OnlineScores {
  private readonly highest = new Map<number, number>();

  /** @param peakIndex  into the series @param score  the network's output, 0..1 */
  add(peakIndex: number, score: number): void {
    if (score <= LEAST) return;
    this.highest.set(peakIndex, Math.max(score, this.highest.get(peakIndex) ?? 0));
  }

  /** The highest within 150 ms of a peak, at least LEAST. @param peakIndex  into the series */
  near(peakIndex: number): number {
    let highest = LEAST;
    for (let index = peakIndex - WITHIN; index <= peakIndex + WITHIN; index += 1) {
      highest = Math.max(highest, this.highest.get(index) ?? 0);
    }
    return highest;
  }
}

/**
 * Both networks' outputs, 0..1 each, as one: the mean of their log-odds, a logarithmic opinion pool.
 * @see Genest & Zidek 1986, Statist. Sci. 1, 114
 */
export const jointScore = (offline: number, online: number): number =>
  logistic((logOdds(offline) + logOdds(online)) / 2);
