import { describe, expect, it } from 'vitest';
import { spokenWayBack } from '../../../src/ui/stage/spokenWayBack.ts';
import type { WayBack } from '../../../src/session/hearing/wayBack.ts';

const place = { timeS: 1, standardUncertainty: 0.2, distanceM: 0.002, standardUncertaintyM: 0.0003 };
const off = (halfWidths: number, ageS = 0): WayBack => ({
  kind: 'off',
  place: { ...place, halfWidths },
  ageS,
});
const level = (belowBestDb: number): WayBack => ({ kind: 'level', belowBestDb });

describe('spokenWayBack', () => {
  it('says nothing before there is a way back, nor while the column goes on after a flag', () => {
    expect(spokenWayBack({ kind: 'none' }, 'Here. Hold still.', 'piston')).toBe('');
    expect(spokenWayBack(level(12), '', 'piston')).toBe('');
  });

  it('names the side by what the hand has to do, and here', () => {
    expect(spokenWayBack(off(1.5), '', 'piston')).toBe('Too long by 2.0 mm: push in.');
    expect(spokenWayBack(off(-1.5), '', 'piston')).toBe('Too short by 2.0 mm: pull out.');
    expect(spokenWayBack({ kind: 'here', by: 'centre' }, '', 'piston')).toBe('Here. Hold still.');
  });

  it('speaks of the tube where it dips into water, and of the water where that moves', () => {
    expect(spokenWayBack(off(1.5), '', 'dipped')).toBe('Too long by 2.0 mm: lower the tube.');
    expect(spokenWayBack(off(-1.5), '', 'dipped')).toBe('Too short by 2.0 mm: raise the tube.');
    expect(spokenWayBack(off(1.5), '', 'filled')).toBe('Too long by 2.0 mm: raise the water.');
    expect(spokenWayBack(off(-1.5), '', 'filled')).toBe('Too short by 2.0 mm: lower the water.');
  });

  it('rounds the distance the more the farther it is, and leaves it out where it isn’t known', () => {
    const by = (distanceM: number | null): string =>
      spokenWayBack({ kind: 'off', place: { ...place, halfWidths: 1, distanceM }, ageS: 0 }, '', 'piston');
    expect([0.0001, 0.0013, 0.0047, 0.0134].map(by)).toEqual([
      'Too long by 0.5 mm: push in.',
      'Too long by 1.5 mm: push in.',
      'Too long by 5 mm: push in.',
      'Too long by 15 mm: push in.',
    ]);
    expect(by(null)).toBe('Too long: push in.');
  });

  it('takes back an old “here”: the hand may have gone on', () => {
    expect(spokenWayBack(off(0.1, 2), 'Here. Hold still.', 'piston')).toBe('');
    expect(spokenWayBack(off(0.1, 2), 'At the loudest place.', 'piston')).toBe('');
  });

  it('stays with what was said where the sound tells nothing new', () => {
    expect(spokenWayBack(off(-1.5, 2), 'Too long: push in.', 'piston')).toBe('Too long: push in.');
    expect(spokenWayBack({ kind: 'lost' }, 'Too long: push in.', 'piston')).toBe(
      'Can’t tell where it is. Slide past it once more.',
    );
  });

  it('by level: close, there and past it again', () => {
    expect(spokenWayBack(level(4), '', 'piston')).toBe('Close to the loudest place.');
    expect(spokenWayBack({ kind: 'here', by: 'level' }, 'Close to the loudest place.', 'piston')).toBe(
      'At the loudest place.',
    );
    expect(spokenWayBack(level(8), 'At the loudest place.', 'piston')).toBe('Away from the loudest place.');
  });
});
