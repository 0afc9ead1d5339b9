// @vitest-environment happy-dom
import { render } from 'lit';
import { afterEach, describe, expect, it } from 'vitest';
import type { SoundListener, SoundSource } from '../../../src/capture/soundSource.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import { RecentLevels } from '../../../src/session/hearing/recentLevels.ts';
import type { ListeningUpdate, Resonance } from '../../../src/session/hearing/listeningTypes.ts';
import type { Session } from '../../../src/session/session.ts';
import '../../../src/ui/capture/trustElement.ts';
import { columnGeometry } from '../../../src/ui/stage/columnGeometry.ts';
import { stemsOf } from '../../../src/ui/stage/columnScene.ts';
import { stemsArt } from '../../../src/ui/stage/stemArt.ts';
import { stripFlags } from '../../../src/ui/stage/stripFlags.ts';
import { columnWords } from '../../../src/words/page/columnPicture.ts';
import { stageWords } from '../../../src/words/page/stageLine.ts';
import { stripWords } from '../../../src/words/page/strip.ts';
import { NOTHING_HEARD, flagAt } from '../../support/nothingHeard.ts';
import { benchInTest, told } from '../session/benchInTest.ts';

const maybe = (timeS: number, change: Partial<Resonance> = {}): Resonance =>
  flagAt(timeS, { certainty: 'maybe', confidence: 0.62, soundingIndex: 1, ...change });
const sure = (timeS: number, change: Partial<Resonance> = {}): Resonance =>
  flagAt(timeS, { soundingIndex: 1, ...change });

/** What is heard while a fork sounds and this is flagged. */
const flagged = (...resonances: Resonance[]): ListeningUpdate => ({
  ...NOTHING_HEARD,
  points: resonances.map(({ timeS }) => ({ timeS, toneDb: -30, roomDb: -60, broadbandDb: -30, riseDb: 30 })),
  soundings: [
    {
      index: 1,
      startS: 1,
      endS: null,
      decayTimeS: null,
      frequencyHz: null,
      frequencyStandardUncertaintyHz: null,
    },
  ],
  resonances,
  guidance: { belowBestDb: -3, bestTimeS: 1, isMetFromBothSides: false },
});

/** A bench that listens, and what lets it hear one thing after the other. */
async function listening(): Promise<{ session: Session; hear: (update: ListeningUpdate) => void }> {
  const updates: ListeningUpdate[] = [];
  const session = benchInTest({
    createListening: () => ({
      push: () => updates.shift() ?? NOTHING_HEARD,
      finish: () => NOTHING_HEARD,
      offlineReport: () => {
        throw new Error('practice has no report');
      },
    }),
  });
  let listener: SoundListener | null = null;
  const source: SoundSource = {
    kind: 'practice',
    stop: () => undefined,
    start: (to: SoundListener) => {
      listener = to;
      to.onState({
        kind: 'running',
        sampleRateHz: 48_000,
        settings: {
          deviceLabel: null,
          channelCount: 1,
          echoCancellation: 'off',
          noiseSuppression: 'off',
          autoGainControl: 'off',
        },
      });
      return Promise.resolve();
    },
  };
  await session.hearing.start(source);
  let blocks = 0;
  return {
    session,
    hear: (update) => {
      updates.push(update);
      listener?.onBlock({
        samples: new Float32Array(2048),
        startFrame: 2048 * blocks,
        discontinuity: false,
      });
      blocks += 1;
    },
  };
}

afterEach(() => document.body.replaceChildren());

describe('what may be a resonance, on the page', () => {
  it('isn’t found until it is a mark, which the slide back makes of it, and then once for each pass', async () => {
    const { session, hear } = await listening();
    hear(flagged(maybe(4, { slide: 'longer' })));
    expect(session.hearing.found).toBe(0);
    hear(flagged(maybe(6, { slide: 'shorter' })));
    expect(session.hearing.found).toBe(2);
    hear(flagged(sure(9)));
    expect(session.hearing.found).toBe(3);
    session.hearing.stop();
  });

  it('is found when it has become sure', async () => {
    const { session, hear } = await listening();
    hear(flagged(maybe(4)));
    expect(session.hearing.found).toBe(0);
    hear(flagged(sure(4.1, { maybeS: 4 })));
    expect(session.hearing.found).toBe(1);
    session.hearing.stop();
  });

  it('counts once where it was kept before it became sure', async () => {
    const { session, hear } = await listening();
    hear(flagged(maybe(4)));
    session.hearing.keepMaybe();
    expect(session.hearing.found).toBe(1);
    hear(flagged(sure(4.1, { maybeS: 4 })));
    expect(session.hearing.found).toBe(1);
    session.hearing.stop();
  });

  it('is said to be perhaps one, and not to be marked', async () => {
    const { session, hear } = await listening();
    hear(flagged(sure(2)));
    expect(stageWords(session, false)).toBe('Resonance marked. Go back to read it, or slide on.');
    hear(flagged(maybe(4)));
    expect(stageWords(session, false)).toBe('Perhaps a resonance: slide past it again.');
    expect(told(session)).toBe(
      'Perhaps a resonance, 62 % sure. Slide through it again, or press K to keep it if you heard it too.',
    );
    session.hearing.stop();
  });

  it('is kept by one key a flag, the newest first, and then asks for its length', async () => {
    const { session, hear } = await listening();
    hear(flagged(maybe(4)));
    hear(flagged(maybe(9)));
    const marked = (): (number | undefined)[] => session.experiment.marks.map((mark) => mark.evidence?.timeS);
    session.hearing.keepMaybe();
    expect(marked()).toEqual([9]);
    expect(told(session)).toBe('Resonance found: type its length.');
    session.hearing.keepMaybe();
    session.hearing.keepMaybe();
    expect(marked()).toEqual([9, 4]);
    session.hearing.stop();
  });

  it('offers four to be kept, the newest first; older ones come back as these are kept', async () => {
    const { session, hear } = await listening();
    for (const timeS of [4, 9, 14, 19, 24, 29]) hear(flagged(maybe(timeS)));
    const trust = document.createElement('bench-trust');
    trust.session = session;
    document.body.append(trust);
    const offered = async (): Promise<(string | null)[]> => {
      await trust.updateComplete;
      return [...trust.renderRoot.querySelectorAll('button')].map((one) => one.getAttribute('aria-label'));
    };
    const keep = (timeS: string): string => `Keep the resonance at ${timeS} s`;
    expect(await offered()).toEqual(['29.0', '24.0', '19.0', '14.0'].map(keep));
    session.hearing.keepMaybe();
    expect(await offered()).toEqual(['24.0', '19.0', '14.0', '9.0'].map(keep));
    session.hearing.stop();
  });

  it('isn’t taken for the mark before it when the column is at its centre', async () => {
    const { session, hear } = await listening();
    const here: ListeningUpdate = {
      ...NOTHING_HEARD,
      followed: [
        { timeS: 5, halfWidths: 0.05, standardUncertainty: 0.1, distanceM: 0, standardUncertaintyM: 0.001 },
      ],
    };
    hear(flagged(sure(2)));
    hear(flagged(maybe(4)));
    hear(here);
    expect([...session.hearing.centredMarks]).toEqual([]);
    session.hearing.keepMaybe();
    hear(here);
    const kept = session.experiment.marks.find((mark) => mark.evidence?.timeS === 4);
    expect([...session.hearing.centredMarks]).toEqual([kept?.id]);
    session.hearing.stop();
  });

  it('stands hollow on the strip until it is a mark', () => {
    const flags = [sure(2), maybe(4), maybe(9)];
    const labels = new Map([
      [2, '1'],
      [9, '2?'],
    ]);
    expect(stripFlags(flags, (timeS) => labels.get(timeS) ?? '')).toEqual([
      { timeS: 2, label: '1', isHollow: false },
      { timeS: 4, label: '', isHollow: true },
      { timeS: 9, label: '2?', isHollow: false },
    ]);
    // A sure one whose mark was deleted.
    expect(stripFlags([sure(2)], () => '')).toEqual([{ timeS: 2, label: '', isHollow: false }]);
  });

  it('is perhaps one in the strip’s words', () => {
    const trace = new RecentLevels();
    trace.add(flagged(sure(2), maybe(4)));
    expect(stripWords(trace)).toBe(
      'One strike heard. Resonances: at 2.0 s, rise 13 dB; perhaps at 4.0 s, rise 13 dB.',
    );
  });

  it('as a mark stands hollow in the picture, with a question mark, and is perhaps one in its words', async () => {
    const { session, hear } = await listening();
    hear(flagged(sure(4, { confidence: 0.97 })));
    hear(flagged(maybe(9)));
    session.hearing.keepMaybe();
    const [first, second] = session.experiment.marks;
    session.typeLength(first?.id ?? '', { lengthM: 0.15, otherLengthM: null });
    session.typeLength(second?.id ?? '', { lengthM: 0.48, otherLengthM: null });
    const { experiment } = session;
    const stems = stemsOf(experiment, solveExperiment(experiment));
    expect(stems.map(({ lengthM, isUnsure }) => [lengthM, isUnsure])).toEqual([
      [0.15, false],
      [0.48, true],
    ]);
    const place = document.createElement('div');
    render(stemsArt(columnGeometry(900, 1.2), stems), place);
    const drawn = [...place.querySelectorAll('g.stem')];
    expect(drawn.map((stem) => stem.classList.contains('unsure'))).toEqual([false, true]);
    expect(drawn.map((stem) => stem.querySelector('text')?.textContent)).toEqual([
      '1st · 15.0',
      '2nd · 48.0?',
    ]);
    expect(columnWords(experiment, null, stems)).toBe(
      'Air column closed at one end. Marks: 1st resonance at 15.0 cm, perhaps 2nd resonance at 48.0 cm.',
    );
    session.hearing.stop();
  });
});
