import fc from 'fast-check';
import { describe, expect, it, vi } from 'vitest';
import { MicrophoneSource } from '../../../src/capture/microphoneSource.ts';
import type { Session } from '../../../src/session/session.ts';
import { CodedListening, PASSAGE_PARTS, passageSample } from '../../support/codedPassages.ts';
import { FakeAudio } from '../capture/fakeAudio.ts';
import { benchInTest } from './benchInTest.ts';

// The real worklet is loaded in the browser tests; here its address is never used.
vi.mock('../../../src/capture/worklet/captureProcessor.ts?worker&url', () => ({ default: '' }));

/** Batches after a fault in which all that it sets off is over: two seconds of sound. */
const SETTLE_BATCHES = 52;

/** What can go wrong with a running capture, each as the browser shows it. */
const FAULTS = {
  muted: (audio: FakeAudio) => audio.track.dispatchEvent(new Event('mute')),
  unmuted: (audio: FakeAudio) => audio.track.dispatchEvent(new Event('unmute')),
  suspended: (audio: FakeAudio) => becomeUnlessClosed(audio, 'suspended'),
  resumed: (audio: FakeAudio) => becomeUnlessClosed(audio, 'running'),
  interrupted: (audio: FakeAudio) => becomeUnlessClosed(audio, 'interrupted'),
  closed: (audio: FakeAudio) => audio.context.become('closed'),
  frozen: (audio: FakeAudio) => audio.clock.pass(3000),
  asleep: (audio: FakeAudio) => audio.clock.jump(60_000),
  'frames lost': (audio: FakeAudio) => audio.lose(4410),
  unplugged: (audio: FakeAudio) => audio.track.dispatchEvent(new Event('ended')),
  vanished: (audio: FakeAudio) => {
    audio.deviceIds = ['device-2'];
    audio.devices.dispatchEvent(new Event('devicechange'));
  },
  'another plugged in': (audio: FakeAudio) => {
    audio.deviceIds = ['device-1', 'device-2'];
    audio.devices.dispatchEvent(new Event('devicechange'));
  },
  'permission taken back': (audio: FakeAudio) => audio.permissionWatchers.forEach((tell) => tell()),
  'worklet error': (audio: FakeAudio) => audio.node.dispatchEvent(new Event('processorerror')),
  'voice mode on': (audio: FakeAudio) => setVoiceMode(audio, true),
  'voice mode off': (audio: FakeAudio) => setVoiceMode(audio, false),
  hidden: (audio: FakeAudio) => (audio.isHidden = true),
  shown: (audio: FakeAudio) => (audio.isHidden = false),
} as const;

type Step =
  | { readonly kind: 'passage' }
  | { readonly kind: 'cut'; readonly fault: keyof typeof FAULTS; readonly afterParts: number }
  | { readonly kind: 'fault'; readonly fault: keyof typeof FAULTS }
  | { readonly kind: 'start' }
  | { readonly kind: 'stop' };

const anyFault = fc.constantFrom(...(Object.keys(FAULTS) as (keyof typeof FAULTS)[]));
const anyStep: fc.Arbitrary<Step> = fc.oneof(
  { weight: 3, arbitrary: fc.constant<Step>({ kind: 'passage' }) },
  { weight: 2, arbitrary: fc.record({ kind: fc.constant('fault' as const), fault: anyFault }) },
  {
    weight: 2,
    arbitrary: fc.record({
      kind: fc.constant('cut' as const),
      fault: anyFault,
      afterParts: fc.integer({ min: 1, max: PASSAGE_PARTS - 1 }),
    }),
  },
  { weight: 2, arbitrary: fc.constant<Step>({ kind: 'start' }) },
  { weight: 1, arbitrary: fc.constant<Step>({ kind: 'stop' }) },
);

/** A bench with a fake microphone, and what it should have marked. */
class Bench {
  readonly audio = new FakeAudio();
  readonly session: Session;
  readonly expected: number[] = [];
  private passages = 0;

  constructor() {
    this.session = benchInTest({ createListening: () => new CodedListening() });
  }

  get marked(): (number | undefined)[] {
    return this.session.experiment.marks.map((mark) => mark.evidence?.riseDb);
  }

  /** One button rebuilds capture, whatever it was that broke it. */
  async start(): Promise<void> {
    this.audio.deviceIds = ['device-1'];
    await this.session.hearing.start(new MicrophoneSource({ system: this.audio.system }));
    this.quiet();
  }

  async do(step: Step): Promise<void> {
    switch (step.kind) {
      case 'start':
        return this.start();
      case 'stop':
        return this.session.hearing.stop();
      case 'fault':
        return this.fault(step.fault);
      case 'passage':
        this.passages += 1;
        // Recovered means: the page says that it listens.
        if (this.isGood) this.expected.push(this.passages);
        this.parts(0, PASSAGE_PARTS);
        return;
      case 'cut':
        this.passages += 1;
        this.parts(0, step.afterParts);
        await this.fault(step.fault);
        this.parts(step.afterParts, PASSAGE_PARTS);
    }
  }

  private get isGood(): boolean {
    return this.session.hearing.capture.kind === 'running';
  }

  private async fault(fault: keyof typeof FAULTS): Promise<void> {
    FAULTS[fault](this.audio);
    // Looking for a vanished device takes the browser a moment.
    for (let i = 0; i < 4; i += 1) await Promise.resolve();
    this.quiet();
  }

  private quiet(): void {
    this.audio.levels = [1e-7];
    this.audio.sound(SETTLE_BATCHES);
  }

  private parts(from: number, to: number): void {
    for (let part = from; part < to; part += 1) {
      this.audio.levels = [passageSample(this.passages, part)];
      this.audio.sound(1);
    }
    this.audio.levels = [1e-7];
    this.audio.sound(1);
  }
}

describe('a session under faults', () => {
  it('ends in a named state with exactly the marks before each fault and after each recovery', async () => {
    await fc.assert(
      fc.asyncProperty(fc.array(anyStep, { minLength: 1, maxLength: 9 }), async (steps) => {
        const bench = new Bench();
        await bench.start();
        for (const step of steps) {
          const before = bench.marked;
          await bench.do(step);
          // Nothing that was marked is ever lost or changed.
          expect(bench.marked.slice(0, before.length)).toEqual(before);
        }
        expect(bench.marked).toEqual(bench.expected);
        expect(['running', 'interrupted', 'failed', 'idle']).toContain(bench.session.hearing.capture.kind);
        // Whatever happened, one press brings it back.
        bench.audio.isHidden = false;
        await bench.start();
        await bench.do({ kind: 'passage' });
        expect(bench.session.hearing.capture.kind).toBe('running');
        expect(bench.marked).toEqual(bench.expected);
        bench.session.hearing.stop();
        expect(bench.audio.isReleased).toBe(true);
      }),
      { numRuns: 600, seed: 7 },
    );
  }, 120_000);

  it.each(Object.keys(FAULTS) as (keyof typeof FAULTS)[])(
    'marks the passage before and the one after the way back, not the one that is cut: %s',
    async (fault) => {
      const bench = new Bench();
      await bench.start();
      await bench.do({ kind: 'passage' });
      await bench.do({ kind: 'cut', fault, afterParts: 2 });
      bench.audio.isHidden = false;
      if (bench.session.hearing.capture.kind !== 'running')
        expect(bench.session.notice?.kind).toBe('problem');
      await bench.start();
      await bench.do({ kind: 'passage' });
      // A fault that stops nothing leaves two seconds of quiet between the parts: the passage is no passage then.
      expect(bench.marked).toEqual([1, 3]);
    },
  );
});

function becomeUnlessClosed(audio: FakeAudio, state: AudioContextState): void {
  if (audio.context.state !== 'closed') audio.context.become(state);
}

function setVoiceMode(audio: FakeAudio, isOn: boolean): void {
  audio.track.settings = { ...audio.track.settings, noiseSuppression: isOn };
  audio.track.dispatchEvent(new Event('configurationchange'));
}
