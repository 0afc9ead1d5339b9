import type { SweepLevel } from '../../tone/sweepCurve.ts';

/** A frequency at which a column of fixed length resonates. */
export interface SweepPeak {
  readonly frequencyHz: number;
  readonly standardUncertaintyHz: number;
  /** Half of the width at half power, Hz. */
  readonly halfWidthHz: number;
  /** Maximum over the level beside it, dB. */
  readonly riseDb: number;
}

/** Least prominence: what ripples of a loudspeaker reach stays below. A judgement. */
const LEAST_RISE_DB = 4;
/** Half widths to each side that the shape is fitted over. */
const REACH = 4;
const FEWEST = 9;
/** Widths that a column's resonance can have, Hz (references: 2.7 to 8.2 mm at 512 Hz are 4 to 12 Hz). */
const NARROWEST_HZ = 1;
const WIDEST_HZ = 60;
/** The shape leaves out how loudspeaker and losses change over a width: this part of the half width. A judgement. */
const SHAPE_PART = 0.03;

interface Fit {
  readonly centreHz: number;
  readonly halfWidthHz: number;
  readonly residual: number;
  /** Levels of the direct sound and of the fit's maximum, mean squares. */
  readonly direct: number;
  readonly most: number;
}

/**
 * Resonances in the level of a sweep, lowest first. Direct sound and column add up to |1 + m·e^{iθ}/(1 + ix)|², which is
 * {1, 1/(1+x²), x/(1+x²)} times three constants with x = (f − f₀)/h: f₀ is where the column resonates, whatever the
 * direct sound's phase. The sweep's own shift is still in it.
 * @param curve  by rising frequency
 */
export function sweepPeaks(curve: readonly SweepLevel[]): readonly SweepPeak[] {
  return prominent(curve).flatMap((index): SweepPeak[] => {
    const guess = curve[index];
    const widthHz = roughHalfWidthHz(curve, index);
    const near = curve.filter((one) => Math.abs(one.frequencyHz - guess.frequencyHz) <= REACH * widthHz);
    if (near.length < FEWEST) return [];
    const best = refine(near, guess.frequencyHz, widthHz);
    if (best.halfWidthHz < NARROWEST_HZ || best.halfWidthHz > WIDEST_HZ) return [];
    const statistical = centreUncertaintyHz(near, best);
    return [
      {
        frequencyHz: best.centreHz,
        standardUncertaintyHz: Math.hypot(statistical, SHAPE_PART * best.halfWidthHz),
        halfWidthHz: best.halfWidthHz,
        riseDb: 10 * Math.log10(best.most / Math.max(best.direct, 1e-3 * best.most)),
      },
    ];
  });
}

/** Local maxima that stand out of the higher of the two minima beside them (prominence). */
function prominent(curve: readonly SweepLevel[]): readonly number[] {
  const levels = smooth(curve).map((meanSquare) => 10 * Math.log10(meanSquare + 1e-20));
  const found: number[] = [];
  for (let i = 2; i < levels.length - 2; i += 1) {
    const here = levels[i];
    if (here < levels[i - 1] || here <= levels[i + 1]) continue;
    const base = Math.max(lowestUntilHigher(levels, i, -1), lowestUntilHigher(levels, i, 1));
    if (here - base >= LEAST_RISE_DB) found.push(i);
  }
  return found;
}

function lowestUntilHigher(levels: readonly number[], from: number, step: 1 | -1): number {
  const top = levels[from];
  let lowest = top;
  for (let i = from + step; i >= 0 && i < levels.length; i += step) {
    const level = levels[i];
    if (level > top) return lowest;
    lowest = Math.min(lowest, level);
  }
  return lowest;
}

function smooth(curve: readonly SweepLevel[]): readonly number[] {
  return curve.map((_, i) => {
    const near = curve.slice(Math.max(0, i - 1), i + 2);
    return near.reduce((sum, one) => sum + one.meanSquare, 0) / near.length;
  });
}

/** Half of the stretch around a maximum in which the power stays above half of it. */
function roughHalfWidthHz(curve: readonly SweepLevel[], index: number): number {
  const top = curve[index];
  const edge = (step: 1 | -1): number => {
    for (let i = index; i >= 0 && i < curve.length; i += step) {
      const one = curve[i];
      if (one.meanSquare < 0.5 * top.meanSquare) return Math.abs(one.frequencyHz - top.frequencyHz);
    }
    return Infinity;
  };
  return Math.max(NARROWEST_HZ, Math.min(edge(1), edge(-1), WIDEST_HZ));
}

/** Least squares over centre and width by a grid that closes in; everything else in the shape is linear. */
function refine(near: readonly SweepLevel[], centreHz: number, widthHz: number): Fit {
  let best = fitAt(near, centreHz, widthHz);
  let [stepHz, factor] = [widthHz / 3, 1.35];
  for (let round = 0; round < 14; round += 1) {
    const { centreHz: middleHz, halfWidthHz } = best;
    for (let i = -3; i <= 3; i += 1) {
      for (let j = -3; j <= 3; j += 1) {
        const fit = fitAt(near, middleHz + i * stepHz, halfWidthHz * factor ** j);
        if (fit.residual < best.residual) best = fit;
      }
    }
    stepHz *= 0.6;
    factor = 1 + (factor - 1) * 0.6;
  }
  return best;
}

function fitAt(near: readonly SweepLevel[], centreHz: number, halfWidthHz: number): Fit {
  const rows = near.map((one) => {
    const x = (one.frequencyHz - centreHz) / halfWidthHz;
    const bell = 1 / (1 + x * x);
    return [1, bell, x * bell, one.meanSquare] as const;
  });
  const [direct, bell, skew] = solveThree(rows);
  let residual = 0;
  let most = 0;
  for (const [one, b, s, y] of rows) {
    const fitted = direct * one + bell * b + skew * s;
    residual += (y - fitted) ** 2;
    most = Math.max(most, fitted);
  }
  return { centreHz, halfWidthHz, residual, direct: Math.max(direct, 0), most };
}

/** Normal equations of three columns, by Cramer's rule. */
function solveThree(rows: readonly (readonly [number, number, number, number])[]): [number, number, number] {
  const sum = (i: 0 | 1 | 2, j: 0 | 1 | 2 | 3): number => rows.reduce((s, row) => s + row[i] * row[j], 0);
  const [aa, ab, ac, bb, bc, cc] = [sum(0, 0), sum(0, 1), sum(0, 2), sum(1, 1), sum(1, 2), sum(2, 2)];
  const [ay, by, cy] = [sum(0, 3), sum(1, 3), sum(2, 3)];
  const p = bb * cc - bc * bc;
  const q = ac * bc - ab * cc;
  const r = ab * bc - ac * bb;
  const det = aa * p + ab * q + ac * r;
  if (!(Math.abs(det) > 1e-300)) return [0, 0, 0];
  const s = aa * cc - ac * ac;
  const t = ab * ac - aa * bc;
  const u = aa * bb - ab * ab;
  return [
    (p * ay + q * by + r * cy) / det,
    (q * ay + s * by + t * cy) / det,
    (r * ay + t * by + u * cy) / det,
  ];
}

/** From how fast the squares grow when the centre is moved: var = 2 s²/(d²S/df²). */
function centreUncertaintyHz(near: readonly SweepLevel[], best: Fit): number {
  const step = 0.1 * best.halfWidthHz;
  const left = fitAt(near, best.centreHz - step, best.halfWidthHz).residual;
  const right = fitAt(near, best.centreHz + step, best.halfWidthHz).residual;
  const curvature = (left - 2 * best.residual + right) / step ** 2;
  const variance = best.residual / Math.max(near.length - 5, 1);
  return curvature > 0 ? Math.sqrt((2 * variance) / curvature) : best.halfWidthHz;
}
