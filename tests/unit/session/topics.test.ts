import { describe, expect, it } from 'vitest';
import { Topics } from '../../../src/session/topics.ts';
import { words } from '../../../src/words/inUse.ts';
import { benchInTest, told } from './benchInTest.ts';

describe('watchers of a topic', () => {
  it('are all told, whatever one of them throws; what they threw is reported together', () => {
    const reports: (readonly unknown[])[] = [];
    const topics = new Topics((errors) => reports.push(errors));
    const called: string[] = [];
    topics.watch(['notebook'], () => {
      throw new Error('first');
    });
    topics.watch(['notebook'], () => called.push('second'));
    topics.watch(['notebook'], () => {
      throw new Error('third');
    });
    topics.watch(['notebook'], () => called.push('fourth'));
    topics.announce('notebook');
    expect(called).toEqual(['second', 'fourth']);
    expect(reports.map((errors) => errors.map(String))).toEqual([['Error: first', 'Error: third']]);
  });

  it('that go on throwing are reported once, and again only after they had worked', () => {
    const reports: (readonly unknown[])[] = [];
    const topics = new Topics((errors) => reports.push(errors));
    let breaks = true;
    topics.watch(['live'], () => {
      if (breaks) throw new Error('each time');
    });
    for (let time = 0; time < 20; time += 1) topics.announce('live');
    expect(reports).toHaveLength(1);
    breaks = false;
    topics.announce('live');
    breaks = true;
    topics.announce('live');
    expect(reports).toHaveLength(2);
  });
});

describe('a session of which a watcher throws', () => {
  it('says so in plain words, keeps the change, and hands the error on', () => {
    const faults: unknown[] = [];
    const bench = benchInTest({ onFault: (error) => faults.push(error) });
    bench.watch(['notebook', 'notice'], () => {
      throw new RangeError('stampedHz must be 100..2100, got 4096');
    });
    let shown = 0;
    bench.watch(['notebook'], () => (shown += 1));
    bench.addMarkByHand(0.2);
    expect(bench.experiment.marks).toHaveLength(1);
    expect(shown).toBe(1);
    expect(bench.notice?.kind).toBe('problem');
    expect(told(bench)).toBe(words.pageFault.follow);
    expect(faults.map(String)).toEqual(['RangeError: stampedHz must be 100..2100, got 4096']);
  });

  it('goes on where the solver throws: only what is nothing without a solution fails', () => {
    let solving = 0;
    const bench = benchInTest({
      solve: () => {
        solving += 1;
        throw new RangeError('lengthM must be > 0');
      },
    });
    bench.addMarkByHand(0.2);
    expect(bench.outcomeIfAny).toEqual({ places: [] });
    expect(() => bench.outcome).toThrow('lengthM');
    // Once a change, not once a look.
    expect(solving).toBe(1);
  });
});
