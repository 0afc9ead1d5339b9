// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { PRINT_PALETTE } from '../../../src/report/plots/plot.ts';
import { circlePicture, circlePlot } from '../../../src/report/plots/circlePlot.ts';

/** m = 1.5, θ = 60°. */
const share = { re: 0.75, im: 1.299038106 };

describe('circlePlot', () => {
  const plot = circlePlot(share, 'Mark 1', 1.5);

  it('runs along the circle about 1 + share/2, on which the resonance lies opposite the direct sound', () => {
    // Thales: 1/(1 + ix) runs on the circle over the diameter from 0 to 1.
    const [path] = plot.lines;
    for (const { x, y } of path.points) expect(Math.hypot(x - 1.375, y - share.im / 2)).toBeCloseTo(0.75, 8);
    expect(plot.points.find(({ shape }) => shape === 'diamond')).toMatchObject({ x: 1.75, y: share.im });
  });

  it('marks the point farthest from zero, and tells every point by shape and label', () => {
    const disc = plot.points.find(({ shape }) => shape === 'disc');
    const sizes = plot.lines[0].points.map(({ x, y }) => Math.hypot(x, y));
    expect(Math.hypot(disc?.x ?? 0, disc?.y ?? 0)).toBeGreaterThanOrEqual(Math.max(...sizes));
    expect(Math.max(...sizes)).toBeGreaterThan(0.999 * Math.hypot(disc?.x ?? 0, disc?.y ?? 0));
    expect(new Set(plot.points.map(({ label }) => label)).size).toBe(6);
    // The loudest place of this example: tan of half of (60° − arg(1.375 + 0.6495i)) = tan 17.36°.
    expect(plot.words).toContain('0.31 half widths too long');
  });

  it.each([false, true])('draws a circle as one, small: %s', (isSmall) => {
    const svg = circlePicture(share, 'Mark 1').svg(PRINT_PALETTE, isSmall);
    const path = /<path d="(M[^"]*)" fill="none" stroke="#a3440a"/.exec(svg)?.[1] ?? '';
    const points = [...path.matchAll(/([\d.]+) ([\d.]+)/g)].map(
      ([, x, y]) => [Number(x), Number(y)] as const,
    );
    expect(points.length).toBeGreaterThan(100);
    const at = (pick: (xy: readonly [number, number]) => number) => points.map(pick);
    const middle = (values: number[]) => (Math.min(...values) + Math.max(...values)) / 2;
    const [cx, cy] = [middle(at(([x]) => x)), middle(at(([, y]) => y))];
    const radii = points.map(([x, y]) => Math.hypot(x - cx, y - cy));
    // Pixels are rounded to tenths, and the path is a circle but for its last tenth.
    expect(Math.max(...radii) - Math.min(...radii)).toBeLessThan(0.03 * Math.max(...radii));
  });

  it('has no loudest place where the column only takes away', () => {
    const silent = circlePlot({ re: -0.5, im: 0 }, 'Mark 1', 1.5);
    expect(silent.points.some(({ shape }) => shape === 'disc')).toBe(false);
    expect(silent.lines).toHaveLength(1);
  });
});
