import { describe, expect, it } from 'vitest';
import type { CaptureSettings, SoundListener, SoundSource } from '../../../src/capture/soundSource.ts';
import { waitingMarks } from '../../../src/notebook/markList.ts';
import type { Experiment } from '../../../src/notebook/experiment.ts';
import { solveExperiment } from '../../../src/session/experiment/solveExperiment.ts';
import type { SessionOutside } from '../../../src/session/session.ts';
import type { ListeningReport, ListeningUpdate } from '../../../src/session/hearing/listeningTypes.ts';
import { exampleExperiment, exampleMark } from '../notebook/exampleExperiment.ts';
import { MemoryStore } from '../notebook/memoryStore.ts';
import { benchInTest, told } from './benchInTest.ts';
import { NOTHING_HEARD, flagAt } from '../../support/nothingHeard.ts';

const REPORT: ListeningReport = {
  durationS: 10,
  sampleRateHz: 48_000,
  fork: { nominalHz: 512, measuredHz: null, standardUncertaintyHz: null },
  soundings: [],
  resonances: [flagAt(4), flagAt(8)],
  warnings: [],
};

const PROCESSED: CaptureSettings = {
  deviceLabel: 'Built-in',
  channelCount: 1,
  echoCancellation: 'off',
  noiseSuppression: 'on',
  autoGainControl: 'off',
};

/** A source that does only what the test says. */
class HandSource implements SoundSource {
  listener: SoundListener | null = null;
  stopped = 0;
  constructor(readonly kind: SoundSource['kind']) {}

  start(listener: SoundListener): Promise<void> {
    this.listener = listener;
    return Promise.resolve();
  }

  stop(): void {
    this.stopped += 1;
  }

  run(settings: CaptureSettings | null = null): void {
    this.listener?.onState({ kind: 'running', sampleRateHz: 48_000, settings });
  }

  block(): void {
    this.listener?.onBlock({ samples: new Float32Array(2048), startFrame: 0, discontinuity: false });
  }
}

function session(outside: Partial<SessionOutside> = {}, updates: ListeningUpdate[] = []) {
  const pitches: number[] = [];
  const bench = benchInTest({
    createListening: ({ fork }) => {
      pitches.push(fork.nominalHz);
      return {
        push: () => updates.shift() ?? NOTHING_HEARD,
        finish: () => NOTHING_HEARD,
        offlineReport: () => REPORT,
      };
    },
    ...outside,
  });
  return { bench, pitches };
}

describe('Session', () => {
  it('waits for what listens, unless it is stopped meanwhile, and says where that can’t be had', async () => {
    const loads: { done: () => void; fail: (error: Error) => void }[] = [];
    const loadListening = () =>
      new Promise<void>((done, fail) => {
        loads.push({ done, fail });
      });
    const { bench } = session({ loadListening });
    const first = new HandSource('microphone');
    const starting = bench.hearing.start(first);
    expect(bench.hearing.capture).toEqual({ kind: 'starting' });
    bench.hearing.stop();
    expect(bench.hearing.capture).toEqual({ kind: 'idle' });
    loads[0]?.done();
    await starting;
    expect(first.listener).toBeNull();
    const second = new HandSource('microphone');
    const again = bench.hearing.start(second);
    loads[1]?.done();
    await again;
    expect(second.listener).not.toBeNull();
    const refused = bench.hearing.start(new HandSource('practice'));
    loads[2]?.fail(new Error('no network'));
    await refused;
    expect(second.stopped).toBe(1);
    expect(bench.hearing.capture).toEqual({
      kind: 'failed',
      failure: { code: 'capture-broken', what: 'listening', said: 'no network' },
    });
  });

  it('notes that a length was found at the centre where the page said so, once, and not for a bracket', async () => {
    const here = {
      timeS: 6,
      halfWidths: 0.1,
      standardUncertainty: 0.1,
      distanceM: null,
      standardUncertaintyM: null,
    };
    const point = { timeS: 6, toneDb: -30, roomDb: -60, broadbandDb: -20, riseDb: 30 };
    const { bench } = session({}, [
      { ...NOTHING_HEARD, resonances: [flagAt(3)] },
      { ...NOTHING_HEARD, resonances: [flagAt(5.5)] },
      { ...NOTHING_HEARD, points: [point], followed: [here] },
      { ...NOTHING_HEARD, resonances: [flagAt(9)] },
    ]);
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    source.run();
    for (let block = 0; block < 4; block += 1) source.block();
    const [passed, found, later] = bench.experiment.marks.map(({ id }) => id);
    const locatedBy = (): (string | undefined)[] => bench.experiment.marks.map((mark) => mark.locatedBy);
    bench.typeLength(passed ?? '', { lengthM: 0.156, otherLengthM: null });
    bench.typeLength(later ?? '', { lengthM: 0.83, otherLengthM: null });
    bench.typeLength(found ?? '', { lengthM: 0.49, otherLengthM: 0.5 });
    expect(locatedBy()).toEqual([undefined, undefined, undefined]);
    bench.undo();
    bench.typeLength(found ?? '', { lengthM: 0.493, otherLengthM: null });
    expect(locatedBy()).toEqual([undefined, 'centre', undefined]);
    bench.editMark(found ?? '', { locatedBy: 'loudest' });
    bench.typeLength(found ?? '', { lengthM: 0.494, otherLengthM: null });
    expect(locatedBy()).toEqual([undefined, 'loudest', undefined]);
  });

  it('turns each flagged resonance into a mark that waits, with its evidence', async () => {
    const { bench } = session({}, [{ ...NOTHING_HEARD, resonances: [flagAt(5.5)] }]);
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    source.run();
    source.block();
    expect(bench.experiment.marks).toMatchObject([
      { lengthM: null, evidence: { source: 'microphone', timeS: 5.5, riseDb: 13, confidence: 0.9 } },
    ]);
    expect(told(bench)).toBe('Resonance found: type its length.');
    const [flagged] = bench.experiment.marks;
    bench.editMark(flagged?.id ?? '', { note: 'loud' });
    expect(told(bench)).toMatch(/type its length/);
    // What it says is over at once, not after the seconds that a message stays.
    bench.editMark(flagged?.id ?? '', { lengthM: 0.158 });
    expect(bench.notice).toBeNull();
  });

  it('counts a passage the other way with the mark before it, one the same way as new, and one after a strike by what was followed', async () => {
    const flags = (
      [
        ['longer', 1],
        ['shorter', 1],
        ['longer', 1],
        ['longer', 1],
        ['shorter', 2, true],
      ] as const
    ).map(([slide, soundingIndex, isFollowed], index) => ({
      ...flagAt(index + 1),
      slide,
      soundingIndex,
      ...(isFollowed === undefined ? {} : { isFollowed }),
    }));
    const { bench } = session(
      {},
      flags.map((flag) => ({ ...NOTHING_HEARD, resonances: [flag] })),
    );
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    source.run();
    for (let count = 0; count < flags.length; count += 1) source.block();
    const [first, , , fourth, fifth] = bench.experiment.marks;
    expect(bench.experiment.marks.map((mark) => mark.repeatOf ?? null)).toEqual([
      null,
      first?.id,
      first?.id,
      null,
      fourth?.id,
    ]);
    expect(waitingMarks(bench.experiment)).toHaveLength(2);
    expect(told(bench)).toMatch(/joined with mark 2\. If it is another resonance, choose “Separate”/);
    // Parted, it waits by itself.
    bench.editMark(fifth?.id ?? '', { repeatOf: null }, 'separate marks');
    expect(waitingMarks(bench.experiment)).toHaveLength(3);
  });

  it('marks what is flagged while a step of the browser processes the sound, with that doubt', async () => {
    const { bench } = session({}, [{ ...NOTHING_HEARD, resonances: [flagAt(4)] }]);
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    source.run(PROCESSED);
    source.block();
    expect(bench.experiment.marks.map((mark) => mark.evidence?.doubt)).toEqual([['processing-on']]);
    expect(bench.hearing.withheld).toEqual([]);
  });

  it('says no doubt of a mark where nothing speaks against the sound', async () => {
    const { bench } = session({}, [{ ...NOTHING_HEARD, resonances: [flagAt(4)] }]);
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    source.run();
    source.block();
    expect(bench.experiment.marks[0]?.evidence).not.toHaveProperty('doubt');
  });

  it('keeps flags apart in which the tone was gated away, until they are let in, each once', async () => {
    const gated = (timeS: number): ListeningUpdate => ({
      ...NOTHING_HEARD,
      points: [timeS, timeS + 0.5].map((atS) => ({
        timeS: atS,
        toneDb: -20,
        roomDb: -60,
        broadbandDb: -20,
        riseDb: 40,
      })),
      resonances: [flagAt(timeS, { isGated: true })],
    });
    const { bench } = session({}, [gated(4), gated(8), gated(20)]);
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    source.run(PROCESSED);
    for (let count = 0; count < 3; count += 1) source.block();
    expect(bench.experiment.marks).toEqual([]);
    expect(bench.hearing.trace.resonances).toEqual([]);
    expect(told(bench)).toMatch(/heard but not marked/);
    const [first, ...others] = bench.hearing.withheld;
    expect(others).toHaveLength(2);
    if (first === undefined) throw new Error('three are withheld');
    bench.hearing.letIn([first]);
    bench.hearing.letIn([first]);
    expect(bench.experiment.marks.map((mark) => mark.evidence?.timeS)).toEqual([4]);
    expect(bench.experiment.marks[0]?.evidence?.doubt).toEqual(['processing-on', 'suppressed']);
    // Its trace went on to 3 s after its peak before it was let in.
    expect(bench.experiment.marks[0]?.evidence?.trace?.roomDb).toHaveLength(2);
    bench.hearing.letIn(bench.hearing.withheld);
    expect(bench.experiment.marks).toHaveLength(3);
    expect(bench.hearing.withheld).toEqual([]);
  });

  it('marks what practice flags, gated or not: nothing processes it', async () => {
    const { bench } = session({}, [{ ...NOTHING_HEARD, resonances: [{ ...flagAt(4), isGated: true }] }]);
    const source = new HandSource('practice');
    await bench.hearing.start(source);
    source.run();
    source.block();
    expect(bench.experiment.marks).toHaveLength(1);
  });

  it('marks a recording once, from the second look at its end', async () => {
    const { bench } = session({}, [{ ...NOTHING_HEARD, resonances: [flagAt(5.5)] }]);
    const source = new HandSource('recording');
    await bench.hearing.start(source);
    source.run();
    source.block();
    expect(bench.experiment.marks).toHaveLength(0);
    source.listener?.onState({ kind: 'ended' });
    expect(bench.experiment.marks.map((mark) => mark.evidence?.timeS)).toEqual([4, 8]);
    expect(bench.hearing.isListening).toBe(false);
  });

  it('listens for another fork as soon as it is chosen', async () => {
    const { bench, pitches } = session();
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    source.run();
    bench.change('change fork', (experiment) => ({
      ...experiment,
      forks: experiment.forks.map((fork) => ({ ...fork, nominalHz: 384 })),
    }));
    expect(pitches).toEqual([512, 384]);
  });

  it('shows a capture failure with its message, and listening is over', async () => {
    const { bench } = session();
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    const failure = { code: 'refused-by-user', how: 'refused' } as const;
    source.listener?.onState({ kind: 'failed', failure });
    expect(bench.hearing.isListening).toBe(false);
    expect(bench.notice?.kind).toBe('problem');
    expect(told(bench)).toBe('The microphone was refused.');
  });

  it('says in plain words that it can’t listen, instead of crashing, where what listens throws', async () => {
    const { bench } = session({
      createListening: () => {
        throw new RangeError('nominalHz must be below 1500 Hz at this sample rate, got 2000');
      },
    });
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    source.run();
    expect(source.stopped).toBe(1);
    expect(told(bench)).toMatch(/could not start listening/);
    expect(told(bench)).not.toMatch(/nominalHz/);
  });

  it('hears nothing more after a stop', async () => {
    const { bench } = session({}, [{ ...NOTHING_HEARD, resonances: [flagAt(1)] }]);
    const source = new HandSource('practice');
    await bench.hearing.start(source);
    source.run();
    bench.hearing.stop();
    source.block();
    expect(bench.experiment.marks).toHaveLength(0);
    expect(bench.hearing.capture.kind).toBe('idle');
  });

  it('keeps the level trace around a flagged resonance, the part heard after the flag too', async () => {
    const points = (fromS: number, toS: number) =>
      Array.from({ length: Math.round((toS - fromS) * 20) + 1 }, (_, i) => ({
        timeS: fromS + i / 20,
        toneDb: -40 + fromS + i / 20,
        roomDb: -60,
        broadbandDb: -30,
        riseDb: 20,
      }));
    const { bench } = session({}, [
      { ...NOTHING_HEARD, points: points(0, 6), resonances: [flagAt(5.5)] },
      { ...NOTHING_HEARD, points: points(6.05, 9.5) },
    ]);
    const source = new HandSource('microphone');
    await bench.hearing.start(source);
    source.run();
    source.block();
    const lastS = (): number => {
      const trace = bench.experiment.marks[0]?.evidence?.trace;
      return (trace?.startS ?? 0) + ((trace?.toneDb.length ?? 0) - 1) * (trace?.stepS ?? 0);
    };
    expect(lastS()).toBeCloseTo(6, 9);
    source.block();
    expect(bench.experiment.marks[0]?.evidence?.trace?.startS).toBeCloseTo(2.5, 9);
    expect(lastS()).toBeCloseTo(8.5, 9);
    expect(bench.undoName).toBe('flagged resonance');
    bench.undo();
    bench.redo();
    expect(lastS()).toBeCloseTo(8.5, 9);
  });

  it('undoes and redoes each change, and names it', () => {
    const { bench } = session();
    bench.addMarkByHand(0.158);
    expect(bench.undoName).toBe('add mark');
    bench.undo();
    expect(bench.experiment.marks).toHaveLength(0);
    bench.redo();
    expect(bench.experiment.marks).toHaveLength(1);
  });

  it('works without storage, and says so', async () => {
    const { bench } = session();
    await bench.restore();
    expect(bench.saveState).toMatchObject({ kind: 'refused', fault: 'broken' });
    expect(JSON.stringify(bench.saveState)).toMatch(/no storage here/);
    bench.addMarkByHand(0.158);
    expect(bench.experiment.marks).toHaveLength(1);
  });

  it('brings back what was open, and saves each change', async () => {
    const stored = exampleExperiment([exampleMark('a', { lengthM: 0.16 })]);
    const store = new MemoryStore([stored]);
    const { bench } = session({ openStore: () => Promise.resolve(store) });
    await bench.restore();
    expect(bench.experiment).toEqual(stored);
    bench.deleteMark('a');
    await bench.keeping.idle();
    expect(store.experiment('example')?.deletedMarks).toHaveLength(1);
  });

  it('begins afresh beside a record that can’t be read, and names the fault', async () => {
    const store = new MemoryStore([Object.assign({ id: 'broken' }, { schemaVersion: 1, marks: 'none' })]);
    const { bench } = session({ openStore: () => Promise.resolve(store) });
    await bench.restore();
    expect(bench.experiment.marks).toHaveLength(0);
    expect(bench.notice?.kind).toBe('problem');
    bench.addMarkByHand(0.158);
    await bench.keeping.idle();
    expect((await store.list()).map((one) => one.id)).toEqual(['broken', 'id-1']);
  });
});

describe('solveExperiment', () => {
  // Common exercise, no source: first two lengths 0.100 m and 0.350 m give e = 0.025 m and half a wave of 0.250 m.
  it('takes the zero offset off and leaves out what the user left out', () => {
    const experiment: Experiment = {
      ...exampleExperiment([
        exampleMark('a', { lengthM: 0.112 }),
        exampleMark('b', { lengthM: 0.362 }),
        exampleMark('c', { lengthM: 0.3, excluded: true }),
        exampleMark('d'),
      ]),
      forks: [
        {
          id: 'fork-1',
          nominalHz: 680,
          standardUncertaintyHz: 0.1,
          measuredHz: null,
          measuredStandardUncertaintyHz: null,
        },
      ],
      rule: { readingStandardUncertaintyM: 0.0005, zeroOffsetM: 0.012 },
    };
    const solution = solveExperiment(experiment).places[0]?.solution;
    if (solution === undefined || solution.speedMps === null) throw new Error('expected a speed');
    expect(solution.marks.map((mark) => mark.key)).toEqual(['a', 'b']);
    expect(solution.marks.map((mark) => mark.order)).toEqual([1, 2]);
    // 2 · 680 Hz · 0.250 m = 340 m/s; no diameter, so nothing is added for the walls.
    expect(solution.speedMps).toBeCloseTo(340, 0);
    expect(solution.endCorrectionM).toBeCloseTo(0.025, 3);
  });

  it('gives nothing while no mark has a length', () => {
    expect(solveExperiment(exampleExperiment([exampleMark('a')])).places).toEqual([]);
  });
});
