import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readExperiment } from '../../../src/notebook/readExperiment.ts';
import { SCHEMA_VERSION } from '../../../src/notebook/experiment.ts';
import { experimentJson } from '../../../src/report/experimentJson.ts';
import { anyExperiment } from '../../support/anyExperiment.ts';
import { recordFaultWords } from '../../../src/words/recordFaults.ts';

const schema = JSON.parse(
  readFileSync(resolve(import.meta.dirname, '../../../public/schema/experiment.schema.json'), 'utf8'),
) as { properties: { schemaVersion: { const: number } } };
const isValid = new Ajv2020({ allErrors: true, strict: true, allowUnionTypes: true }).compile(schema);

type Json = null | boolean | number | string | Json[] | { [name: string]: Json };

/** Every place in a JSON value, as the way to it. */
function ways(value: Json): (string | number)[][] {
  if (typeof value !== 'object' || value === null) return [];
  const inner: [string | number, Json][] = Array.isArray(value)
    ? value.map((item, index) => [index, item])
    : Object.entries(value);
  return inner.flatMap(([key, item]) => [[key], ...ways(item).map((way) => [key, ...way])]);
}

function spoilt(value: Json, way: readonly (string | number)[], put: Json | undefined): Json {
  const copy = structuredClone(value);
  let at = copy as Record<string | number, Json>;
  for (const key of way.slice(0, -1)) at = at[key] as Record<string | number, Json>;
  const last = way.at(-1) ?? '';
  if (put !== undefined) at[last] = put;
  else if (Array.isArray(at)) at.splice(Number(last), 1);
  else delete at[last];
  return copy;
}

const anyJson = fc.oneof(
  fc.constantFrom<Json>(null, true, '', 'x'.repeat(600), -1, 0, 1, 1.5, 50, 1e9, [], {}, 'open'),
  fc.jsonValue().map((value) => value as Json),
);

describe('the published schema', () => {
  it('is that of today’s version', () => {
    expect(schema.properties.schemaVersion.const).toBe(SCHEMA_VERSION);
  });

  it('holds for every experiment, which comes back from its JSON just as it was', () => {
    fc.assert(
      fc.property(anyExperiment, (experiment) => {
        const parsed: unknown = JSON.parse(experimentJson(experiment));
        expect(isValid(parsed) ? [] : isValid.errors).toEqual([]);
        expect(readExperiment(parsed)).toEqual({ kind: 'experiment', experiment });
      }),
      { numRuns: 300 },
    );
  });

  it('refuses what the bench refuses, and the other way round', () => {
    let refused = 0;
    fc.assert(
      fc.property(
        anyExperiment,
        fc.nat(),
        fc.option(anyJson, { nil: undefined }),
        (experiment, pick, put) => {
          const whole = JSON.parse(experimentJson(experiment)) as Json;
          // The bench also reads earlier versions, the schema is of one.
          const places = ways(whole).filter(([first]) => first !== 'schemaVersion');
          const bad = spoilt(whole, places[pick % places.length] ?? [], put);
          const reading = readExperiment(bad);
          if (reading.kind === 'experiment') expect(isValid(bad) ? [] : isValid.errors).toEqual([]);
          else if (isValid(bad)) {
            // What a schema can't say: ids, two lists of one length, and a rule whose zero leaves no column of a length.
            const beyond = /there is no (fork|place)|have the same id|as many values|leaves a column/;
            expect(reading.faults.map(recordFaultWords).filter((fault) => !beyond.test(fault))).toEqual([]);
          } else refused += 1;
        },
      ),
      { numRuns: 1500 },
    );
    expect(refused).toBeGreaterThan(300);
  });
});
