import { Session } from '../../../src/session/session.ts';
import type { SessionOutside } from '../../../src/session/session.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import { mendedNote } from '../../../src/words/mended.ts';
import { newsWords } from '../../../src/words/notices.ts';
import { resonanceReason } from '../../../src/words/resonances.ts';
import { EXAMPLE_TIME } from '../notebook/exampleExperiment.ts';
import { freeHold } from '../notebook/memoryStore.ts';

/** A session at a fixed time with ids counted up, without storage and without ears. @param outside  what differs */
export function benchInTest(outside: Partial<SessionOutside> = {}): Session {
  let ids = 0;
  return new Session({
    now: () => EXAMPLE_TIME,
    newId: () => `id-${(ids += 1)}`,
    openStore: () => Promise.reject(new Error('no storage here')),
    createHold: () => freeHold,
    tabMemory: { get: () => null, set: () => undefined },
    createListening: () => {
      throw new Error('nothing is heard here');
    },
    reasonOf: resonanceReason,
    writeMended: mendedNote,
    solve: solveExperiment,
    draftPlace: { get: () => null, set: () => undefined },
    onFault: (error) => {
      throw error;
    },
    ...outside,
  });
}

/** What a session's notice says; undefined where there is none. */
export const told = ({ notice }: Session): string | undefined =>
  notice === null ? undefined : newsWords(notice.news);
