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
    expect(heard.states[1]).toHaveProperty('message');
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
