import { describe, expect, it } from 'vitest';
import { Autosave } from '../../../src/notebook/autosave.ts';
import type { SaveOutcome, SaveState } from '../../../src/notebook/autosave.ts';
import { storageFault } from '../../../src/notebook/storageFault.ts';

interface Note {
  readonly id: string;
  readonly text: string;
}

const WRITTEN: SaveOutcome = { kind: 'written' };
const FULL: SaveOutcome = {
  kind: 'refused',
  fault: storageFault(new DOMException('no room', 'QuotaExceededError')),
};
const note = (text: string, id = 'a'): Note => ({ id, text });
const turn = (): Promise<void> => new Promise((resolve) => setTimeout(resolve));

describe('Autosave', () => {
  it('writes one at a time; of a burst only the newest waits, and it lands', async () => {
    const written: string[] = [];
    const releases: ((outcome: SaveOutcome) => void)[] = [];
    const states: SaveState['kind'][] = [];
    const autosave = new Autosave<Note>(
      ({ text }) =>
        new Promise((resolve) => {
          written.push(text);
          releases.push(resolve);
        }),
      ({ id }) => id,
      ({ kind }) => states.push(kind),
    );
    for (const text of ['1', '2', '3', '4']) autosave.save(note(text));
    expect(written).toEqual(['1']);
    releases[0]?.(WRITTEN);
    await turn();
    expect(written).toEqual(['1', '4']);
    // Not before the newest is in.
    expect(new Set(states)).toEqual(new Set(['saving']));
    releases[1]?.(WRITTEN);
    await turn();
    expect(states.at(-1)).toBe('saved');
  });

  it('writes the last state of each thing where a burst spans two', async () => {
    const written: string[] = [];
    const saved: string[] = [];
    const autosave = new Autosave<Note>(
      async ({ id, text }) => {
        await turn();
        written.push(`${id}${text}`);
        return WRITTEN;
      },
      ({ id }) => id,
      ({ kind }, { id, text }) => {
        if (kind === 'saved') saved.push(`${id}${text}`);
      },
    );
    autosave.save(note('1', 'a'));
    autosave.save(note('2', 'a'));
    autosave.save(note('1', 'b'));
    autosave.save(note('2', 'b'));
    await autosave.idle();
    expect(written).toEqual(['a1', 'a2', 'b2']);
    expect(saved).toEqual(['a2', 'b2']);
  });

  it('is idle only when the last of what was given is written', async () => {
    const written: string[] = [];
    const autosave = new Autosave<Note>(
      async ({ text }) => {
        await turn();
        written.push(text);
        return WRITTEN;
      },
      ({ id }) => id,
      () => undefined,
    );
    autosave.save(note('1'));
    autosave.save(note('2'));
    await autosave.idle();
    expect(written).toEqual(['1', '2']);
  });

  it('says why storage refused, and tries again with the next change', async () => {
    const states: SaveState[] = [];
    let outcome: SaveOutcome = FULL;
    const autosave = new Autosave<Note>(
      () => Promise.resolve(outcome),
      ({ id }) => id,
      (state) => states.push(state),
    );
    autosave.save(note('1'));
    await turn();
    expect(states.at(-1)).toMatchObject({ kind: 'refused', fault: 'full' });
    outcome = WRITTEN;
    autosave.save(note('2'));
    await turn();
    expect(states.at(-1)).toEqual({ kind: 'saved' });
  });

  it('never calls saved what failed on the way to the store, hands the fault on, and goes on', async () => {
    const faults: unknown[] = [];
    const take = (error: unknown): unknown => faults.push(error);
    process.on('unhandledRejection', take);
    let throws = true;
    const states: SaveState['kind'][] = [];
    const autosave = new Autosave<Note>(
      () => {
        if (throws) throw new Error('not the storage');
        return Promise.resolve(WRITTEN);
      },
      ({ id }) => id,
      ({ kind }) => states.push(kind),
    );
    autosave.save(note('1'));
    await autosave.idle();
    await turn();
    process.off('unhandledRejection', take);
    expect(states).toEqual(['saving', 'refused']);
    expect(faults.map(String)).toEqual(['Error: not the storage']);
    throws = false;
    autosave.save(note('2'));
    await autosave.idle();
    expect(states.at(-1)).toBe('saved');
  });
});
