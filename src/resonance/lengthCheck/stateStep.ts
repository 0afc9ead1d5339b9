import type { Dwell } from './forkDwells.ts';
import { stepLine } from './stepLine.ts';
import type { ToneStep } from './stepLikelihood.ts';

/** Least changes of state that are compared: there and back, and once more. */
const LEAST_CHANGES = 3;
/** Scatter of dwells that a hand makes, counted like four more of them: few dwells tell little of their own. */
const USUAL_NP = 0.12;
const USUAL_RAD = 0.15;

/** The step between the two states, from the dwells. @returns null for fewer than three changes */
export function stateStep(dwells: readonly Dwell[]): ToneStep | null {
  if (dwells.length <= LEAST_CHANGES) return null;
  const level = stepBetween(dwells, ({ levelNp }) => levelNp, USUAL_NP);
  const phase = stepBetween(dwells, ({ phaseRad }) => phaseRad, USUAL_RAD);
  if (level === null || phase === null) return null;
  return {
    riseNp: level.step,
    riseUncertaintyNp: level.uncertainty,
    phaseRad: phase.step,
    phaseUncertaintyRad: phase.uncertainty,
  };
}

/** Line in time and step between the states by least squares, each dwell counted once. @param usual  scatter */
function stepBetween(
  dwells: readonly Dwell[],
  of: (dwell: Dwell) => number,
  usual: number,
): { step: number; uncertainty: number } | null {
  const n = dwells.length;
  const rows = dwells.map((dwell) => ({
    weight: 1,
    t: dwell.timeS,
    state: Number(dwell.isSecond),
    y: of(dwell),
  }));
  const line = stepLine(rows);
  if (line === null) return null;
  const { base, slope, step } = line;
  let [squares, noise, t, s] = [0, 0, 0, 0];
  for (const [i, row] of rows.entries()) {
    squares += (row.y - base - slope * row.t - step * row.state) ** 2;
    noise += dwells[i].noiseVariance / n;
    t += row.t / n;
    s += row.state / n;
  }
  let [tt, ts, ss] = [0, 0, 0];
  for (const row of rows) {
    tt += (row.t - t) ** 2;
    ts += (row.t - t) * (row.state - s);
    ss += (row.state - s) ** 2;
  }
  const variance = (squares + 4 * usual * usual) / (n + 1) + noise;
  return { step, uncertainty: Math.sqrt((variance * tt) / (tt * ss - ts * ts)) };
}
