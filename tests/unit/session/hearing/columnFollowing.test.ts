import { describe, expect, it, vi } from 'vitest';
import { PracticeColumn } from '../../../../src/capture/practice/practiceColumn.ts';
import type { FollowedPlace } from '../../../../src/resonance/following/followedPlace.ts';
import { ResonanceFollower } from '../../../../src/resonance/following/resonanceFollower.ts';
import { followingTools } from '../../../../src/session/hearing/followingTools.ts';
import { defaultToleranceHz } from '../../../../src/session/hearing/forkTolerance.ts';
import { Listening } from '../../../../src/session/hearing/listening.ts';
import { analyse } from '../../../bench/following/score.ts';
import { SAMPLE_RATE_HZ, drawRecording } from '../../../bench/following/recording.ts';

const BLOCK = 4096;

describe('following the column while one listens', () => {
  it('tells what is told of the recording afterwards, once the tools are there', () => {
    const recording = drawRecording({ world: 'line', room: 'quiet', isStruckAgain: true, seed: 3 });
    const { nominalHz, closed, diameterM } = recording.scene;
    const tools = followingTools(() => ({
      frequencyHz: nominalHz,
      ends: closed ? 'closed' : 'open',
      diameterM,
    }));
    let asked = 0;
    const listening = new Listening({
      sampleRateHz: SAMPLE_RATE_HZ,
      fork: { nominalHz, toleranceHz: defaultToleranceHz(nominalHz) },
      ...tools,
      follow: (series) => {
        asked += 1;
        return tools.follow(series);
      },
    });
    const told: FollowedPlace[] = [];
    for (let startFrame = 0; startFrame < recording.samples.length; startFrame += BLOCK) {
      const samples = recording.samples.subarray(startFrame, startFrame + BLOCK);
      told.push(...listening.push({ samples, startFrame, discontinuity: false }).followed);
    }
    const afterwards = analyse(recording).following ?? [];
    expect(asked).toBe(1);
    expect(told.length).toBeGreaterThan(50);
    expect(told).toEqual(afterwards.slice(0, told.length));
    expect(listening.resonances[0].centre?.timeS).toBeLessThan(listening.resonances[0].timeS);
  });

  it('makes no place without the tools, and flags as before', () => {
    const recording = drawRecording({ world: 'line', room: 'quiet', isStruckAgain: false, seed: 3 });
    const { nominalHz } = recording.scene;
    const listening = new Listening({
      sampleRateHz: SAMPLE_RATE_HZ,
      fork: { nominalHz, toleranceHz: defaultToleranceHz(nominalHz) },
      follow: () => null,
    });
    const update = listening.push({ samples: recording.samples, startFrame: 0, discontinuity: false });
    expect(update.followed).toEqual([]);
    expect(update.resonances.length).toBeGreaterThan(0);
    expect(update.resonances[0].centre).toBeNull();
  });
});

describe('a pass after the column was moved in silence', () => {
  it('is followed anew, though it may sound like the one before', () => {
    const flag = vi.spyOn(ResonanceFollower.prototype, 'flag');
    const column = new PracticeColumn({}, 1, SAMPLE_RATE_HZ);
    const listening = new Listening({
      sampleRateHz: SAMPLE_RATE_HZ,
      fork: { nominalHz: 512, toleranceHz: defaultToleranceHz(512) },
      ...followingTools(() => ({ frequencyHz: 512, ends: 'closed', diameterM: 0.035 })),
    });
    let startFrame = 0;
    const hear = (seconds: number): void => {
      for (const endFrame = startFrame + seconds * SAMPLE_RATE_HZ; startFrame < endFrame; startFrame += BLOCK)
        listening.push({ samples: column.render(BLOCK), startFrame, discontinuity: false });
    };
    const passTo = (lengthM: number): void => {
      column.strike();
      hear(1.5);
      column.setSlideSpeed(0.03);
      column.slideTo(lengthM);
      hear(3.5);
    };
    column.slideTo(0.13);
    hear(3);
    passTo(0.17);
    // Back beside the resonance, where it is followed until the fork is damped.
    column.slideTo(column.resonantLengthsM[0]);
    hear(2);
    column.damp();
    // From here on the sound is taken for that of the first resonance, as it may well be.
    const isNear = vi.spyOn(ResonanceFollower.prototype, 'isNear', 'get').mockReturnValue(true);
    column.setSlideSpeed(0.1);
    column.slideTo(0.46);
    hear(8);
    passTo(0.52);
    const sounded = listening.resonances.map(({ soundingIndex }) => soundingIndex);
    expect(new Set(sounded).size, `soundings ${sounded.join()}`).toBe(2);
    expect(flag.mock.results.at(-1)?.value).not.toBeNull();
    flag.mockRestore();
    isNear.mockRestore();
  });
});

describe('a tube that is too wide for the theory of its mouth', () => {
  it('is followed in half widths alone', () => {
    const recording = drawRecording({ world: 'line', room: 'quiet', isStruckAgain: false, seed: 3 });
    const { nominalHz } = recording.scene;
    // ka = 3.75: the formula of the end correction is good up to 1.5 (see `HIGHEST_KA`).
    const tools = followingTools(() => ({ frequencyHz: 4096, ends: 'closed', diameterM: 0.1 }));
    const listening = new Listening({
      sampleRateHz: SAMPLE_RATE_HZ,
      fork: { nominalHz, toleranceHz: defaultToleranceHz(nominalHz) },
      ...tools,
    });
    const { resonances, followed } = listening.push({
      samples: recording.samples,
      startFrame: 0,
      discontinuity: false,
    });
    expect(resonances.length).toBeGreaterThan(0);
    expect(followed.some(({ halfWidths }) => halfWidths !== null)).toBe(true);
    expect(followed.every(({ distanceM }) => distanceM === null)).toBe(true);
  });
});
