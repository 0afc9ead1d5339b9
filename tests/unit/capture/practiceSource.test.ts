import { describe, expect, it } from 'vitest';
import { PracticeColumn } from '../../../src/capture/practice/practiceColumn.ts';
import { PracticeSource } from '../../../src/capture/practiceSource.ts';
import { HeardSound } from './heardSound.ts';
import { ManualClock } from './manualClock.ts';

function begun(speed = 1) {
  const clock = new ManualClock();
  const source = new PracticeSource(new PracticeColumn(), { clock, speed });
  const heard = new HeardSound();
  void source.start(heard);
  return { clock, source, heard };
}

describe('PracticeSource', () => {
  it('gives as much sound as time has passed, to within a block', () => {
    const { clock, heard } = begun();
    clock.pass(10_000);
    expect(heard.states).toEqual([{ kind: 'running', sampleRateHz: 48_000, settings: null }]);
    expect(480_000 - heard.frames).toBeGreaterThanOrEqual(0);
    expect(480_000 - heard.frames).toBeLessThan(2048 + 960);
    expect(heard.isSeamless).toBe(true);
  });

  it('makes up for a second of a hidden page but not for an hour of sleep', () => {
    const { clock, heard } = begun();
    clock.sleep(1000);
    clock.pass(20);
    expect(heard.frames).toBeGreaterThan(46_000);
    clock.sleep(3_600_000);
    clock.pass(20);
    expect(heard.frames).toBeLessThan(3 * 48_000);
    expect(heard.isSeamless).toBe(true);
  });

  it('runs faster for a demonstration', () => {
    const { clock, heard } = begun(8);
    clock.pass(1000);
    expect(Math.abs(heard.frames - 8 * 48_000)).toBeLessThan(8 * 1920 + 2048);
  });

  it('renders only when asked to at speed 0', () => {
    const { clock, source, heard } = begun(0);
    clock.pass(5000);
    expect(heard.frames).toBe(0);
    source.advance(1);
    expect(heard.frames).toBe(23 * 2048);
  });

  it('stops at once, twice, and from within a block', () => {
    const { clock, source, heard } = begun();
    heard.onEveryBlock = () => source.stop();
    clock.sleep(500);
    clock.pass(20);
    source.stop();
    expect(heard.blocks.length).toBe(1);
    expect(heard.states.at(-1)).toEqual({ kind: 'idle' });
    expect(heard.states.length).toBe(2);
    expect(clock.waiting).toBe(0);
  });

  it('starts again from 0', async () => {
    const { clock, source, heard } = begun();
    clock.pass(1000);
    source.stop();
    const again = new HeardSound();
    await source.start(again);
    clock.pass(1000);
    expect(again.blocks[0]?.startFrame).toBe(0);
    expect(heard.blocks.length).toBe(again.blocks.length);
  });
});
