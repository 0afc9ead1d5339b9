import { besselJ1Y1, twiceI1K1 } from './besselIntegrals.ts';

/** What an open end without a flange does to a wave that comes out of the tube. */
export interface OpenEnd {
  /** Size of the pressure's reflection factor, 0..1. */
  readonly reflection: number;
  /** End correction over radius. */
  readonly ratio: number;
}

const HIGHEST_KA = 1.8;
const STEP_KA = 0.01;

/**
 * Levine & Schwinger 1948, Phys. Rev. 73, 383, eqs. VI.4 and VI.5, integrated numerically on a grid of ka and
 * interpolated between. Their result holds up to the first cross mode that an axial wave excites, ka = 3.83; school
 * tubes end far below 1.8.
 * @returns the end at any ka, 0..1.8
 * @example
 * levineSchwinger()(0.5).ratio.toFixed(4) // → '0.5818'
 */
export function levineSchwinger(): (ka: number) => OpenEnd {
  const logs = spacedLogs();
  const grid = Array.from({ length: Math.round(HIGHEST_KA / STEP_KA) + 1 }, (_, i) =>
    openEndAt(Math.max(i * STEP_KA, 1e-6), logs),
  );
  return (ka) => {
    if (!(ka >= 0 && ka < HIGHEST_KA)) throw new RangeError(`ka must be 0..${HIGHEST_KA}, got ${ka}`);
    const below = Math.floor(ka / STEP_KA);
    const part = ka / STEP_KA - below;
    const [one, other] = [grid[below], grid[below + 1]];
    return {
      reflection: one.reflection + part * (other.reflection - one.reflection),
      ratio: one.ratio + part * (other.ratio - one.ratio),
    };
  };
}

interface SpacedLogs {
  readonly step: number;
  /** x and ln(1/(2 I₁(x) K₁(x))), x in equal steps of its logarithm. */
  readonly points: readonly (readonly [x: number, log: number])[];
}

function spacedLogs(): SpacedLogs {
  const step = 0.02;
  const points = Array.from({ length: Math.round(56 / step) + 1 }, (_, i) => {
    const x = Math.exp(-16 + i * step);
    return [x, -Math.log(twiceI1K1(x))] as const;
  });
  return { step, points };
}

function openEndAt(ka: number, { step, points }: SpacedLogs): OpenEnd {
  // x = ka·sin θ takes the root in the denominator away.
  const intervals = 200;
  let [losses, shift] = [0, 0];
  for (let i = 1; i <= intervals; i += 1) {
    const x = ka * Math.sin((Math.PI * i) / (2 * intervals));
    const [j1, y1] = besselJ1Y1(x);
    // Simpson's weights; both integrands vanish at x = 0.
    const weight = i === intervals ? 1 : i % 2 === 1 ? 4 : 2;
    losses += (weight * Math.atan(-j1 / y1)) / x;
    shift += (weight * Math.log(Math.PI * j1 * Math.hypot(j1, y1))) / x;
  }
  const width = Math.PI / (6 * intervals);
  let far = 0;
  for (const [x, log] of points) far += (log * step) / Math.hypot(x, ka);
  return {
    reflection: Math.exp(-((2 * ka) / Math.PI) * losses * width),
    ratio: (shift * width + far) / Math.PI,
  };
}
