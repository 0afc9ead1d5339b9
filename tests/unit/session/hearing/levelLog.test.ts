import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { LevelLog } from '../../../../src/session/hearing/levelLog.ts';

const point = (index: number) => ({
  timeS: index / 20,
  toneDb: index % 7 === 0 ? null : -index,
  roomDb: -60 - index,
  broadbandDb: -30,
  riseDb: null,
});

describe('LevelLog', () => {
  it('gives exactly the points between two times, both included', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 3000 }), fc.nat(3000), fc.nat(3000), (count, from, to) => {
        const log = new LevelLog();
        for (let start = 0; start < count; start += 100) {
          log.add(Array.from({ length: Math.min(100, count - start) }, (_, i) => point(start + i)));
        }
        const stretch = log.stretch(from / 20, to / 20);
        const expected = Array.from({ length: count }, (_, i) => i).filter((i) => i >= from && i <= to);
        if (expected.length < 2) {
          expect(stretch).toBeNull();
          return;
        }
        expect(stretch?.startS).toBe(from / 20);
        expect(stretch?.stepS).toBeCloseTo(0.05, 12);
        expect(stretch?.toneDb).toEqual(expected.map((i) => point(i).toneDb));
        expect(stretch?.roomDb).toEqual(expected.map((i) => point(i).roomDb));
      }),
      { numRuns: 60 },
    );
  });

  it('begins a new trace when time begins anew, as after a change of fork', () => {
    const log = new LevelLog();
    log.add([point(50), point(51), point(0), point(1)]);
    expect(log.stretch(0, 100)?.roomDb).toEqual([-60, -61]);
  });
});
