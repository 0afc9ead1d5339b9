import { describe, expect, it } from 'vitest';
import type { Resonance } from '../../../../src/session/hearing/listeningTypes.ts';
import { lengthOfLabel, matchCues } from '../../../../src/session/recording/recordedMarks.ts';

const heardAt = (timeS: number): Resonance => ({
  timeS,
  riseDb: 12,
  centre: null,
  riseStandardUncertaintyDb: 0.5,
  aboveRoomDb: 25,
  confidence: 0.9,
  phaseSwingRad: 2,
  halfPowerStartS: timeS - 0.1,
  halfPowerEndS: timeS + 0.1,
  soundingIndex: null,
  flaggedAtS: null,
  slide: 'longer',
});

const cueAt = (timeS: number) => ({ timeS, label: '', markId: null });

describe('matchCues', () => {
  it('puts each resonance to its nearest moment, each moment once, and keeps what stays alone', () => {
    const pairs = matchCues([heardAt(4), heardAt(4.5), heardAt(9)], [cueAt(4.4), cueAt(12)]);
    expect(pairs.map(({ resonance, cue }) => [resonance?.timeS ?? null, cue?.timeS ?? null])).toEqual([
      [4, null],
      [4.5, 4.4],
      [9, null],
      [null, 12],
    ]);
  });
});

describe('lengthOfLabel', () => {
  it.each([
    ['Mark 2, 512 Hz, closed, 49.20 cm', 0.492],
    ['15,8 cm', 0.158],
    ['first at 15.8cm', 0.158],
    ['Mark 1, 512 Hz, closed, no length yet', null],
    ['0 cm', null],
    ['12.34.5 cm', null],
    ['', null],
  ])('%s', (label, lengthM) => {
    expect(lengthOfLabel(label)).toBe(lengthM);
  });
});
