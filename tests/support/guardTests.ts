import { afterAll, expect, inject } from 'vitest';
import type { EnginesFound } from '../engines/findEngines.ts';
import { guardReads, takeFaults } from './readGuard.js';

/** In every worker, before a test's own imports: tests read nothing but what the project brings. */
const engines = inject('engines') as EnginesFound | undefined;
const programs = Object.values(engines ?? {}).flatMap((engine: object | null) =>
  Object.values(engine ?? {}).map(String),
);
guardReads({ programs });

// A read whose refusal somebody caught is a fault all the same.
afterAll(() => expect(takeFaults()).toEqual([]));
