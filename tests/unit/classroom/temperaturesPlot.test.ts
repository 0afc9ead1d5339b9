import { describe, expect, it } from 'vitest';
import { ClassDesk } from '../../../src/classroom/classDesk.ts';
import { temperaturesPlot } from '../../../src/classroom/temperaturesPlot.ts';
import { readFile } from '../../../src/intake/readFile.ts';

/** A class that stated results: speed and temperature of each group. */
async function classOf(groups: readonly (readonly [mps: number, celsius: number | null])[]) {
  const desk = new ClassDesk({
    now: () => 0,
    pause: () => Promise.resolve(),
    kept: { get: () => null, set: () => undefined, clear: () => undefined },
  });
  const rows = groups.map(([mps, celsius], at) => `Group ${at + 1},${mps},0.5,${celsius ?? ''}`);
  const text = ['group,speed_mps,standard_uncertainty_mps,temperature_c', ...rows].join('\n');
  await desk.add([await readFile(new File([text], 'class.csv'))]);
  return desk;
}

describe('speeds of a class over temperature', () => {
  // c = 331.3 m/s · √(1 + ϑ/273.15 °C) for dry air. Source: CRC Handbook, speed of sound in dry air, from memory.
  const AIRS = [5, 15, 25] as const;
  const dry = (celsius: number): number => 331.3 * Math.sqrt(1 + celsius / 273.15);

  it('are shown as they were measured, not as they are referred to the class’s air', async () => {
    const { result } = await classOf(AIRS.map((celsius) => [dry(celsius), celsius]));
    const plot = temperaturesPlot(result, false);
    expect(plot?.points.map(({ x }) => x)).toEqual(AIRS);
    AIRS.forEach((celsius, at) => expect(plot?.points[at]?.y).toBeCloseTo(dry(celsius), 6));
    expect(plot?.points.map(({ yBar, label }) => ({ yBar, label }))).toEqual([
      { yBar: 1, label: 'Group 1' },
      { yBar: 1, label: 'Group 2' },
      { yBar: 1, label: 'Group 3' },
    ]);
    // Dry air of 15 °C lies at the band's lower edge, 340.3 m/s there.
    const band = plot?.bands[0]?.points ?? [];
    const at15 = band.reduce((best, one) => (Math.abs(one.x - 15) < Math.abs(best.x - 15) ? one : best));
    expect(at15.low).toBeCloseTo(dry(at15.x), 0);
    expect(at15.high).toBeGreaterThan(at15.low + 0.5);
  });

  it('say nothing of theory where a lesson keeps it back', async () => {
    const { result } = await classOf(AIRS.map((celsius) => [dry(celsius), celsius]));
    expect(temperaturesPlot(result, true)).toMatchObject({ lines: [], bands: [] });
    expect(temperaturesPlot(result, true)?.words).not.toMatch(/predicted/);
    expect(temperaturesPlot(result, false)?.words).toMatch(/predicted/);
  });

  it('name an outlying group alone where thirty names would cover the points', async () => {
    const groups = Array.from({ length: 30 }, (_, at): [number, number] => {
      const celsius = 15 + at / 3;
      return [dry(celsius) + (at === 11 ? 25 : 0), celsius];
    });
    const { points, words } = temperaturesPlot((await classOf(groups)).result, false) ?? {};
    expect(points?.filter(({ shape }) => shape === 'cross').map(({ label }) => label)).toEqual(['Group 12']);
    expect(points?.filter(({ label }) => label !== null)).toHaveLength(1);
    expect(words).toMatch(/^30 groups/);
  });

  it('leave out who was left out, and who noted no temperature', async () => {
    const desk = await classOf([
      ...AIRS.map((celsius): [number, number] => [dry(celsius), celsius]),
      [340, null],
    ]);
    desk.choose(desk.result.rows[1]?.group.id ?? '', false);
    expect(temperaturesPlot(desk.result, false)?.points.map(({ label }) => label)).toEqual([
      'Group 1',
      'Group 3',
    ]);
  });

  it('make no picture in one room, or without a temperature', async () => {
    expect(
      temperaturesPlot(
        (
          await classOf([
            [340, 20],
            [341, 21.5],
            [342, 20.5],
          ])
        ).result,
        false,
      ),
    ).toBeNull();
    expect(
      temperaturesPlot(
        (
          await classOf([
            [340, null],
            [341, null],
          ])
        ).result,
        false,
      ),
    ).toBeNull();
    expect(temperaturesPlot((await classOf([])).result, false)).toBeNull();
  });
});
