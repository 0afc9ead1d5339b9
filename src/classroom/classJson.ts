import { POOLING_METHOD, reasonWords } from '../words/classroom.ts';
import type { ClassResult } from './classResult.ts';

/** Name of the form, as in public/schema/class.schema.json: another form gets another number. */
const CLASS_SCHEMA = 'urn:air-column-bench:class:1';

/**
 * The class as JSON: the pooled result, how it was come by, and every group. Speeds in m/s.
 * @param hideTheory  where a lesson keeps theory's speed back
 */
export function classJson(result: ClassResult, hideTheory: boolean): string {
  const { pooled, air, theoryMps } = result;
  const whole = {
    $schema: CLASS_SCHEMA,
    method: POOLING_METHOD,
    pooled:
      pooled === null
        ? null
        : {
            speedMps: pooled.value,
            standardUncertaintyMps: pooled.standardUncertainty,
            expandedUncertaintyMps: pooled.expandedUncertainty,
            betweenGroupsMps: pooled.betweenGroups,
            groups: pooled.groups,
          },
    temperatureC: air?.temperatureC ?? null,
    theoryMps: hideTheory ? null : theoryMps,
    groups: result.rows.map(({ group, speedMps, state, differenceMps, reason, hold, repeat }) => ({
      name: group.source.name,
      file: group.source.fileName,
      speedMps: group.outcome?.speedMps ?? null,
      standardUncertaintyMps: group.outcome?.standardUncertaintyMps ?? null,
      referredSpeedMps: speedMps,
      differenceMps,
      state,
      repeat: repeat?.why ?? null,
      marks: group.outcome?.markCount ?? 0,
      likelyReason: reasonWords({ group, reason, state, hold }),
    })),
  };
  return `${JSON.stringify(whole, null, 2)}\n`;
}
