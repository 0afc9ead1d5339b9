import { describe, expect, it } from 'vitest';
import { ConflictError, GoneError, storageFault } from '../../../src/notebook/storageFault.ts';
import { storageFaultWords } from '../../../src/words/storageFaults.ts';

describe('storageFault', () => {
  it.each([
    [new DOMException('no room', 'QuotaExceededError'), 'full', /is full/],
    [new DOMException('closing', 'InvalidStateError'), 'gone', /Try again/],
    [
      new DOMException('The user denied permission to access the database.', 'UnknownError'),
      'refused',
      /private/,
    ],
    [new DOMException('not here', 'SecurityError'), 'refused', /private/],
    [new DOMException('newer', 'VersionError'), 'broken', /newer version/],
    [new ConflictError(), 'elsewhere', /Another tab/],
    [new GoneError('the browser'), 'gone', /^The browser has/],
    [new Error('disk on fire'), 'broken', /disk on fire/],
    ['odd', 'broken', /odd/],
  ] as const)('%s is %s', (error, kind, words) => {
    const fault = storageFault(error);
    expect(fault.kind).toBe(kind);
    expect(storageFaultWords(fault)).toMatch(words);
  });
});
