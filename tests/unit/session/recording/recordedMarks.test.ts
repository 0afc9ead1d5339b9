import { describe, expect, it } from 'vitest';
import { centreCueLabel, cueLabel } from '../../../../src/words/cueLabel.ts';
import { EXAMPLE_EVIDENCE, exampleExperiment, exampleMark } from '../../notebook/exampleExperiment.ts';
import type { Resonance } from '../../../../src/session/hearing/listeningTypes.ts';
import {
  lengthOfLabel,
  locatedByOfLabel,
  matchCues,
} from '../../../../src/session/recording/recordedMarks.ts';

const heardAt = (timeS: number): Resonance => ({
  timeS,
  riseDb: 12,
  centre: null,
  riseStandardUncertaintyDb: 0.5,
  aboveRoomDb: 25,
  confidence: 0.9,
  certainty: 'sure',
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

describe('a centre that a recording marks', () => {
  const label = 'Centre of mark 2, half widths 0.12, share 2.1 -1.4';
  const centre = { timeS: 8.9, standardUncertaintyHalfWidths: 0.12, shareRe: 2.1, shareIm: -1.4 };
  const markCue = (timeS: number, number: number) => ({
    timeS,
    label: `Mark ${number}, 512 Hz, closed, 49.20 cm`,
    markId: null,
  });

  it('goes to the moment of its mark and makes no mark', () => {
    const cues = [markCue(4, 1), { timeS: 8.9, label, markId: null }, markCue(9, 2)];
    const pairs = matchCues([heardAt(9)], cues);
    expect(pairs.map((pair) => [pair.cue?.timeS ?? null, pair.centre])).toEqual([
      [4, null],
      [9, centre],
    ]);
  });

  it('comes back as it was written', () => {
    const evidence = { ...EXAMPLE_EVIDENCE, centre };
    const mark = exampleMark('a', { lengthM: 0.158, locatedBy: 'centre', evidence });
    const experiment = exampleExperiment([exampleMark('first'), mark]);
    expect(centreCueLabel(experiment, mark)).toBe(label);
    expect(locatedByOfLabel(cueLabel(experiment, mark))).toBe('centre');
    expect(lengthOfLabel(cueLabel(experiment, mark))).toBe(0.158);
    expect(locatedByOfLabel('Mark 2, 512 Hz, closed, 49.20 cm')).toBeNull();
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
