import type { ListeningUpdate, Resonance } from '../../src/session/hearing/listeningTypes.ts';

/** What a push of samples adds in which nothing happens. */
export const NOTHING_HEARD: ListeningUpdate = {
  points: [],
  resonances: [],
  soundings: [],
  warnings: [],
  followed: [],
  guidance: null,
};

/** A resonance that was made up: nobody follows it, and it falls in no sounding. */
export const flagAt = (timeS: number, change: Partial<Resonance> = {}): Resonance => ({
  timeS,
  riseDb: 13,
  centre: null,
  riseStandardUncertaintyDb: 0.5,
  aboveRoomDb: 28,
  confidence: 0.9,
  certainty: 'sure',
  phaseSwingRad: 2.5,
  slide: 'longer',
  halfPowerStartS: timeS - 0.1,
  halfPowerEndS: timeS + 0.1,
  soundingIndex: null,
  flaggedAtS: null,
  ...change,
});
