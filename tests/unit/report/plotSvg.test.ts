// @vitest-environment happy-dom
import { describe, expect, it } from 'vitest';
import { PRINT_PALETTE } from '../../../src/report/plots/plot.ts';
import type { Plot } from '../../../src/report/plots/plot.ts';
import { plotSvg } from '../../../src/report/plots/plotSvg.ts';

const point = { yBar: null, colour: 'tone', shape: 'disc' } as const;
const plot: Plot = {
  title: 'A plot',
  words: 'Two points.',
  xLabel: 'x',
  yLabel: 'y',
  points: [
    { x: 0, y: 0, label: 'left', ...point },
    { x: 10, y: 5, label: 'right', ...point },
  ],
  lines: [],
  bands: [],
  include: { x: [], y: [] },
};

describe('a plot of thousands of points', () => {
  const many = (count: number): Plot => ({
    ...plot,
    // Hundred places, each taken by many points that lie within a hundredth of a pixel.
    points: Array.from({ length: count }, (_, i) => ({
      x: (i % 100) / 10 + i / 1e7,
      y: i % 7,
      label: null,
      ...point,
    })),
  });
  const discs = (count: number): number => plotSvg(many(count), PRINT_PALETTE).split('<circle').length - 1;

  it('draws once what the eye can’t tell apart, and every point of a usual plot', () => {
    expect(discs(500)).toBe(500);
    const drawn = discs(7000);
    expect(drawn).toBeGreaterThanOrEqual(700);
    expect(drawn).toBeLessThan(1500);
  });
});

describe('plotSvg', () => {
  it.each([
    [false, 640],
    [true, 400],
  ])('small: %s keeps everything inside %d px, with the same letters', (isSmall, widthPx) => {
    const svg = new DOMParser().parseFromString(plotSvg(plot, PRINT_PALETTE, isSmall), 'text/html');
    const root = svg.querySelector('svg');
    expect(root?.getAttribute('width')).toBe(String(widthPx));
    expect(root?.getAttribute('font-size')).toBe('14');
    const discs = [...svg.querySelectorAll('circle')].map((circle) => Number(circle.getAttribute('cx')));
    expect(discs).toHaveLength(2);
    for (const cx of discs) expect(cx).toBeGreaterThan(0);
    expect(Math.max(...discs)).toBeLessThan(widthPx);
    // A label at the right edge stands to the left of its point.
    const labels = [...svg.querySelectorAll('text')].filter(
      (text) => text.getAttribute('font-size') === '12',
    );
    expect(labels.map((text) => text.getAttribute('text-anchor'))).toEqual(['start', 'end']);
  });
});

describe('labels of a fitted line’s points', () => {
  // Three marks of one fork, as a fit shows them: half-periods and lengths of the closed column.
  const times = [0.49, 1.46, 2.44];
  const fitted: Plot = {
    ...plot,
    points: times.map((x, i) => ({ x, y: 34.5 * x - 1, label: `n = ${i + 1}, 512 Hz`, ...point })),
    lines: [
      { points: [0, ...times].map((x) => ({ x, y: 34.5 * x - 1 })), dash: null, colour: 'ink' },
      { points: [0, ...times].map((x) => ({ x, y: -10 })), dash: null, colour: 'ink' },
    ],
    include: { x: [0], y: [0] },
  };

  it.each([false, true])('stand on no line and no point, small: %s', (isSmall) => {
    const svg = new DOMParser().parseFromString(plotSvg(fitted, PRINT_PALETTE, isSmall), 'text/html');
    const number = (node: Element, name: string): number => Number(node.getAttribute(name));
    // Letters of 12 px: their tops about 9 px above the base line, 6.6 px wide on the average.
    const boxes = [...svg.querySelectorAll('text[font-size="12"]')].map((text) => {
      const widthPx = 6.6 * text.textContent.length;
      const left = number(text, 'x') - (text.getAttribute('text-anchor') === 'end' ? widthPx : 0);
      return { left, right: left + widthPx, top: number(text, 'y') - 9, bottom: number(text, 'y') + 2 };
    });
    expect(boxes).toHaveLength(3);
    const discs = [...svg.querySelectorAll('circle')].map((disc) => [number(disc, 'cx'), number(disc, 'cy')]);
    const [first] = discs;
    const last = discs.at(-1);
    // The straight line through the points, in steps of less than a pixel.
    const along = Array.from({ length: 2000 }, (_, i) =>
      [0, 1].map((k) => first[k] + (i / 1999) * ((last?.[k] ?? 0) - first[k])),
    );
    const hit = [...discs, ...along].filter(([x, y]) =>
      boxes.some((box) => x > box.left && x < box.right && y > box.top && y < box.bottom),
    );
    expect(hit).toEqual([]);
  });
});
