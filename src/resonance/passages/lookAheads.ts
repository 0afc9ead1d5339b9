import { oneRingUp, ringUpsOfFastSlides } from './passageTemplates.ts';
import type { BankSettings, PassageTemplate } from './passageTemplates.ts';

/** How far past a shape's middle the online detector judges it first, s: flagged then only where it is beyond doubt. */
const earlyAfterS = (halfWidthS: number): number => 0.14 + 1.2 * halfWidthS;
/** Half width up to which there is a first judgement of its own, s: beyond, the second comes as soon. */
const JUDGED_EARLY_TO_S = 0.8;

/** How far past the middle it is judged again, with a longer look-ahead, s. */
const patientAfterS = (halfWidthS: number): number => Math.min(1.1, 0.27 + 2.4 * halfWidthS);

const EARLY: BankSettings = {
  lookAheadS: earlyAfterS,
  ringUpRates: (halfWidthS) => (halfWidthS > JUDGED_EARLY_TO_S ? [] : oneRingUp()),
};
const PATIENT: BankSettings = { lookAheadS: patientAfterS, ringUpRates: ringUpsOfFastSlides };

/** The online detector's judgements of one shape, each with a look-ahead and so with templates of its own. */
export const JUDGEMENTS: readonly BankSettings[] = [EARLY, PATIENT];

/** Least output of the network for a flag at the first judgement; at the second the classifier's own threshold counts. */
export const EARLY_THRESHOLD = 0.9;

/** Which of its judgements a template belongs to: 0 the first, 1 the second. */
export function judgementOf({ after, step, shape }: PassageTemplate, rateHz: number): number {
  const aheadS = (after * step) / rateHz;
  const offsS = JUDGEMENTS.map(({ lookAheadS }) => Math.abs(lookAheadS(shape.halfWidthS) - aheadS));
  return offsS.indexOf(Math.min(...offsS));
}
