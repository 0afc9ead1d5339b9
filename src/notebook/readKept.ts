import { mendRecord } from './mendRecord.ts';
import type { WriteMended } from './mendRecord.ts';
import { migrateExperiment } from './migrateExperiment.ts';
import { readExperiment } from './readExperiment.ts';
import type { ExperimentReading, ReadItems } from './readExperiment.ts';

/** Rounds of mending: columns are looked at once offset and lengths lie within their own limits. */
const MOST_ROUNDS = 3;

/**
 * Reads a record that an earlier bench may have kept under wider limits than today's: what is outside of them is brought
 * into them and said in the note, so that the record still opens. For what comes from files see `readExperimentText`,
 * which asks first.
 * @param write  makes the line for the note
 */
export function readKept(value: unknown, write: WriteMended, readItems?: ReadItems): ExperimentReading {
  const reading = readExperiment(value, readItems);
  if (reading.kind === 'experiment' || reading.outside.length === 0) return reading;
  const migrated = migrateExperiment(value);
  if ('fault' in migrated) return reading;
  let mended = migrated.record;
  let latest: ExperimentReading = reading;
  for (let round = 0; round < MOST_ROUNDS && latest.kind === 'faults'; round += 1) {
    const next = mendRecord(mended, latest.outside, write);
    if (next === mended) return reading;
    mended = next;
    latest = readExperiment(mended, readItems);
  }
  return latest.kind === 'experiment' ? latest : reading;
}
