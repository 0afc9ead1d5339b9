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
    expect(spokenWayBack({ kind: 'none' }, 'Here. Hold still.')).toBe('');
    expect(spokenWayBack(level(12), '')).toBe('');
  });

  it('names the side by what the hand has to do, and here', () => {
    expect(spokenWayBack(off(1.5), '')).toBe('Too long: push in.');
    expect(spokenWayBack(off(-1.5), '')).toBe('Too short: pull out.');
    expect(spokenWayBack({ kind: 'here', by: 'centre' }, '')).toBe('Here. Hold still.');
  });

  it('stays with what was said where the sound tells nothing new', () => {
    expect(spokenWayBack(off(-1.5, 2), 'Too long: push in.')).toBe('Too long: push in.');
    expect(spokenWayBack({ kind: 'lost' }, 'Too long: push in.')).toBe('Can’t tell. Slide past once more.');
  });

  it('by level: close, there and past it again', () => {
    expect(spokenWayBack(level(4), '')).toBe('Close to the loudest place.');
    expect(spokenWayBack({ kind: 'here', by: 'level' }, 'Close to the loudest place.')).toBe(
      'At the loudest place.',
    );
    expect(spokenWayBack(level(8), 'At the loudest place.')).toBe('Away from the loudest place.');
  });
});
