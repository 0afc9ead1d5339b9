/**
 * What a passage through a resonance looks like in the frame that turns with the fork.
 *
 * The column is a one-pole resonator: its envelope h follows h' = σ (1 − h) − iδ(t) h, with ring-up rate σ and a
 * detuning δ that a steady slide sweeps through zero: δ = ±σ (t − t₀) / w, w the half width at half power.
 * A slow slide (w ≫ 1/σ) draws the circle 1 / (1 ± i (t − t₀)/w), a fast one rings after it.
 * The microphone adds the fork's direct sound, which the hand lets vary: the nuisance terms {1, t} of the matched filter.
 */
export interface PassageShape {
  /** Half of the time between the half-power moments of a slow slide, s. */
  readonly halfWidthS: number;
  /** σ, 1/s: σ = ω/2Q of the column; references: ring-up in tens of ms. */
  readonly ringUpRate: number;
}

/**
 * The envelope h of a growing column at the given times, by fine steps of the exact solution for a constant detuning.
 * @param timesS  increasing, s; the length is right at 0
 * @param longestStepS  > 0
 */
export function sweptResonator(
  shape: PassageShape,
  timesS: ArrayLike<number>,
  longestStepS: number,
): { readonly re: number[]; readonly im: number[] } {
  const { ringUpRate: sigma, halfWidthS } = shape;
  // Start in the steady state of the first detuning, long before the window.
  let timeS = timesS[0] - 6 / sigma;
  const detuning = (t: number): number => (sigma * t) / halfWidthS;
  let d0 = detuning(timeS);
  let scale = sigma / (sigma * sigma + d0 * d0);
  let re = scale * sigma;
  let im = -scale * d0;
  const out = { re: [] as number[], im: [] as number[] };
  for (let i = 0; i < timesS.length; i += 1) {
    const target = timesS[i];
    while (timeS < target - 1e-9) {
      const dt = Math.min(longestStepS, target - timeS);
      d0 = detuning(timeS + dt / 2);
      // Exact for a constant detuning over the step: relax to σ / (σ + iδ) with factor e^(−(σ + iδ) dt).
      scale = sigma / (sigma * sigma + d0 * d0);
      const restRe = scale * sigma;
      const restIm = -scale * d0;
      const decay = Math.exp(-sigma * dt);
      const cos = decay * Math.cos(d0 * dt);
      const sin = -decay * Math.sin(d0 * dt);
      const offRe = re - restRe;
      const offIm = im - restIm;
      re = restRe + offRe * cos - offIm * sin;
      im = restIm + offRe * sin + offIm * cos;
      timeS += dt;
    }
    out.re.push(re);
    out.im.push(im);
  }
  return out;
}
