// @vitest-environment happy-dom
import { afterEach, describe, expect, it } from 'vitest';
import type { CaptureSettings, SoundListener, SoundSource } from '../../../src/capture/soundSource.ts';
import { MarkIndex } from '../../../src/marks/markIndex.ts';
import { addMark } from '../../../src/notebook/markList.ts';
import type { ListeningUpdate, Resonance } from '../../../src/session/hearing/listeningTypes.ts';
import type { Session } from '../../../src/session/session.ts';
import { stageWords } from '../../../src/words/page/stageLine.ts';
import { exampleMark } from '../notebook/exampleExperiment.ts';
import { benchInTest } from '../session/benchInTest.ts';
import '../../../src/ui/capture/trustElement.ts';
import '../../../src/ui/measure/markRowElement.ts';
import { NOTHING_HEARD, flagAt } from '../../support/nothingHeard.ts';

const PROCESSED: CaptureSettings = {
  deviceLabel: 'Built-in',
  channelCount: 1,
  echoCancellation: 'off',
  noiseSuppression: 'on',
  autoGainControl: 'off',
};
const gated = (timeS: number): Resonance => flagAt(timeS, { riseDb: 9, isGated: true });

/** A bench whose microphone brings these updates, one a block. */
async function heard(updates: ListeningUpdate[]): Promise<Session> {
  const count = updates.length;
  const bench = benchInTest({
    createListening: () => ({
      push: () => updates.shift() ?? NOTHING_HEARD,
      finish: () => NOTHING_HEARD,
      offlineReport: () => {
        throw new Error('a microphone has no report');
      },
    }),
  });
  const source: SoundSource = {
    kind: 'microphone',
    stop: () => undefined,
    start: (listener: SoundListener) => {
      listener.onState({ kind: 'running', sampleRateHz: 48_000, settings: PROCESSED });
      for (let block = 0; block < count; block += 1) {
        listener.onBlock({
          samples: new Float32Array(2048),
          startFrame: 2048 * block,
          discontinuity: false,
        });
      }
      return Promise.resolve();
    },
  };
  await bench.hearing.start(source);
  return bench;
}

async function shown(tag: 'bench-trust' | 'bench-mark-row', properties: object) {
  const element = document.createElement(tag);
  Object.assign(element, properties);
  document.body.append(element);
  await element.updateComplete;
  const root = element.renderRoot as ShadowRoot;
  const text = (): string => (root.textContent ?? '').replace(/\s+/g, ' ');
  const press = async (name: string): Promise<void> => {
    const button = [...root.querySelectorAll('button')].find(
      (one) => (one.getAttribute('aria-label') ?? one.textContent ?? '').trim() === name,
    );
    if (button === undefined) throw new Error(`no button ${name}`);
    button.click();
    await element.updateComplete;
  };
  return { root, text, press };
}

const row = (session: Session, id: string) => {
  const { experiment, outcomeIfAny: outcome } = session;
  const mark = experiment.marks.find((one) => one.id === id);
  return shown('bench-mark-row', { session, mark, outcome, index: new MarkIndex(experiment.marks) });
};

afterEach(() => document.body.replaceChildren());

describe('the page where the sound is in doubt', () => {
  it('says what is suspected and lets in what was withheld, one by one or all', async () => {
    const session = await heard(
      [4, 8, 40].map((timeS) => ({ ...NOTHING_HEARD, resonances: [gated(timeS)] })),
    );
    const { text, press } = await shown('bench-trust', { session });
    expect(text()).toContain('The level is in doubt.');
    expect(text()).toContain('Resonances are marked all the same');
    expect(text()).toContain('Heard but not marked: 3.');
    await press('Mark the resonance at 8.0 s, rise 9 dB');
    expect(session.experiment.marks.map((mark) => mark.evidence?.timeS)).toEqual([8]);
    expect(text()).toContain('Heard but not marked: 2.');
    await press('Mark all of them');
    expect(session.experiment.marks).toHaveLength(3);
    expect(text()).not.toContain('not marked');
    session.hearing.stop();
  });

  it('keeps what may be a resonance, when a person says so', async () => {
    const session = await heard([
      { ...NOTHING_HEARD, resonances: [flagAt(4, { certainty: 'maybe', confidence: 0.62 })] },
    ]);
    const { text, press } = await shown('bench-trust', { session });
    expect(text()).toContain('Perhaps a resonance.');
    expect(text()).toContain('at 4.0 s, 62 % sure: +13 dB above the fork alone');
    expect(session.experiment.marks).toEqual([]);
    await press('Keep the resonance at 4.0 s');
    expect(session.experiment.marks.map((mark) => mark.evidence?.timeS)).toEqual([4]);
    expect(text()).not.toContain('Perhaps a resonance.');
    session.hearing.stop();
  });

  it('shows its doubt with a mark', async () => {
    const session = await heard([{ ...NOTHING_HEARD, resonances: [gated(4)] }]);
    session.hearing.letIn(session.hearing.withheld);
    const { text } = await row(session, session.experiment.marks[0]?.id ?? '');
    expect(text()).toContain('In doubt: the browser’s processing was on');
    expect(text()).toContain('the sound broke off in it, so it may be no resonance');
    session.hearing.stop();
  });

  it('says for five seconds that a resonance went by too fast', async () => {
    const at = (timeS: number) => ({
      timeS,
      toneDb: -30,
      roomDb: -60,
      broadbandDb: -30,
      riseDb: 30,
    });
    const warned: ListeningUpdate = {
      ...NOTHING_HEARD,
      points: [at(10)],
      warnings: [{ code: 'slide-too-fast', halfPowerS: 0.06, timeS: 9 }],
    };
    const session = await heard([warned]);
    expect(stageWords(session, false)).toBe(
      'Too fast: a resonance went by. Slide more slowly: a hand’s width in four seconds.',
    );
    const later = await heard([warned, { ...NOTHING_HEARD, points: [at(14.1)] }]);
    expect(stageWords(later, false)).not.toContain('Too fast');
  });
});

describe('a microphone that delivers nothing but zeros', () => {
  it('is told where the next thing to do stands', () => {
    const { experiment, hearing } = benchInTest();
    const capture = { kind: 'running', sampleRateHz: 48_000, settings: null, isSilent: true } as const;
    const words = stageWords({ experiment, hearing: Object.assign(hearing, { capture }) }, false);
    expect(words).toMatch(/^No sound at all arrives/);
  });
});

describe('a mark that waits', () => {
  const bench = (): Session => {
    const session = benchInTest();
    const { present } = session.experiment;
    for (const id of ['a', 'b', 'c']) {
      session.change('add mark', (experiment) => addMark(experiment, exampleMark(id, present)));
    }
    return session;
  };

  it('can be joined with the one before it by a button, and parted again', async () => {
    const session = bench();
    await (await row(session, 'c')).press('Mark 3 is the same resonance as mark 2');
    expect(session.experiment.marks.map((mark) => mark.repeatOf ?? null)).toEqual([null, null, 'b']);
    await (await row(session, 'b')).press('Separate the repeat from mark 2');
    expect(session.experiment.marks.map((mark) => mark.repeatOf ?? null)).toEqual([null, null, null]);
  });

  it('can be joined with any other, older or newer', async () => {
    for (const [own, other] of [
      ['c', 'a'],
      ['a', 'c'],
    ] as const) {
      const session = bench();
      const { root } = await row(session, own);
      const number = own === 'a' ? 1 : 3;
      const choice = root.querySelector<HTMLSelectElement>(
        `select[aria-label="Mark with the same resonance as mark ${number}"]`,
      );
      if (choice === null) throw new Error('there is a choice');
      choice.value = other;
      choice.dispatchEvent(new Event('change'));
      expect(session.experiment.marks.find(({ id }) => id === own)?.repeatOf).toBe(other);
    }
  });
});
