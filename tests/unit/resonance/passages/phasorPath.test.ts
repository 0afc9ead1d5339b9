import { describe, expect, it } from 'vitest';
import { PATH_LENGTH, phasorPath } from '../../../../src/resonance/passages/phasorPath.ts';
import { viewOf } from '../../../../src/resonance/toneView.ts';
import { ToneSeries } from '../../../../src/tone/toneSeries.ts';

const RATE_HZ = 100;
const MIDDLE = 1000;
const HALF_WIDTH = 100;
/** Where the path is looked at, half widths from the middle. */
const STATIONS = [-6, -4, -2.5, -1.6, -1, -0.5, 0.5, 1, 1.6, 2.5, 4, 6];

interface Pass {
  /** Of the direct sound and of the column at its loudest. */
  readonly directRe: number;
  readonly columnRe: number;
  readonly columnIm: number;
  /** +1: the column grows, −1: it shrinks. */
  readonly direction: 1 | -1;
  readonly lastIndex?: number;
}

/** A slow, even slide past a resonator of one pole: the direct sound and m e^{iθ} / (1 + ix). */
function pathOf({ directRe, columnRe, columnIm, direction, lastIndex = 2 * MIDDLE - 1 }: Pass) {
  const series = new ToneSeries(RATE_HZ, 50);
  for (let k = 0; k < 2 * MIDDLE; k += 1) {
    const x = (direction * (k - MIDDLE)) / HALF_WIDTH;
    const power = 1 + x * x;
    series.pushValues([directRe + (columnRe + columnIm * x) / power], [(columnIm - columnRe * x) / power], 1);
  }
  return phasorPath(viewOf(series, 0, series.length, 0), {
    middle: MIDDLE,
    peakIndex: MIDDLE,
    halfWidth: HALF_WIDTH,
    direction,
    smoothingHalf: 2,
    lastIndex,
    direct: { re: directRe, im: 0 },
  });
}

describe('the path of the phasor past a resonance', () => {
  // The response of a resonator of one pole, 1/(1 + ix) = (1 − ix)/(1 + x²): a circle (Fletcher & Rossing 1998, §1.6).
  const circle = [...STATIONS.map((x) => 1 / (1 + x * x)), ...STATIONS.map((x) => -x / (1 + x * x))];

  it.each([
    ['a growing column', { directRe: 1, columnRe: 2, columnIm: 0, direction: 1 }],
    ['a shrinking one', { directRe: 1, columnRe: 2, columnIm: 0, direction: -1 }],
    ['a faint one at another phase', { directRe: 1, columnRe: 0.01, columnIm: 0.03, direction: 1 }],
  ] as const)('is the same circle for %s', (_, pass) => {
    const path = pathOf(pass);
    expect(path).toHaveLength(PATH_LENGTH);
    path.forEach((value, i) => {
      expect(value).toBeCloseTo(circle[i], 3);
    });
  });

  it('stays on the line of a tone that only grows louder and fainter again', () => {
    const series = new ToneSeries(RATE_HZ, 50);
    for (let k = 0; k < 2 * MIDDLE; k += 1) {
      const x = (k - MIDDLE) / HALF_WIDTH;
      series.pushValues([1 + 2 / (1 + x * x)], [0], 1);
    }
    const path = phasorPath(viewOf(series, 0, series.length, 0), {
      middle: MIDDLE,
      peakIndex: MIDDLE,
      halfWidth: HALF_WIDTH,
      direction: 1,
      smoothingHalf: 2,
      lastIndex: 2 * MIDDLE - 1,
      direct: { re: 1, im: 0 },
    });
    expect(path.slice(STATIONS.length).every((value) => value === 0)).toBe(true);
    expect(path[5]).toBeCloseTo(0.8, 3);
  });

  it('is untold where it hasn’t been heard yet, and never further away than two diameters', () => {
    const early = pathOf({
      directRe: 1,
      columnRe: 2,
      columnIm: 0,
      direction: 1,
      lastIndex: MIDDLE + 1.2 * HALF_WIDTH,
    });
    const untold = STATIONS.map((halfWidths) => halfWidths > 1.2);
    expect(early.map(Number.isNaN)).toEqual([...untold, ...untold]);
    const series = new ToneSeries(RATE_HZ, 50);
    for (let k = 0; k < 2 * MIDDLE; k += 1) series.pushValues([k < MIDDLE - 50 ? 9 : 1], [0], 1);
    const far = phasorPath(viewOf(series, 0, series.length, 0), {
      middle: MIDDLE,
      peakIndex: MIDDLE,
      halfWidth: HALF_WIDTH,
      direction: 1,
      smoothingHalf: 2,
      lastIndex: 2 * MIDDLE - 1,
      direct: { re: 0.5, im: 0 },
    });
    expect(Math.max(...far)).toBe(2);
  });
});
