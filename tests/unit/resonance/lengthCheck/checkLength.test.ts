import { describe, expect, it } from 'vitest';
import { checkLength } from '../../../../src/resonance/lengthCheck/checkLength.ts';
import { judgeStep } from '../../../../src/resonance/lengthCheck/stepLikelihood.ts';
import { stepLine } from '../../../../src/resonance/lengthCheck/stepLine.ts';
import { ToneSeries } from '../../../../src/tone/toneSeries.ts';
import { Random, slowNoise } from '../../../bench/detector/random.ts';
import { simulate } from '../../../bench/detector/simulate.ts';
import { toneSeriesOf } from '../../../support/hear.ts';

const RATE_HZ = 100;

/** What a hand does in a made-up check. */
interface Visits {
  /** Sound of the column at the microphone, the direct sound being 1. */
  readonly column: readonly [number, number];
  /** Direct sound away, that at the mouth being 1. */
  readonly away: number;
  readonly visits: number;
  readonly dwellS?: number;
  readonly moveS?: number;
  readonly noiseRms?: number;
  readonly wobbleDb?: number;
}

/** The narrow stream of a fork that goes to and fro: 12 s decay, an offset of 0.13 Hz, a hand that wobbles. */
function series(what: Visits, seed: number, lengthS = 24): ToneSeries {
  const random = new Random(seed);
  const count = Math.round(lengthS * RATE_HZ);
  const level = slowNoise(random, count, RATE_HZ, 1.5, (what.wobbleDb ?? 0.5) / 8.686);
  const phase = slowNoise(random, count, RATE_HZ, 1, what.wobbleDb === 0 ? 0 : 0.12);
  const { dwellS = 1.2, moveS = 0.3, noiseRms = 0.01 } = what;
  const result = new ToneSeries(RATE_HZ, 50);
  const hopS = 0.08;
  for (let i = 0; i * hopS < lengthS; i += 1) {
    // Both parts of a value have the variance noiseRms², spread over the rate.
    const nearDensity = (2 * noiseRms ** 2) / RATE_HZ;
    result.sideBands.push({ near: nearDensity, far: nearDensity, floor: nearDensity });
  }
  const cycleS = 2 * (dwellS + moveS);
  for (let k = 0; k < count; k += 1) {
    const t = k / RATE_HZ;
    let [re, im] = [0, 0];
    const since = t - 1;
    const until = 0.6 + what.visits * cycleS + 0.5;
    if (since > 0 && since < until) {
      const inCycle = (((since - 0.6) % cycleS) + cycleS) % cycleS;
      const isVisiting = since > 0.6 && since < 0.6 + what.visits * cycleS;
      const arrive = Math.min(1, inCycle / moveS);
      const leave = Math.max(0, Math.min(1, (inCycle - moveS - dwellS) / moveS));
      const near = isVisiting ? arrive - leave : 0;
      const direct = what.away ** (1 - near);
      const [x, y] = [direct + near * what.column[0], near * what.column[1]];
      const size = Math.exp(-since / 12 + level[k]);
      const angle = 2 * Math.PI * 0.13 * t + phase[k];
      re = size * (x * Math.cos(angle) - y * Math.sin(angle));
      im = size * (x * Math.sin(angle) + y * Math.cos(angle));
    }
    result.pushValues([re + noiseRms * random.gauss()], [im + noiseRms * random.gauss()], 1);
  }
  return result;
}

describe('check of a length', () => {
  it.each([
    [2, 0.2, 1.2],
    [3, 0.5, 3],
    [4, 0.3, 0.7],
    [6, 0.2, 1],
  ])(
    'calls a column resonant that turns and lifts the tone: %d visits, moves of %d s, stays of %d s',
    (visits, moveS, dwellS) => {
      // |1 + 4i| = 4.12: +12.3 dB, turned by 76°.
      const check = checkLength(series({ column: [0, 4], away: 1, visits, moveS, dwellS }, visits), 1.5);
      expect(check.verdict).toBe('resonant');
      expect(check.comparisons).toBe(2 * visits);
      expect(Math.abs((check.riseDb ?? NaN) - 12.3)).toBeLessThan(1.5);
      expect(Math.abs((check.riseDb ?? NaN) - 12.3)).toBeLessThan(3 * (check.standardUncertaintyDb ?? NaN));
      expect(check.standardUncertaintyDb).toBeLessThan(1.2);
    },
  );

  it('takes the fork’s dying out: the rise is that of the column though the tone falls by 15 dB', () => {
    const check = checkLength(series({ column: [3, 3], away: 1, visits: 6, wobbleDb: 0.2 }, 9), 1.5);
    // |4 + 3i| = 5: +14.0 dB.
    expect(Math.abs((check.riseDb ?? NaN) - 14)).toBeLessThan(1);
    expect(check.verdict).toBe('resonant');
  });

  it.each([
    ['the column adds a little, out of phase', [-0.1, -0.15], 1],
    ['the fork is 2 dB louder away from it', [0.1, 0.1], 1.26],
    ['only the distance changes the level', [0, 0], 0.75],
    ['the column takes some away', [-0.45, 0.1], 1],
  ] as const)('calls a column not resonant where %s', (_, column, away) => {
    const check = checkLength(series({ column, away, visits: 5 }, 21), 1.5);
    expect(check.verdict).toBe('not-resonant');
  });

  it('calls a column not resonant where nothing changes though a hand holds the fork for 18 s', () => {
    const check = checkLength(series({ column: [0, 0], away: 1, visits: 6 }, 5), 1.5);
    expect(check).toMatchObject({ verdict: 'not-resonant', riseDb: 0, comparisons: 0 });
  });

  it('can’t tell from one visit, from a clamped fork, in loud noise, and from nothing at all', () => {
    const unsure = (hindrance: string) => ({ verdict: 'cannot-tell', hindrance });
    const once = checkLength(series({ column: [0, 4], away: 1, visits: 1 }, 1), 1.5);
    expect(once).toMatchObject(unsure('few-changes'));
    // One coming and one going.
    expect(once.comparisons).toBe(2);
    const clamped = series({ column: [0, 0], away: 1, visits: 6, wobbleDb: 0, noiseRms: 0.001 }, 2);
    expect(checkLength(clamped, 1.5)).toMatchObject(unsure('few-changes'));
    const loud = series({ column: [0, 1.5], away: 1, visits: 4, noiseRms: 1 }, 3);
    expect(checkLength(loud, 1.5)).toMatchObject(unsure('noise'));
    expect(checkLength(new ToneSeries(RATE_HZ, 50), 1.5)).toEqual({
      verdict: 'cannot-tell',
      riseDb: null,
      standardUncertaintyDb: null,
      comparisons: 0,
      hindrance: 'no-fork',
    });
  });

  it('says neither where a column at resonance and one off it give the same step', () => {
    // At resonance m = 1, θ = 0: 1 + 1. Three half widths off, m = √10, θ = atan 3: m e^{iθ} / (1 + 3i) = 1 as well,
    // and that column's maximum is |1 + m/2 e^{iθ}| + m/2 = 3.7, 11.4 dB: as usual as the other one's 6 dB.
    const check = checkLength(series({ column: [1, 0], away: 1, visits: 6 }, 7), 1.5);
    expect(check).toMatchObject({ verdict: 'cannot-tell', hindrance: null });
    expect(Math.abs((check.riseDb ?? NaN) - 6)).toBeLessThan(1.5);
  });

  it('can’t tell across lost sound', () => {
    const heard = series({ column: [0, 4], away: 1, visits: 4 }, 4);
    expect(checkLength(heard, 1.5).verdict).toBe('resonant');
    heard.markGap(7);
    // The fork was heard: it is not what is missing.
    expect(checkLength(heard, 1.5)).toMatchObject({ verdict: 'cannot-tell', hindrance: 'lost-sound' });
  });

  it('is as sure with the phase going either way, and by half a turn', () => {
    for (const column of [
      [0, -4],
      [-5, 0.5],
      [4, 0],
    ] as const) {
      expect(checkLength(series({ column, away: 1, visits: 4 }, 6), 1.5).verdict).toBe('resonant');
    }
  });

  it.each([1, 2, 3])('can’t tell from people talking, seed %d', (seed) => {
    const { samples, sampleRateHz, truth } = simulate({ condition: 'talk-alone', durationS: 12 }, seed);
    const check = checkLength(toneSeriesOf(samples, sampleRateHz, truth.nominalHz), 1.5);
    expect(check.verdict).toBe('cannot-tell');
  });
});

describe('judgement of a step', () => {
  const sure = { riseUncertaintyNp: 0.06, phaseUncertaintyRad: 0.1 };
  const odds = (riseDb: number, phaseRad: number): number =>
    judgeStep({ riseNp: (riseDb * Math.LN10) / 20, phaseRad, ...sure }, 1).logOdds;

  it('finds 15 dB resonant, and no change, a fall or a small rise not', () => {
    expect(odds(15, 0.8)).toBeGreaterThan(2);
    for (const [rise, phase] of [
      [0, 0],
      [-4, 0.3],
      [2, -0.3],
    ] as const) {
      expect(odds(rise, phase)).toBeLessThan(-2);
    }
  });

  it('lets the phase speak: of two rises of 6 dB the turned one is likelier a resonance', () => {
    expect(odds(6, 1.3)).toBeGreaterThan(odds(6, 0) + 1);
  });

  it('is the same for a phase and its mirror image, and one turn on', () => {
    expect(odds(9, -1)).toBeCloseTo(odds(9, 1), 9);
    expect(odds(9, 1 + 2 * Math.PI)).toBeCloseTo(odds(9, 1), 9);
  });

  it('says which place is the mouth where a step down must be a step up seen backwards', () => {
    const down = { riseNp: -1.7, phaseRad: -0.8, ...sure };
    expect(judgeStep(down, 0.5)).toMatchObject({ isSecondMouth: false });
    expect(judgeStep(down, 0.5).logOdds).toBeGreaterThan(1);
  });
});

describe('line with a step', () => {
  it('gives back base, slope and step of exact rows, and null where a step can’t be seen', () => {
    const rows = [0, 1, 2, 3, 4, 5].map((t) => ({
      weight: 1,
      t,
      state: t % 2,
      y: 3 - 0.5 * t + 2 * (t % 2),
    }));
    const { base = NaN, slope = NaN, step = NaN } = stepLine(rows) ?? {};
    expect(base).toBeCloseTo(3, 9);
    expect(slope).toBeCloseTo(-0.5, 9);
    expect(step).toBeCloseTo(2, 9);
    expect(stepLine(rows.map((row) => ({ ...row, state: 0 })))).toBeNull();
    expect(stepLine([])).toBeNull();
  });
});
