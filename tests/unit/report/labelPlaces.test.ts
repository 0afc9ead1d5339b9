import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { labelPlaces } from '../../../src/report/plots/labelPlaces.ts';

describe('labelPlaces', () => {
  it('sets labels of points that lie on one another above and below, then at the other side', () => {
    const point = { xPx: 200, yPx: 100, label: 'Tube, Bench' };
    expect(labelPlaces([point, point, point], 76, 620)).toEqual([
      { xPx: 209, yPx: 93, anchor: 'start' },
      { xPx: 209, yPx: 116, anchor: 'start' },
      { xPx: 191, yPx: 93, anchor: 'end' },
    ]);
  });

  it('keeps off the line that goes through the point, below it where the line rises', () => {
    const point = { xPx: 200, yPx: 200, label: 'n = 2' };
    const rising = { from: [100, 300], to: [300, 100] } as const;
    const falling = { from: [300, 300], to: [100, 100] } as const;
    expect(labelPlaces([point], 76, 620, [rising])).toEqual([{ xPx: 209, yPx: 216, anchor: 'start' }]);
    expect(labelPlaces([point], 76, 620, [falling])).toEqual([{ xPx: 209, yPx: 193, anchor: 'start' }]);
    // Where every place is crossed it stands on a line rather than on another label.
    expect(labelPlaces([point], 76, 620, [rising, falling])).toEqual([
      { xPx: 209, yPx: 193, anchor: 'start' },
    ]);
  });

  it('keeps a label that fits at one side inside, and gives every point one', () => {
    const points = fc.array(
      fc.record({
        xPx: fc.double({ min: 80, max: 616, noNaN: true }),
        yPx: fc.double({ min: 44, max: 342, noNaN: true }),
        label: fc.string({ minLength: 1, maxLength: 20 }),
      }),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(points, (list) => {
        const places = labelPlaces(list, 76, 620);
        expect(places).toHaveLength(list.length);
        places.forEach(({ xPx, anchor }, index) => {
          // The longest is 132 px wide: one side or the other has room for it.
          const widthPx = 6.6 * (list[index]?.label.length ?? 0);
          expect(anchor === 'start' ? xPx + widthPx : xPx).toBeLessThanOrEqual(620.001);
          expect(anchor === 'start' ? xPx : xPx - widthPx).toBeGreaterThanOrEqual(75.999);
        });
      }),
    );
  });
});
