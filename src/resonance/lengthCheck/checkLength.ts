import { DB_PER_LN_POWER } from '../../tone/level.ts';
import type { ToneSeries } from '../../tone/toneSeries.ts';
import type { Dwell } from './forkDwells.ts';
import { longestDwells } from './longestSounding.ts';
import { stateStep } from './stateStep.ts';
import { judgeStep } from './stepLikelihood.ts';
import type { ToneStep } from './stepLikelihood.ts';

/** Is the column, left at one length, at resonance? */
export interface LengthCheck {
  readonly verdict: 'resonant' | 'not-resonant' | 'cannot-tell';
  /** Rise of the tone with the fork at the mouth over the fork away from it, dB; null where nothing was compared. */
  readonly riseDb: number | null;
  readonly standardUncertaintyDb: number | null;
  /** Times that the fork came or went. */
  readonly comparisons: number;
  /** Why nothing was compared; null where something was. */
  readonly hindrance: CheckHindrance | null;
}

/**
 * `no-fork`: none was heard. `few-changes`: it came and went less than three times, or stayed in one place not long
 * enough. `noise`: the room hides it. `unsteady`: it does more than go to and fro between two places.
 */
export type CheckHindrance = 'no-fork' | 'lost-sound' | 'few-changes' | 'noise' | 'unsteady';

function cannotTell(hindrance: CheckHindrance, comparisons: number): LengthCheck {
  return { verdict: 'cannot-tell', riseDb: null, standardUncertaintyDb: null, comparisons, hindrance };
}
/** Logarithms of an amplitude to dB. */
const DB_PER_NP = 2 * DB_PER_LN_POWER;
/**
 * A wrong verdict costs as much as so many "can't tell". The verdict of least cost is the likelier one where P(wrong)
 * times this stays below 1, else none (Chow 1970, IEEE Trans. Inf. Theory 16, 41).
 */
const COST_OF_WRONG = 6;
/** Log-odds from which a verdict is worth its risk. */
const VERDICT_FROM = Math.log(COST_OF_WRONG - 1);
/**
 * More cost a block, more blocks in a row that fit neither state: not just a fork that goes to and fro. More variance
 * of level (Np²) and phase (rad²) from the room: not heard well enough.
 */
const TWO_STATES = { misfit: 3, outliers: 13, noiseVariance: 0.08 };
/** The same where nothing comes or goes: an unsteady hand (3 dB and 0.3 rad) costs 1.7. */
const ONE_STATE = { misfit: 1.7, outliers: 2, noiseVariance: 0.05 };
/** "Not resonant" might be said of a slide, so it asks for more. */
const NOT_RESONANT = { misfit: 2, outliers: 3 };
/** A fork that stays in one place, or whose places sound alike, is listened to for at least this long. */
const STEADY_FOR_S = 8;
/** A rise less certain than this (3 dB) answers nothing. */
const MOST_UNCERTAINTY_NP = 0.36;
/** Steps up to this size can hide in a hand's unsteadiness. */
const HIDDEN_NP = 0.15;
const HIDDEN_RAD = 0.3;
/** A hand that goes to and fro is never steadier than this from block to block, Np and rad together. */
const STILL = 0.03;

/**
 * Judges one length: the column stays, the fork goes away from the mouth and comes back a few times.
 *
 * Each dwell of the fork gives one mean level and phase; a line for the fork's dying and a step between the two states
 * are fitted to them, the scatter about the fit gives the uncertainty. Where the states sound alike the column adds
 * nothing that can be heard, so it is not at resonance, provided that the tone is clear and goes on for 8 s.
 *
 * @param rangeHz  how far the fork may be off the frequency moved to 0 Hz
 */
export function checkLength(series: ToneSeries, rangeHz: number): LengthCheck {
  const found = longestDwells(series, rangeHz);
  if (found === null) return cannotTell(series.gaps.length > 0 ? 'lost-sound' : 'no-fork', 0);
  const { dwells, misfit, longestOutliers, noiseVariance, scatter } = found.fork;
  const changes = dwells.length - 1;
  const step = stateStep(dwells);
  const most = step === null ? ONE_STATE : TWO_STATES;
  if (step !== null && step.riseUncertaintyNp > MOST_UNCERTAINTY_NP) return cannotTell('noise', changes);
  if (noiseVariance >= most.noiseVariance) return cannotTell('noise', changes);
  if (misfit > most.misfit || longestOutliers > most.outliers) return cannotTell('unsteady', changes);
  if (step === null) {
    const isHeld = scatter > STILL;
    if (found.durationS < STEADY_FOR_S || !isHeld) return cannotTell('few-changes', changes);
    return answer(
      { riseNp: 0, riseUncertaintyNp: HIDDEN_NP, phaseRad: 0, phaseUncertaintyRad: HIDDEN_RAD },
      0.5,
      0,
    );
  }
  const check = answer(step, secondIsMouth(dwells), changes);
  const mayBeSlide = misfit > NOT_RESONANT.misfit || longestOutliers > NOT_RESONANT.outliers;
  return check.verdict === 'not-resonant' && mayBeSlide ? cannotTell('unsteady', changes) : check;
}

/**
 * How probable it is, 0..1, that the second place is the mouth: a fork is struck away from the column, and damped there as a
 * rule. Where the two ends differ, one was missed.
 */
export function secondIsMouth(dwells: readonly Dwell[]): number {
  return dwells.at(-1)?.isSecond === true ? 0.5 : 0.95;
}

function answer(step: ToneStep, mouthIsSecond: number, comparisons: number): LengthCheck {
  const { logOdds, isSecondMouth } = judgeStep(step, mouthIsSecond);
  return {
    verdict: logOdds > VERDICT_FROM ? 'resonant' : logOdds < -VERDICT_FROM ? 'not-resonant' : 'cannot-tell',
    riseDb: (isSecondMouth ? 1 : -1) * step.riseNp * DB_PER_NP,
    standardUncertaintyDb: step.riseUncertaintyNp * DB_PER_NP,
    comparisons,
    hindrance: null,
  };
}
