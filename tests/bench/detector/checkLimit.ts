import { ColumnAtPitch } from './column.ts';
import { mouthAmplitude } from './performance.ts';
import { drawFork, drawTube } from './plan.ts';
import { Random } from './random.ts';

/** What anybody can reach who knows the simulator and one step, at one cost of a wrong verdict. */
export interface CheckLimit {
  /** A wrong verdict costs so many times a "can't tell". */
  readonly cost: number;
  readonly right: number;
  readonly wrong: number;
}

const COLUMNS = 20000;
/** Each column is seen with so many levels of the fork away, and errors of the step. */
const VIEWS = 30;
/** Cells of rise (Np) and of phase's size (rad). */
const CELL = 0.07;
const LEAST_NP = -2.5;
const CELLS = 90;
const PHASE_CELLS = Math.ceil(Math.PI / CELL);

/**
 * Bayes' limit of the own world's checks: with the densities of the step itself, at resonance and off it, the verdict
 * of least mean cost is the likelier one where P(wrong) times its cost stays below 1, else "can't tell" (Chow 1970,
 * IEEE Trans. Inf. Theory 16, 41). Densities are counted on one half of the columns, verdicts on the other.
 * @param errorNp  standard error of the rise, Np; that of the phase is 1.2 times it, rad
 * @param awayDb  level of the direct sound away lies within ± this of that at the mouth; 0: known
 */
export function checkLimits(
  costs: readonly number[],
  errorNp: number,
  awayDb: number,
  random: Random,
): CheckLimit[] {
  const [learned, judged] = [0, 1].map(() => ({
    on: countSteps(true, errorNp, awayDb, random),
    off: countSteps(false, errorNp, awayDb, random),
  }));
  return costs.map((cost) => {
    let [right, wrong] = [0, 0];
    for (let cell = 0; cell < CELLS * PHASE_CELLS; cell += 1) {
      const [on, off] = [learned.on[cell] + 1e-7, learned.off[cell] + 1e-7];
      if ((Math.min(on, off) / (on + off)) * cost >= 1) continue;
      right += (on > off ? judged.on[cell] : judged.off[cell]) / 2;
      wrong += (on > off ? judged.off[cell] : judged.on[cell]) / 2;
    }
    return { cost, right, wrong };
  });
}

/** Share of the steps in each cell. */
function countSteps(isResonant: boolean, errorNp: number, awayDb: number, random: Random): Float64Array {
  const share = new Float64Array(CELLS * PHASE_CELLS);
  for (let i = 0; i < COLUMNS / 2; i += 1) {
    const { levelNp, phaseRad } = drawStep(isResonant, random);
    for (let view = 0; view < VIEWS; view += 1) {
      const awayNp = (random.uniform(-awayDb, awayDb) * Math.LN10) / 20;
      const rise = levelNp - awayNp + errorNp * random.gauss();
      const turn = phaseRad + 1.2 * errorNp * random.gauss();
      const size = Math.abs(turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI)));
      const row = Math.max(0, Math.min(CELLS - 1, Math.floor((rise - LEAST_NP) / CELL)));
      const column = Math.min(PHASE_CELLS - 1, Math.floor(size / CELL));
      share[row * PHASE_CELLS + column] += 2 / (COLUMNS * VIEWS);
    }
  }
  return share;
}

/** ln of the sound with the fork at the mouth over the direct sound there, drawn as `plan.ts` draws checks. */
function drawStep(isResonant: boolean, random: Random): { levelNp: number; phaseRad: number } {
  const fork = drawFork(random);
  const tube = drawTube(random, fork.nominalHz < 200 || random.chance(0.85));
  const column = new ColumnAtPitch(tube, fork.actualHz);
  const order =
    [1, 2, 3].find((n) => column.resonantLengthM(n) > 0.045 && column.resonantLengthM(n) < 1.17) ?? 1;
  const centre = column.resonantLengthM(order);
  const half = column.halfWidthM(order);
  const spacing = column.waveSpeedMps / (2 * column.frequencyHz);
  const off = random.uniform(Math.min(3 * half, 0.4 * spacing), Math.min(0.45 * spacing, 12 * half));
  const lengthM = isResonant
    ? centre + half * random.uniform(-0.25, 0.25)
    : Math.max(0.03, centre + random.sign() * off);
  const theta = random.uniform(-Math.PI, Math.PI);
  const [peakRe, peakIm] = column.steadyFlow(centre);
  const size = mouthAmplitude(column, order, random.uniform(6, 20), theta) / Math.hypot(peakRe, peakIm);
  const tilt = theta - Math.atan2(peakIm, peakRe);
  const [flowRe, flowIm] = column.steadyFlow(lengthM);
  const re = 1 + size * (flowRe * Math.cos(tilt) - flowIm * Math.sin(tilt));
  const im = size * (flowRe * Math.sin(tilt) + flowIm * Math.cos(tilt));
  return { levelNp: Math.log(Math.hypot(re, im)), phaseRad: Math.atan2(im, re) };
}
