import { describe, expect, it } from 'vitest';
import type { FollowedPlace } from '../../../../src/resonance/following/followedPlace.ts';
import type { ListeningUpdate } from '../../../../src/session/hearing/listeningTypes.ts';
import { WayBackTrack } from '../../../../src/session/hearing/wayBack.ts';

const told = (timeS: number, halfWidths: number, standardUncertainty = 0.1): FollowedPlace => ({
  timeS,
  halfWidths,
  standardUncertainty,
  distanceM: halfWidths * 0.0014,
  standardUncertaintyM: standardUncertainty * 0.0014,
});
const untold = (timeS: number): FollowedPlace => ({
  timeS,
  halfWidths: null,
  standardUncertainty: null,
  distanceM: null,
  standardUncertaintyM: null,
});

function update(place: FollowedPlace | null, timeS: number, guidance: ListeningUpdate['guidance'] = null) {
  const point = { timeS, toneDb: -30, roomDb: -60, broadbandDb: -20, riseDb: 30 };
  const followed = place === null ? [] : [place];
  return { points: [point], resonances: [], soundings: [], warnings: [], followed, guidance };
}

function heard(...places: FollowedPlace[]): WayBackTrack {
  const track = new WayBackTrack();
  for (const place of places) track.add(update(place, place.timeS), true);
  return track;
}

describe('the way back', () => {
  it('is here within 0.2 half widths, and stays here while the hand trembles by 0.35', () => {
    expect(heard(told(1, 0.21)).now.kind).toBe('off');
    expect(heard(told(1, 0.19)).now).toEqual({ kind: 'here', by: 'centre' });
    expect(heard(told(1, 0.1), told(1.1, -0.3)).now.kind).toBe('here');
    expect(heard(told(1, 0.1), told(1.1, -0.4)).now.kind).toBe('off');
  });

  it('isn’t here where the level is far below that of the loudest place', () => {
    const track = heard(told(1, 0.1));
    track.add(update(null, 1.1, { belowBestDb: -6.1, bestTimeS: 0.5, isMetFromBothSides: false }), true);
    expect(track.now.kind).toBe('off');
    track.add(update(null, 1.2, { belowBestDb: -5.9, bestTimeS: 0.5, isMetFromBothSides: false }), true);
    expect(track.now.kind).toBe('here');
  });

  it('is here only as long as the sound says so', () => {
    const track = heard(told(1, 0.1));
    track.add(update(null, 1.2), false);
    expect(track.now.kind).toBe('here');
    track.add(update(null, 3), false);
    expect(track.now).toMatchObject({ kind: 'off', ageS: 2 });
  });

  it('isn’t here where it may as well be elsewhere', () => {
    expect(heard(told(1, 0.1, 0.4)).now.kind).toBe('off');
  });

  it('holds the last place, tells its age, and gives up after four seconds', () => {
    const track = heard(told(1, 1.7), untold(1.1), untold(3));
    expect(track.now).toMatchObject({ kind: 'off', ageS: 2, place: { halfWidths: 1.7 } });
    track.add(update(untold(5.1), 5.1), true);
    expect(track.now).toEqual({ kind: 'lost' });
    track.add(update(null, 5.15, { belowBestDb: -3, bestTimeS: 1, isMetFromBothSides: false }), true);
    expect(track.now).toEqual({ kind: 'level', belowBestDb: 3 });
    track.add(update(told(5.2, -0.8), 5.2), true);
    expect(track.now).toMatchObject({ kind: 'off', ageS: 0, place: { halfWidths: -0.8 } });
  });

  it('keeps what was known while the fork is silent, and for a while after it is struck again', () => {
    const track = heard(told(1, 1.7));
    track.add(update(null, 1.2), false);
    track.add(update(null, 30), false);
    expect(track.now).toMatchObject({ kind: 'off', ageS: 29, place: { halfWidths: 1.7 } });
    track.add(update(untold(31), 31), true);
    expect(track.now).toMatchObject({ kind: 'off', place: { halfWidths: 1.7 } });
    track.add(update(untold(36), 36), true);
    expect(track.now).toEqual({ kind: 'lost' });
  });

  it('goes by level where nothing else is known: here only if the maximum was met from both sides', () => {
    const track = new WayBackTrack();
    expect(track.now).toEqual({ kind: 'none' });
    track.add(update(null, 1, { belowBestDb: -0.4, bestTimeS: 0.8, isMetFromBothSides: false }), true);
    expect(track.now).toEqual({ kind: 'level', belowBestDb: 0.4 });
    track.add(update(null, 2, { belowBestDb: -0.4, bestTimeS: 0.8, isMetFromBothSides: true }), true);
    expect(track.now).toEqual({ kind: 'here', by: 'level' });
    track.add(update(null, 3, { belowBestDb: -3, bestTimeS: 0.8, isMetFromBothSides: true }), true);
    expect(track.now).toEqual({ kind: 'level', belowBestDb: 3 });
  });
});
