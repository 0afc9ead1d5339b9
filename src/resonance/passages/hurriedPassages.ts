import { DB_PER_LN_POWER } from '../../tone/level.ts';
import type { MovingView } from '../toneView.ts';
import type { Candidate, Strongest } from './candidates.ts';
import type { OnlineFlag } from './onlineDetector.ts';
import { passageScore } from './passageProbability.ts';
import { ONLINE_CLASSIFIER } from './perceptronWeights.ts';

/** A passage whose half-power time is shorter than this was too fast: a column rings up in 20 to 60 ms. s. */
const TOO_FAST_S = 0.1;
/**
 * What a passage must show that is too fast to be flagged. Chosen on the practice column at 1 to 20 cm/s, in quiet, talk
 * and a full class, among what talk, other forks and the fork's own unsteadiness make there.
 */
const LEAST = {
  /** The output of the classifier that flags: alone, and where no voice's harmonics stand beside it. */
  score: 0.75,
  scoreAmidNoVoice: 0.15,
  /** ln of the match's statistic: 20. */
  statistic: 3,
  /** Over the tone before and after, dB. */
  riseDb: 4,
  /** ln(1 + tone power / noise power), before and after. */
  tone: 1.5,
  circularity: 0.1,
  enclosedArea: 0.8,
} as const;
/** ln of the far side bands' power over the peak's: a voice has more. */
const NO_VOICE = -0.7;
/** ln of the side bands' flare: a knock or a syllable has more. */
const MOST_BURST = 1;
/** So long a later judgement may still flag it, s. */
const PATIENCE_S = 0.6;
/** Nearer than this to a flag it is the flag's own, s. */
const OWN_S = 0.35;
/** Moments kept: a candidate is seen within three seconds of its peak, in which not so many passages fit. */
const KEPT = 20;

/** A passage that was heard and went by so fast that it was not flagged. */
export interface HurriedPassage {
  /** When its level peaked, on the source's time axis. */
  readonly timeS: number;
  /** Time between its half-power moments. */
  readonly halfPowerS: number;
}

/** Finds passages that went by too fast among what an online detector looks at and what it flags. */
export class HurriedPassages {
  private waiting: HurriedPassage[] = [];
  /** When passages peaked that were flagged, or told of here; the newest last. */
  private known: number[] = [];

  /** Looks at what one step of the detector had to judge. */
  look(candidates: readonly Candidate[], view: MovingView, strongest: Strongest): void {
    for (const { features } of candidates) {
      if (!isHurried(features, strongest)) continue;
      const halfPowerS = 2 * Math.exp(features.logHalfWidth);
      const timeS = (features.peakIndex + view.firstIndex) / view.rateHz;
      const isNew = isApart(timeS, [...this.known, ...this.waiting.map((other) => other.timeS)]);
      if (isNew) this.waiting.push({ timeS, halfPowerS });
    }
  }

  /**
   * What is known by now. What is flagged is marked, and not told of.
   * @param flags  of the steps that were looked at last
   * @param nowS  how far the detector has come on the source's time axis
   */
  take(flags: readonly OnlineFlag[], nowS: number): readonly HurriedPassage[] {
    this.known.push(...flags.map(({ passage }) => passage.timeS));
    this.waiting = this.waiting.filter(({ timeS }) => isApart(timeS, this.known));
    const due = this.waiting.filter(({ timeS }) => timeS < nowS - PATIENCE_S);
    this.waiting = this.waiting.filter((one) => !due.includes(one));
    this.known = [...this.known, ...due.map(({ timeS }) => timeS)].slice(-KEPT);
    return due;
  }
}

const isApart = (timeS: number, others: readonly number[]): boolean =>
  others.every((other) => Math.abs(other - timeS) > OWN_S);

function isHurried(features: Candidate['features'], strongest: Strongest): boolean {
  const { riseOverBefore, riseOverAfter, toneBefore, toneAfter } = features;
  const isLikely =
    Math.exp(features.logHalfWidth) < TOO_FAST_S &&
    features.statistic >= LEAST.statistic &&
    DB_PER_LN_POWER * Math.min(riseOverBefore, riseOverAfter) >= LEAST.riseDb &&
    Math.min(toneBefore, toneAfter) >= LEAST.tone &&
    features.circularity >= LEAST.circularity &&
    features.enclosedArea >= LEAST.enclosedArea &&
    features.noiseBurstRatio <= MOST_BURST;
  if (!isLikely) return false;
  const isVoice = features.harmonicNeighbourRatio > NO_VOICE;
  const least = isVoice ? LEAST.score : LEAST.scoreAmidNoVoice;
  return passageScore(ONLINE_CLASSIFIER, features, strongest) >= least;
}
