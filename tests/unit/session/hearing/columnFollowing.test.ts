import { describe, expect, it } from 'vitest';
import type { FollowedPlace } from '../../../../src/resonance/following/followedPlace.ts';
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
