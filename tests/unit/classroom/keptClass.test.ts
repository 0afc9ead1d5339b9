import { describe, expect, it } from 'vitest';
import { ClassDesk } from '../../../src/classroom/classDesk.ts';
import { readClassText } from '../../../src/classroom/keptClass.ts';
import { readFile } from '../../../src/intake/readFile.ts';
import { groupHash, groupParts, readGroupHash } from '../../../src/notebook/groupLink.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { takeCode } from '../../../src/ui/class/takeCode.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';

function memory() {
  let text: string | null = null;
  return { get: () => text, set: (next: string) => void (text = next), clear: () => void (text = null) };
}
const deskOn = (kept: ReturnType<typeof memory>): ClassDesk =>
  new ClassDesk({ now: () => 0, pause: () => Promise.resolve(), kept });

const groupOf = (
  group: string,
  lengthsM: readonly number[],
  changedAt = '2030-03-01T10:00:00.000Z',
): Experiment => ({
  ...exampleExperiment(lengthsM.map((lengthM, i) => exampleMark(`${i}`, { lengthM }))),
  id: `experiment of ${group}`,
  group,
  changedAt,
  tube: { diameterM: 0.03, otherDiameterM: null, mouth: null, stopper: 'piston', travelM: 1 },
});
const arrived = async (experiment: Experiment): Promise<Experiment> => {
  const read = await readGroupHash(await groupHash(experiment));
  if (read === null || 'fault' in read) throw new Error('a group was sent');
  return read;
};
const RED = groupOf('Red', [0.158, 0.4925]);

describe('a class on the teacher’s device', () => {
  it('is there again after a reload, with what was left out, until it is emptied', async () => {
    const kept = memory();
    const desk = deskOn(kept);
    await desk.addOne(await arrived(RED));
    const table = 'group,speed_mps,standard_uncertainty_mps,temperature_c\nBlue,344.1,0.8,21';
    await desk.add([await readFile(new File([table], 'b.csv'))]);
    desk.choose(desk.groups[1]?.id ?? '', false);
    const again = deskOn(kept);
    expect(
      again.result.rows.map(({ group, state, speedMps }) => [group.source.name, state, speedMps]),
    ).toEqual(desk.result.rows.map(({ group, state, speedMps }) => [group.source.name, state, speedMps]));
    expect(again.result.rows.map(({ state }) => state)).toEqual(['counted', 'left out']);
    again.clear();
    expect(kept.get()).toBeNull();
    expect(deskOn(kept).groups).toEqual([]);
  });

  it('begins anew where what is kept can’t be read', () => {
    for (const text of ['', '{', '[]', 'null', '{"version":1}', '{"version":2,"groups":[],"parts":[]}'])
      expect(readClassText(text)).toEqual({ groups: [], parts: [] });
    const broken = '{"version":1,"groups":[{"source":{"name":"x"},"isChosen":null}],"parts":[]}';
    expect(readClassText(broken).groups).toEqual([]);
  });
});

describe('a group’s code', () => {
  it('tells a new group, the very same again, a newer state, and an older one', async () => {
    const desk = deskOn(memory());
    const newer = groupOf('Red', [0.158, 0.4925, 0.828], '2030-03-01T10:20:00.000Z');
    expect(await desk.addOne(await arrived(RED))).toEqual({ name: 'Red', as: 'new' });
    expect(await desk.addOne(await arrived(RED))).toEqual({ name: 'Red', as: 'there' });
    expect(desk.groups).toHaveLength(1);
    expect(await desk.addOne(await arrived(newer))).toEqual({ name: 'Red', as: 'newer' });
    expect(await desk.addOne(await arrived(groupOf('Red', [0.158], '2030-03-01T09:00:00.000Z')))).toEqual({
      name: 'Red',
      as: 'older',
    });
    expect(desk.result.rows.map(({ state }) => state)).toEqual(['repeat', 'counted', 'repeat']);
  });

  it('is the same group as its file', async () => {
    const desk = deskOn(memory());
    await desk.add([await readFile(new File([experimentJson(RED)], 'red.json'))]);
    expect(await desk.addOne(await arrived(RED))).toEqual({ name: 'Red', as: 'there' });
  });

  it('in several parts is taken when the last is in, in any order, over a reload', async () => {
    const kept = memory();
    const lengths = Array.from({ length: 150 }, (_, i) => 0.1 + ((i * 61) % 151) / 200 + i * 1.3e-5);
    const page = 'https://school.example/bench/';
    const parts = groupParts(await groupHash(groupOf('Long', lengths)), page.length).map(
      (part) => page + part,
    );
    expect(parts.length).toBeGreaterThan(1);
    const said: string[] = [];
    for (const part of [...parts].reverse()) said.push((await takeCode(part, deskOn(kept))).said);
    expect(said[0]).toContain(`1 of ${parts.length} codes`);
    expect(said.at(-1)).toMatch(/^Added: “Long”/);
    expect(deskOn(kept).groups[0]?.source.marks).toHaveLength(150);
  });

  it('that is foreign or damaged is named, and nothing is taken', async () => {
    const desk = deskOn(memory());
    for (const text of ['https://example.org', 'x', '', '#lesson=1', 'WIFI:#x'])
      expect(await takeCode(text, desk)).toMatchObject({
        kind: 'problem',
        said: expect.stringMatching(/no group’s result/) as string,
      });
    const hash = await groupHash(RED);
    expect(await takeCode(hash.slice(0, -3), desk)).toMatchObject({
      kind: 'problem',
      said: expect.stringMatching(/damaged/) as string,
    });
    expect(await takeCode('#part=x-1', desk)).toMatchObject({
      kind: 'problem',
      said: expect.stringMatching(/damaged/) as string,
    });
    expect(desk.groups).toEqual([]);
  });
});
