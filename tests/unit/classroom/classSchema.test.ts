import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { GroupSource } from '../../../src/classroom/classGroup.ts';
import { classJson } from '../../../src/classroom/classJson.ts';
import { classResult } from '../../../src/classroom/classResult.ts';
import { groupsOfIntake } from '../../../src/classroom/groupsOfIntake.ts';
import { solveGroup } from '../../../src/classroom/solveGroup.ts';
import { anyExperiment } from '../../support/anyExperiment.ts';

const schema = JSON.parse(
  readFileSync(resolve(import.meta.dirname, '../../../public/schema/class.schema.json'), 'utf8'),
) as { $id: string };
const isValid = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);

const measured = anyExperiment.map((experiment) =>
  groupsOfIntake({ name: 'x.json', content: { kind: 'experiment', experiment }, faults: [], remarks: [] }),
);
const stated = fc
  .record({
    group: fc.constantFrom('', 'A', 'B', '<b>'),
    speedMps: fc.double({ min: 300, max: 400, noNaN: true }),
    standardUncertaintyMps: fc.double({ min: 1e-3, max: 20, noNaN: true }),
    temperatureC: fc.option(fc.integer({ min: -10, max: 40 }), { nil: null }),
  })
  .map((result) =>
    groupsOfIntake({
      name: 'x.csv',
      content: { kind: 'results', results: [result] },
      faults: [],
      remarks: [],
    }),
  );
const anyClass = fc
  .array(
    fc.tuple(
      fc.oneof(measured, stated, stated),
      fc.option(fc.boolean(), { nil: null, freq: 5 }),
      fc.boolean(),
    ),
    { maxLength: 8 },
  )
  .map((list) =>
    list
      .flatMap(([sources, isChosen, isTwice]) =>
        [...sources, ...(isTwice ? sources : [])].map((source): [GroupSource, boolean | null] => [
          source,
          isChosen,
        ]),
      )
      .map(([source, isChosen], i) => ({ ...solveGroup(`g${i}`, source), isChosen })),
  );

describe('the published schema of a class', () => {
  it('holds for every class, whatever its groups brought', () => {
    const states = new Set<string>();
    fc.assert(
      fc.property(anyClass, (groups) => {
        const parsed = JSON.parse(classJson(classResult(groups), false)) as { groups: { state: string }[] };
        expect(isValid(parsed) ? [] : isValid.errors).toEqual([]);
        for (const { state } of parsed.groups) states.add(state);
      }),
      { numRuns: 150 },
    );
    expect([...states].sort()).toEqual(['counted', 'held', 'left out', 'no result', 'outlying', 'repeat']);
  }, 60_000);

  it('is named in the file, and refuses another form', () => {
    const parsed = JSON.parse(classJson(classResult([]), false)) as Record<string, unknown>;
    expect(parsed['$schema']).toBe(schema.$id);
    const { theoryMps, ...without } = parsed;
    expect(theoryMps).toBeNull();
    for (const bad of [
      without,
      { ...parsed, $schema: 'another' },
      { ...parsed, more: 1 },
      { ...parsed, groups: [{}] },
    ]) {
      expect(isValid(bad)).toBe(false);
    }
  });
});
