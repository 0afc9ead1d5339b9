import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { groupsOfIntake } from '../../../src/classroom/groupsOfIntake.ts';
import { solveGroup } from '../../../src/classroom/solveGroup.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import {
  groupHash,
  groupParts,
  joinedParts,
  readGroupHash,
  readGroupPart,
  shortId,
} from '../../../src/notebook/groupLink.ts';
import type { GroupPart } from '../../../src/notebook/groupLink.ts';
import { anyExperiment } from '../../support/anyExperiment.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from './exampleExperiment.ts';

const centre = { timeS: 3, standardUncertaintyHalfWidths: 0.15, shareRe: 1, shareIm: 0.4 };
const measured: Experiment = {
  ...exampleExperiment([
    exampleMark('a', {
      lengthM: 0.158,
      note: 'secret',
      locatedBy: 'centre',
      evidence: { ...EXAMPLE_EVIDENCE, centre },
    }),
    exampleMark('b', { lengthM: 0.4925, evidence: EXAMPLE_EVIDENCE }),
    exampleMark('c', { lengthM: 0.8271, otherLengthM: 0.8283, order: 3 }),
    exampleMark('out', { lengthM: 0.3, excluded: true }),
    exampleMark('waits'),
  ]),
  id: 'f3b0c442-98fc-1c14-9afb-4c8996fb9242',
  title: 'secret',
  note: 'secret',
  group: 'Fensterseite',
  className: '9b',
  tube: { diameterM: 0.035, otherDiameterM: null, mouth: 'flange', stopper: 'filled', travelM: 1 },
  rule: { readingStandardUncertaintyM: 0.0007, zeroOffsetM: 0.002 },
};

const arrives = async (hash: string): Promise<Experiment> => {
  const read = await readGroupHash(hash);
  if (read === null || 'fault' in read) throw new Error(JSON.stringify(read));
  return read;
};
const solved = (experiment: Experiment) => {
  const intake = {
    name: 'x.json',
    content: { kind: 'experiment', experiment } as const,
    faults: [],
    remarks: [],
  };
  return groupsOfIntake(intake).map((source) => solveGroup('x', source));
};

describe('a group’s result as a link', () => {
  it('gives a class the very same speed and uncertainty as the group’s file', async () => {
    const [byFile] = solved(measured);
    const [byLink] = solved(await arrives(await groupHash(measured)));
    expect(byFile?.outcome?.speedMps).toBeGreaterThan(300);
    expect(byLink?.outcome).toMatchObject({
      speedMps: byFile?.outcome?.speedMps,
      standardUncertaintyMps: byFile?.outcome?.standardUncertaintyMps,
      markCount: 3,
    });
    expect(byLink?.source).toMatchObject({ name: 'Fensterseite', isNamed: true });
    expect(byLink?.source.experimentId).toBe(byFile?.source.experimentId);
  });

  it('does so for any experiment, and is refused for none that it was made from', async () => {
    await fc.assert(
      fc.asyncProperty(anyExperiment, async (experiment) => {
        const [byFile] = solved(experiment);
        const [byLink] = solved(await arrives(await groupHash(experiment)));
        const speed = byFile?.outcome?.speedMps ?? null;
        if (speed === null) expect(byLink?.outcome ?? null).toBeNull();
        else expect(byLink?.outcome?.speedMps).toBeCloseTo(speed, 3);
      }),
      { numRuns: 40 },
    );
  });

  it('says nothing of notes, titles, places or devices, nor of marks that don’t count', async () => {
    const arrived = await arrives(await groupHash(measured));
    expect(JSON.stringify(arrived)).not.toMatch(/secret|"Lab"|f3b0c442/);
    expect(arrived.marks).toHaveLength(3);
  });

  it('is one code for a group’s usual marks', async () => {
    const hash = await groupHash(measured);
    expect(hash).toMatch(/^#group=[\w-]+$/);
    // 69 modules a side hold 300 characters at this correction (ISO/IEC 18004, table 7: version 13, M: 331 bytes).
    expect(hash.length).toBeLessThan(300);
    expect(groupParts(hash, 40)).toEqual([hash]);
  });

  it('is several where it is long, read in any order; one missing is waited for', async () => {
    const many = Array.from({ length: 120 }, (_, i) =>
      exampleMark(`m${i}`, {
        lengthM: 0.1 + (0.8 * ((i * 61) % 127)) / 127 + i * 1e-5,
        evidence: EXAMPLE_EVIDENCE,
      }),
    );
    const hash = await groupHash({ ...measured, marks: many });
    const parts = groupParts(hash, 40);
    expect(parts.length).toBeGreaterThan(1);
    for (const part of parts) expect(40 + part.length).toBeLessThanOrEqual(700);
    const read = [...parts].reverse().map(readGroupPart);
    expect(read).not.toContain(null);
    expect(joinedParts(read as GroupPart[])).toBe(hash);
    expect(joinedParts(read.slice(1) as GroupPart[])).toBeNull();
    expect((await arrives(hash)).marks).toHaveLength(120);
  });

  it('names what is damaged, foreign, newer or out of range', async () => {
    const hash = await groupHash(measured);
    expect(await readGroupHash('#class')).toBeNull();
    expect(await readGroupHash(hash.slice(0, -4))).toEqual({ fault: { code: 'damaged' } });
    expect(await readGroupHash(hash.replace('=2', '=7'))).toEqual({ fault: { code: 'newer' } });
    const long = { ...measured, tube: { ...measured.tube, diameterM: 5 } };
    expect(await readGroupHash(await groupHash(long))).toMatchObject({ fault: { code: 'record' } });
    for (const text of ['#part=', '#part=a-0-2-x', '#part=a-3-2-x', '#part=a-b'])
      expect(readGroupPart(text)).toBeNull();
  });

  it('is the same experiment as its file', () => {
    expect(shortId(shortId(measured.id))).toBe(shortId(measured.id));
    expect(shortId(measured.id)).not.toBe(shortId('other'));
  });
});
