/** y = base + slope · t + step · state. */
export interface StepLine {
  readonly base: number;
  readonly slope: number;
  readonly step: number;
}

export interface StepLineRow {
  readonly weight: number;
  readonly t: number;
  /** 0 or 1. */
  readonly state: number;
  readonly y: number;
}

/** A line with a step by weighted least squares. @returns null where the rows don't fix it */
export function stepLine(rows: readonly StepLineRow[]): StepLine | null {
  let [w, t, s] = [0, 0, 0];
  for (const row of rows) {
    w += row.weight;
    t += row.weight * row.t;
    s += row.weight * row.state;
  }
  if (!(w > 0)) return null;
  const [tm, sm] = [t / w, s / w];
  let [tt, ts, ss, ty, sy, ym] = [0, 0, 0, 0, 0, 0];
  for (const row of rows) {
    const dt = row.t - tm;
    const ds = row.state - sm;
    tt += row.weight * dt ** 2;
    ts += row.weight * dt * ds;
    ss += row.weight * ds ** 2;
    ty += row.weight * dt * row.y;
    sy += row.weight * ds * row.y;
    ym += (row.weight * row.y) / w;
  }
  const det = tt * ss - ts * ts;
  if (!(det > 1e-9 * tt * ss)) return null;
  const slope = (ty * ss - sy * ts) / det;
  const step = (sy * tt - ty * ts) / det;
  return { base: ym - slope * tm - step * sm, slope, step };
}
