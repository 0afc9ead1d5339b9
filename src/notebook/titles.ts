import type { Experiment } from './experiment.ts';
import { migrateExperiment } from './migrateExperiment.ts';

/** The experiment under the title that somebody typed: it is known by that alone. */
export function entitle(experiment: Experiment, title: string): Experiment {
  return { ...experiment, title, origin: { ...experiment.origin, copy: 0 } };
}

/**
 * The least number that no new experiment without a title has: a list of equal names tells nothing apart.
 * @param records  as they are stored, of any version and unchecked
 */
export function freeNumber(records: readonly unknown[]): number {
  const taken = new Set(records.map(numberOf));
  let number = 1;
  while (taken.has(number)) number += 1;
  return number;
}

/** Null for one that has a title, or came about in another way. */
function numberOf(record: unknown): unknown {
  const migrated = migrateExperiment(record);
  if ('fault' in migrated || migrated.record['title'] !== '') return null;
  const { kind, number, copy } = (migrated.record['origin'] ?? {}) as Partial<Experiment['origin']>;
  return kind === 'experiment' && copy === 0 ? number : null;
}
