import { describe, expect, it } from 'vitest';
import { spokenWayBack } from '../../../src/ui/stage/spokenWayBack.ts';

describe('spokenWayBack', () => {
  it('says nothing before there is a way back, nor while the column goes on after a flag', () => {
    expect(spokenWayBack(null, 'At the maximum.')).toBe('');
    expect(spokenWayBack(12, '')).toBe('');
  });

  it('tells close, there and past it again', () => {
    expect(spokenWayBack(4, '')).toBe('Close to the maximum.');
    expect(spokenWayBack(1.5, 'Close to the maximum.')).toBe('At the maximum.');
    expect(spokenWayBack(8, 'At the maximum.')).toBe('Away from the maximum.');
  });
});
