import { describe, expect, it } from 'vitest';
import { Autosave } from '../../../src/notebook/autosave.ts';
import type { SaveState } from '../../../src/notebook/autosave.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { exampleExperiment } from './exampleExperiment.ts';

const titled = (title: string): Experiment => ({ ...exampleExperiment(), title });

describe('Autosave', () => {
  it('writes one at a time; of a burst only the newest waits, and it lands', async () => {
    const written: string[] = [];
    const releases: (() => void)[] = [];
    const states: SaveState[] = [];
    const autosave = new Autosave<Experiment>(
      (experiment) =>
        new Promise((resolve) => {
          written.push(experiment.title);
          releases.push(resolve);
        }),
      (state) => states.push(state),
    );
    for (const title of ['a', 'b', 'c', 'd']) autosave.save(titled(title));
    expect(written).toEqual(['a']);
    releases[0]?.();
    await Promise.resolve();
    await Promise.resolve();
    expect(written).toEqual(['a', 'd']);
    releases[1]?.();
    await new Promise((resolve) => setTimeout(resolve));
    expect(states).toEqual([{ kind: 'saving' }, { kind: 'saved' }]);
  });

  it('is idle only when the last of what was given is written', async () => {
    const written: string[] = [];
    const autosave = new Autosave<Experiment>(
      async (experiment) => {
        await new Promise((resolve) => setTimeout(resolve));
        written.push(experiment.title);
      },
      () => undefined,
    );
    autosave.save(titled('a'));
    autosave.save(titled('b'));
    await autosave.idle();
    expect(written).toEqual(['a', 'b']);
  });

  it('says why storage refused, and tries again with the next change', async () => {
    const states: SaveState[] = [];
    let isFull = true;
    const autosave = new Autosave<Experiment>(
      () => (isFull ? Promise.reject(new DOMException('no room', 'QuotaExceededError')) : Promise.resolve()),
      (state) => states.push(state),
    );
    autosave.save(titled('a'));
    await new Promise((resolve) => setTimeout(resolve));
    expect(states.at(-1)).toMatchObject({ kind: 'refused', fault: 'full' });
    isFull = false;
    autosave.save(titled('b'));
    await new Promise((resolve) => setTimeout(resolve));
    expect(states.at(-1)).toEqual({ kind: 'saved' });
  });
});
