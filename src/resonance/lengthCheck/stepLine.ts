/** y = a + b t + c s by weighted least squares. @returns [a, b, c]; null where the rows don't fix them */
export function stepLine(
  rows: readonly (readonly [weight: number, t: number, s: number, y: number])[],
): [number, number, number] | null {
  let [w, t, s] = [0, 0, 0];
  for (const [wi, ti, si] of rows) {
    w += wi;
    t += wi * ti;
    s += wi * si;
  }
  if (!(w > 0)) return null;
  const [tm, sm] = [t / w, s / w];
  let [tt, ts, ss, ty, sy, ym] = [0, 0, 0, 0, 0, 0];
  for (const [wi, ti, si, yi] of rows) {
    tt += wi * (ti - tm) ** 2;
    ts += wi * (ti - tm) * (si - sm);
    ss += wi * (si - sm) ** 2;
    ty += wi * (ti - tm) * yi;
    sy += wi * (si - sm) * yi;
    ym += (wi * yi) / w;
  }
  const det = tt * ss - ts * ts;
  if (!(det > 1e-9 * tt * ss)) return null;
  const b = (ty * ss - sy * ts) / det;
  const c = (sy * tt - ty * ts) / det;
  return [ym - b * tm - c * sm, b, c];
}
