import { afterAll, expect, inject } from 'vitest';
import { guardReads, takeFaults } from './readGuard.js';

/** In every worker, before a test's own imports: tests read nothing but what the project brings. */
const browser = inject('chromiumPath') as string | undefined;
guardReads(browser === undefined ? {} : { browser });

// A read whose refusal somebody caught is a fault all the same.
afterAll(() => expect(takeFaults()).toEqual([]));
