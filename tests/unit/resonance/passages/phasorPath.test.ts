import { describe, expect, it } from 'vitest';
import { PATH_LENGTH, phasorPath } from '../../../../src/resonance/passages/phasorPath.ts';
import { viewOf } from '../../../../src/resonance/toneView.ts';
import { ToneSeries } from '../../../../src/tone/toneSeries.ts';

const RATE_HZ = 100;
const MIDDLE = 1000;
const HALF_WIDTH = 100;
/** Where the path is looked at, half widths from the middle. */
const STATIONS = [-6, -4, -2.5, -1.6, -1, -0.5, 0.5, 1, 1.6, 2.5, 4, 6];

interface Phasor {
  readonly re: number;
  readonly im: number;
}

interface Pass {
  /** The sound at so many half widths from the middle, in the order of time. */
  readonly sound: (halfWidths: number) => Phasor;
  readonly directRe: number;
  /** +1: the column grows, −1: it shrinks. */
  readonly direction?: 1 | -1;
  readonly lastIndex?: number;
}

function pathOf({ sound, directRe, direction = 1, lastIndex = 2 * MIDDLE - 1 }: Pass) {
  const series = new ToneSeries(RATE_HZ, 50);
  for (let k = 0; k < 2 * MIDDLE; k += 1) {
    const { re, im } = sound((k - MIDDLE) / HALF_WIDTH);
    series.pushValues([re], [im], 1);
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

/** A slow, even slide past a resonator of one pole beside a direct sound of 1: 1 + column / (1 + ix). */
const slidePast =
  (column: Phasor, direction: 1 | -1) =>
  (halfWidths: number): Phasor => {
    const x = direction * halfWidths;
    const power = 1 + x * x;
    return { re: 1 + (column.re + column.im * x) / power, im: (column.im - column.re * x) / power };
  };

describe('the path of the phasor past a resonance', () => {
  // A resonator of one pole answers with 1/(1 + ix) = (1 − ix)/(1 + x²), a circle (common practice, no source).
  const circle = [...STATIONS.map((x) => 1 / (1 + x * x)), ...STATIONS.map((x) => -x / (1 + x * x))];

  it.each([
    ['a growing column', { re: 2, im: 0 }, 1],
    ['a shrinking one', { re: 2, im: 0 }, -1],
    ['a faint one at another phase', { re: 0.01, im: 0.03 }, 1],
  ] as const)('is the same circle for %s', (_, column, direction) => {
    const path = pathOf({ sound: slidePast(column, direction), directRe: 1, direction });
    expect(path).toHaveLength(PATH_LENGTH);
    path.forEach((value, i) => {
      expect(value).toBeCloseTo(circle[i], 3);
    });
  });

  it('stays on the line of a tone that only grows louder and fainter again', () => {
    const path = pathOf({ sound: (x) => ({ re: 1 + 2 / (1 + x * x), im: 0 }), directRe: 1 });
    expect(path.slice(STATIONS.length).every((value) => value === 0)).toBe(true);
    expect(path[5]).toBeCloseTo(0.8, 3);
  });

  it('is untold where it hasn’t been heard yet, and never further away than two diameters', () => {
    const lastIndex = MIDDLE + 1.2 * HALF_WIDTH;
    const early = pathOf({ sound: slidePast({ re: 2, im: 0 }, 1), directRe: 1, lastIndex });
    const untold = STATIONS.map((halfWidths) => halfWidths > 1.2);
    expect(early.map(Number.isNaN)).toEqual([...untold, ...untold]);
    const far = pathOf({ sound: (x) => ({ re: x < -0.5 ? 9 : 1, im: 0 }), directRe: 0.5 });
    expect(Math.max(...far)).toBe(2);
  });
});
