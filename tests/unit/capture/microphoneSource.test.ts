import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { MicrophoneSource } from '../../../src/capture/microphoneSource.ts';
import { FakeAudio } from './fakeAudio.ts';
import { HeardSound } from './heardSound.ts';

// The real worklet is loaded in the browser tests; here its address is never used.
vi.mock('../../../src/capture/worklet/captureProcessor.ts?worker&url', () => ({ default: '' }));

async function begun() {
  const audio = new FakeAudio();
  const source = new MicrophoneSource({ system: audio.system });
  const heard = new HeardSound();
  await source.start(heard);
  return { audio, source, heard };
}

describe('MicrophoneSource', () => {
  it('runs, delivers and releases everything on stop', async () => {
    const { audio, source, heard } = await begun();
    audio.sound(10);
    expect(heard.frames).toBe(10 * 2048);
    expect(heard.isSeamless).toBe(true);
    source.stop();
    source.stop();
    expect(heard.kinds).toEqual(['starting', 'running', 'idle']);
    expect(audio.isReleased).toBe(true);
  });

  it('lets go of a microphone that is granted after stop', async () => {
    const audio = new FakeAudio();
    let grant = (): void => undefined;
    audio.answer = () => new Promise((resolve) => (grant = resolve));
    const source = new MicrophoneSource({ system: audio.system });
    const heard = new HeardSound();
    const started = source.start(heard);
    source.stop();
    grant();
    await started;
    expect(heard.kinds).toEqual(['starting', 'idle']);
    expect(audio.tracks.length).toBe(1);
    expect(audio.isReleased).toBe(true);
  });

  it('hints once at a question that stays unanswered', async () => {
    const audio = new FakeAudio();
    let grant = (): void => undefined;
    audio.answer = () => new Promise((resolve) => (grant = resolve));
    const heard = new HeardSound();
    const started = new MicrophoneSource({ system: audio.system }).start(heard);
    audio.clock.pass(30_000);
    expect(heard.states.length).toBe(2);
    expect(heard.states[1]).toHaveProperty('waitsFor');
    grant();
    await started;
    expect(heard.kinds).toEqual(['starting', 'starting', 'running']);
  });

  it.each([
    ['refused', 'refused-by-user', (audio: FakeAudio) => (audio.answer = rejecting('NotAllowedError'))],
    ['absent', 'no-microphone', (audio: FakeAudio) => (audio.answer = rejecting('NotFoundError'))],
    ['busy', 'microphone-busy', (audio: FakeAudio) => (audio.answer = rejecting('NotReadableError'))],
    [
      'without its worklet',
      'capture-broken',
      (audio: FakeAudio) => (audio.nodeAnswer = rejecting('UnknownError')),
    ],
    ['on plain http', 'insecure-context', (audio: FakeAudio) => (audio.isSecure = false)],
  ])('%s: fails as %s and holds nothing', async (_, code, breakIt) => {
    const audio = new FakeAudio();
    breakIt(audio);
    const heard = new HeardSound();
    await new MicrophoneSource({ system: audio.system }).start(heard);
    expect(heard.states).toMatchObject([{ kind: 'starting' }, { kind: 'failed', failure: { code } }]);
    expect(audio.isReleased).toBe(true);
  });

  it.each([
    ['unplugged', 'microphone-lost', (audio: FakeAudio) => audio.track.dispatchEvent(new Event('ended'))],
    [
      'unplugged without an event of its own',
      'microphone-lost',
      (audio: FakeAudio) => {
        audio.track.readyState = 'ended';
        audio.devices.dispatchEvent(new Event('devicechange'));
      },
    ],
    [
      'worklet error',
      'capture-broken',
      (audio: FakeAudio) => audio.node.dispatchEvent(new Event('processorerror')),
    ],
    ['context closed', 'capture-broken', (audio: FakeAudio) => audio.context.become('closed')],
    [
      'permission taken back',
      'permission-withdrawn',
      (audio: FakeAudio) => audio.permissionWatchers.forEach((tell) => tell()),
    ],
  ])('%s: fails as %s, holds nothing, and one start rebuilds all', async (_, code, breakIt) => {
    const { audio, source, heard } = await begun();
    audio.sound(5);
    breakIt(audio);
    audio.sound(5);
    expect(heard.blocks.length).toBe(5);
    expect(heard.states.at(-1)).toMatchObject({ kind: 'failed', failure: { code } });
    expect(audio.isReleased).toBe(true);

    const again = new HeardSound();
    await source.start(again);
    audio.sound(5);
    expect(again.kinds).toEqual(['starting', 'running']);
    expect(again.blocks.map((block) => block.startFrame)).toEqual([0, 2048, 4096, 6144, 8192]);
  });

  it('fails when the device has gone from the list, though its track runs on', async () => {
    const { audio, heard } = await begun();
    audio.sound(5);
    audio.deviceIds = ['device-2'];
    audio.devices.dispatchEvent(new Event('devicechange'));
    await vi.waitFor(() => expect(heard.kinds.at(-1)).toBe('failed'));
    expect(heard.states.at(-1)).toMatchObject({ failure: { code: 'microphone-lost' } });
    expect(audio.isReleased).toBe(true);
  });

  it('fails when no microphone is left at all, also where the track never told its device', async () => {
    for (const settings of [{ deviceId: 'device-1' }, {}]) {
      const { audio, heard } = await begun();
      audio.track.settings = settings;
      audio.deviceIds = [];
      audio.devices.dispatchEvent(new Event('devicechange'));
      await vi.waitFor(() => expect(heard.kinds.at(-1)).toBe('failed'));
      expect(heard.states.at(-1)).toMatchObject({ failure: { code: 'microphone-lost' } });
      expect(audio.isReleased).toBe(true);
    }
  });

  it('goes on when the list can’t be had', async () => {
    const { audio, heard } = await begun();
    audio.devices.enumerateDevices = () => Promise.reject(new Error('no list'));
    audio.devices.dispatchEvent(new Event('devicechange'));
    await Promise.resolve();
    audio.sound(5);
    expect(heard.kinds).toEqual(['starting', 'running']);
  });

  it('says within three seconds that no sound at all comes, and takes it back with the first sound', async () => {
    const { audio, heard } = await begun();
    audio.levels = [0];
    // Batches of 2048 frames at 48 kHz: 58 are 2.47 s, 70 are 2.99 s.
    audio.sound(58);
    expect(heard.kinds).toEqual(['starting', 'running']);
    audio.sound(12);
    expect(heard.states.slice(2)).toMatchObject([{ kind: 'running', isSilent: true }]);
    audio.levels = [1e-4];
    audio.sound(1);
    expect(heard.kinds).toEqual(['starting', 'running', 'running', 'running']);
    expect(heard.states.at(-1)).not.toHaveProperty('isSilent');
    // Nothing of it is lost or void: zeros are sound, too.
    expect(heard.frames).toBe(71 * 2048);
    expect(heard.isSeamless).toBe(true);
  });

  it('goes on when a device is added, or when the list tells nothing', async () => {
    for (const ids of [['device-1', 'device-2'], ['']]) {
      const { audio, heard } = await begun();
      audio.deviceIds = ids;
      audio.devices.dispatchEvent(new Event('devicechange'));
      await Promise.resolve();
      audio.sound(5);
      expect(heard.kinds).toEqual(['starting', 'running']);
    }
  });

  it.each(['with its event', 'without one'])(
    'says so when the system switches a voice mode on, %s',
    async (how) => {
      const { audio, heard } = await begun();
      audio.sound(5);
      audio.track.settings = { deviceId: 'device-1', noiseSuppression: true };
      if (how === 'with its event') audio.track.dispatchEvent(new Event('configurationchange'));
      audio.sound(20);
      expect(heard.states.slice(-1)).toMatchObject([
        { kind: 'running', settings: { noiseSuppression: 'on' } },
      ]);
      expect(heard.kinds).toEqual(['starting', 'running', 'running']);
    },
  );

  it('puts back time that was slept through without a word', async () => {
    const { audio, heard } = await begun();
    audio.sound(50);
    // Asleep: neither sound nor timers, but the clock went on.
    audio.clock.jump(90_000);
    audio.sound(100);
    expect(heard.kinds).toEqual(['starting', 'running']);
    const gaps = heard.blocks.filter((block) => block.discontinuity);
    expect(gaps).toHaveLength(1);
    const last = heard.blocks.at(-1);
    const endS = ((last?.startFrame ?? 0) + (last?.samples.length ?? 0)) / 48_000;
    expect(Math.abs(endS - audio.clock.now() / 1000)).toBeLessThan(0.1);
  });

  it.each([
    ['44 100 where 48 000 were announced', 44_100 / 48_000],
    ['48 000 where 44 100 were announced', 48_000 / 44_100],
  ])('ends where the device runs at %s', async (_, speed) => {
    const { audio, heard } = await begun();
    audio.sound(1200, speed);
    expect(heard.states.at(-1)).toMatchObject({ kind: 'failed', failure: { code: 'uneven-sound' } });
    expect(audio.isReleased).toBe(true);
  });

  it('is patient with a clock that is off by what sound cards are off', async () => {
    const { audio, heard } = await begun();
    // 100 parts in a million, for five minutes.
    audio.sound(7000, 1.0001);
    expect(heard.kinds).toEqual(['starting', 'running']);
    expect(heard.blocks.some((block) => block.discontinuity)).toBe(false);
  });

  it('takes the live channel of two, and leaves one that falls silent, with a remark', async () => {
    const audio = new FakeAudio();
    audio.levels = [0.1, 0.1];
    const heard = new HeardSound();
    await new MicrophoneSource({ system: audio.system }).start(heard);
    audio.sound(20);
    audio.levels = [0, 0.2];
    audio.sound(60);
    expect(heard.blocks.at(-1)?.samples[0]).toBeCloseTo(0.2, 6);
    expect(heard.blocks.filter((block) => block.discontinuity)).toHaveLength(1);
    expect(heard.states.at(-1)).toMatchObject({
      kind: 'running',
      channel: { channel: 1, faults: [{ channel: 0, fault: 'fell-silent' }] },
    });
  });

  it('leaves out what comes in while muted and marks the gap', async () => {
    const { audio, heard } = await begun();
    audio.sound(5);
    audio.track.dispatchEvent(new Event('mute'));
    audio.sound(7);
    audio.track.dispatchEvent(new Event('unmute'));
    audio.sound(2);
    expect(heard.kinds).toEqual(['starting', 'running', 'interrupted', 'running']);
    expect(heard.blocks.slice(4).map((block) => [block.startFrame / 2048, block.discontinuity])).toEqual([
      [4, false],
      [12, true],
      [13, false],
    ]);
  });

  it('keeps time through a suspension and asks to go on', async () => {
    const { audio, heard } = await begun();
    audio.sound(5);
    audio.context.become('suspended');
    audio.clock.pass(3000);
    expect(audio.context.resumes).toBeGreaterThan(0);
    audio.context.become('running');
    audio.sound(1);
    expect(heard.blocks.at(-1)).toMatchObject({ startFrame: 5 * 2048 + 3 * 48_000, discontinuity: true });
    expect(heard.isSeamless).toBe(true);
  });

  it('says so when the browser waits for a press of a button, and runs once it comes', async () => {
    const audio = new FakeAudio();
    audio.startsSuspended = true;
    const heard = new HeardSound();
    const started = new MicrophoneSource({ system: audio.system }).start(heard);
    await vi.waitFor(() => expect(audio.nodes.length).toBe(1));
    await Promise.resolve();
    audio.clock.pass(1000);
    await started;
    expect(heard.kinds).toEqual(['starting', 'interrupted']);
    audio.context.become('running');
    audio.sound(1);
    expect(heard.kinds).toEqual(['starting', 'interrupted', 'running']);
    expect(heard.blocks.length).toBe(1);
  });

  it('notices a clock that stands still, and its return', async () => {
    const { audio, heard } = await begun();
    audio.sound(5);
    audio.clock.pass(2600);
    expect(heard.states.at(-1)).toMatchObject({ kind: 'interrupted' });
    audio.sound(2);
    expect(heard.kinds).toEqual(['starting', 'running', 'interrupted', 'running']);
    expect(heard.blocks.at(5)?.discontinuity).toBe(true);
  });

  it('does not mistake a hidden page for a standing clock', async () => {
    const { audio, heard } = await begun();
    audio.isHidden = true;
    audio.clock.pass(10_000);
    expect(heard.kinds).toEqual(['starting', 'running']);
  });

  it('marks lost frames', async () => {
    const { audio, heard } = await begun();
    audio.sound(3);
    audio.lose(441);
    audio.sound(1);
    expect(heard.blocks.at(-1)).toMatchObject({ startFrame: 3 * 2048 + 441, discontinuity: true });
  });

  it('ends in a named state with sound in order and nothing held, whatever breaks when', async () => {
    const steps = fc.array(
      fc.constantFrom(
        'sound',
        'mute',
        'unmute',
        'suspend',
        'go on',
        'freeze',
        'unplug',
        'crash',
        'hide',
        'show',
        'lose',
        'start',
      ),
      { maxLength: 25 },
    );
    await fc.assert(
      fc.asyncProperty(steps, async (list) => {
        const { audio, source, heard } = await begun();
        const acts: Record<string, () => unknown> = {
          sound: () => audio.sound(3),
          mute: () => audio.track.dispatchEvent(new Event('mute')),
          unmute: () => audio.track.dispatchEvent(new Event('unmute')),
          suspend: () => audio.context.state !== 'closed' && audio.context.become('suspended'),
          'go on': () => audio.context.state !== 'closed' && audio.context.become('running'),
          freeze: () => audio.clock.pass(3000),
          unplug: () => audio.track.dispatchEvent(new Event('ended')),
          crash: () => audio.node.dispatchEvent(new Event('processorerror')),
          hide: () => (audio.isHidden = true),
          show: () => (audio.isHidden = false),
          lose: () => audio.lose(1000),
          start: async () => {
            expect(heard.isSeamless).toBe(true);
            heard.blocks.length = 0;
            await source.start(heard);
          },
        };
        for (const step of list) {
          const before = heard.blocks.length;
          const state = heard.kinds.at(-1);
          await acts[step]?.();
          // Sound comes while the state says so, and only then.
          if (step === 'sound' && state === 'running') expect(heard.blocks.length).toBe(before + 3);
          if (state === 'failed' && step !== 'start') expect(heard.blocks.length).toBe(before);
        }
        expect(heard.isSeamless).toBe(true);
        expect(['running', 'interrupted', 'failed']).toContain(heard.kinds.at(-1));
        source.stop();
        expect(heard.kinds.at(-1)).toBe('idle');
        expect(audio.isReleased).toBe(true);
      }),
      { numRuns: 500, seed: 21 },
    );
  }, 30_000);
});

function rejecting(name: string): () => Promise<void> {
  return () => Promise.reject(new DOMException('none', name));
}
