/** The step of the tone from one place of the fork to the other, with standard uncertainties. */
export interface ToneStep {
  readonly riseNp: number;
  readonly riseUncertaintyNp: number;
  readonly phaseRad: number;
  readonly phaseUncertaintyRad: number;
}

export interface StepJudgement {
  /** ln of how much likelier the step is with the column at resonance than off it. */
  readonly logOdds: number;
  /** Which of the two places is the mouth, more likely than not. */
  readonly isSecondMouth: boolean;
}

/** Quasi-random draws of the column's and the hand's unknowns; enough for the sharpest step that is asked about. */
const DRAWS = 6000;
/** Rise over the direct sound at the maximum, dB (common practice, no source: 6 to 20 dB at the first resonance). */
const LEAST_RISE_DB = 6;
const MOST_RISE_DB = 20;
/** "At resonance" reaches to this many half widths; "off" begins at that many. */
const ON_WITHIN = 0.3;
const OFF_FROM = 3;
const OFF_TO = 15;
/** Density of anything else that may have happened, per Np and rad: no verdict is ever certain. */
const OTHERWISE = 1e-4;

/**
 * Judges one step: how much likelier is it if the column stands at resonance than if it stands off it?
 *
 * At the mouth the microphone hears the direct sound, 1, and the column's, M = m e^{iθ} / (1 + ix): x is the distance
 * from the maximum in half widths, and the phase of M turns by 90° from the maximum (x = 0) to far off (x → ∞). θ, the
 * path's phase, is anything; m follows from θ and from the rise of the maximum over the direct sound. Away, the direct
 * sound is a little weaker or louder, a. The step is ln((1 + M) / a); its likelihood is marginalised over all that isn't
 * known by quasi-Monte Carlo integration, on a fixed set of evenly spread draws.
 *
 * @param step  from the first of two places to the second
 * @param secondIsMouth  probability that the second place is the mouth, 0..1
 */
export function judgeStep(step: ToneStep, secondIsMouth: number): StepJudgement {
  const back = { ...step, riseNp: -step.riseNp, phaseRad: -step.phaseRad };
  const on = (u: number): number => ON_WITHIN * (2 * u - 1);
  const off = (u: number): number =>
    Math.sign(u - 0.5) * (OFF_FROM + (OFF_TO - OFF_FROM) * Math.abs(2 * u - 1));
  const there = { on: secondIsMouth * likelihood(step, on), off: secondIsMouth * likelihood(step, off) };
  const firstIsMouth = 1 - secondIsMouth;
  const reverse = { on: firstIsMouth * likelihood(back, on), off: firstIsMouth * likelihood(back, off) };
  return {
    logOdds: Math.log((there.on + reverse.on + OTHERWISE) / (there.off + reverse.off + OTHERWISE)),
    isSecondMouth: there.on + there.off >= reverse.on + reverse.off,
  };
}

function likelihood(step: ToneStep, distance: (u: number) => number): number {
  const { riseNp, riseUncertaintyNp: uRise, phaseRad, phaseUncertaintyRad: uPhase } = step;
  let sum = 0;
  for (let i = 1; i <= DRAWS; i += 1) {
    const [u1, u2, u3, u4] = [halton(i, 2), halton(i, 3), halton(i, 5), halton(i, 7)];
    const theta = 2 * Math.PI * u1;
    const g = 10 ** ((LEAST_RISE_DB + (MOST_RISE_DB - LEAST_RISE_DB) * u2) / 20);
    // Greatest |1 + M| on the circle through 0 with the diameter m e^{iθ}: |1 + m/2 e^{iθ}| + m/2 = g, solved for m.
    const m = (g * g - 1) / (g + Math.cos(theta));
    const x = distance(u3);
    const size = m / Math.hypot(1, x);
    const angle = theta - Math.atan(x);
    const re = 1 + size * Math.cos(angle);
    const im = size * Math.sin(angle);
    const rise = 0.5 * Math.log(re * re + im * im) - awayNp(u4);
    const dRise = (riseNp - rise) / uRise;
    if (Math.abs(dRise) > 6) continue;
    // Each draw stands for its mirror image too: θ and x are as likely as −θ and −x.
    for (const angleRad of [Math.atan2(im, re), -Math.atan2(im, re)]) {
      const turn = phaseRad - angleRad;
      const dPhase = (turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI))) / uPhase;
      sum += 0.5 * Math.exp(-0.5 * (dRise * dRise + dPhase * dPhase));
    }
  }
  return sum / (DRAWS * 2 * Math.PI * uRise * uPhase);
}

/** How often the direct sound away is as loud as at the mouth to ±3 dB; else it is weaker. */
const AWAY_NEAR = 0.93;

/** Direct sound away against that at the mouth: ±3 dB as a rule, now and then down to −10 dB. */
function awayNp(u: number): number {
  const db = u < AWAY_NEAR ? -3 + (6 * u) / AWAY_NEAR : -10 + (7 * (u - AWAY_NEAR)) / (1 - AWAY_NEAR);
  return (db * Math.LN10) / 20;
}

/** The i-th number of the sequence with that base: evenly spread over 0..1 (Halton 1960, Numer. Math. 2, 84). */
function halton(index: number, base: number): number {
  let [result, part, i] = [0, 1 / base, index];
  while (i > 0) {
    result += part * (i % base);
    i = Math.floor(i / base);
    part /= base;
  }
  return result;
}
