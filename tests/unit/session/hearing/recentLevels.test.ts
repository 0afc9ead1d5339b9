import { describe, expect, it } from 'vitest';
import type {
  LevelPoint,
  ListeningUpdate,
  Sounding,
} from '../../../../src/session/hearing/listeningTypes.ts';
import { RecentLevels } from '../../../../src/session/hearing/recentLevels.ts';

const point = (timeS: number, riseDb: number | null): LevelPoint => ({
  timeS,
  toneDb: riseDb === null ? null : riseDb - 60,
  roomDb: -60,
  broadbandDb: -30,
  riseDb,
});
const sounding = (startS: number, endS: number | null): Sounding => ({
  index: 1,
  startS,
  endS,
  decayTimeS: null,
  frequencyHz: null,
  frequencyStandardUncertaintyHz: null,
});

function heard(trace: RecentLevels, points: LevelPoint[], soundings: Sounding[] = []): void {
  const update: ListeningUpdate = {
    points,
    resonances: [],
    soundings,
    warnings: [],
    followed: [],
    guidance: null,
  };
  trace.add(update);
}

describe('what was heard lately', () => {
  it('keeps the newest rise for two seconds of talk over it, and no longer', () => {
    const trace = new RecentLevels();
    expect(trace.heldRiseDb).toBeNull();
    heard(trace, [point(1, 22), point(2.9, null)]);
    expect(trace.heldRiseDb).toBe(22);
    heard(trace, [point(3.1, null)]);
    expect(trace.heldRiseDb).toBeNull();
    heard(trace, [point(3.2, 18)]);
    expect(trace.heldRiseDb).toBe(18);
  });

  it('takes a fork that was hidden for a moment as one that sounds', () => {
    const trace = new RecentLevels();
    heard(trace, [point(1, 22)]);
    expect(trace.soundsOrDid).toBe(false);
    heard(trace, [point(2, 22)], [sounding(1, null)]);
    expect(trace.soundsOrDid).toBe(true);
    heard(trace, [point(4.9, null)], [sounding(1, 3)]);
    expect(trace.soundsOrDid).toBe(true);
    heard(trace, [point(5.1, null)]);
    expect(trace.soundsOrDid).toBe(false);
  });
});
