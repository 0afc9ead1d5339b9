import { describe, expect, it } from 'vitest';
import { analyseRecording } from '../../../../src/session/recording/analyseRecording.ts';
import type { CheckedReport } from '../../../../src/session/recording/analyseRecording.ts';
import { HAND_RATE_HZ } from '../../../bench/following/hand.ts';
import { drawRecording, SAMPLE_RATE_HZ } from '../../../bench/following/recording.ts';
import type { Recording } from '../../../bench/following/recording.ts';

/** Nearer than this the side doesn't matter, half widths. */
const HERE = 0.35;

function analyse({ samples, scene }: Recording, isTubeKnown = true): CheckedReport {
  const { nominalHz, closed, diameterM } = scene;
  const tube = isTubeKnown ? ({ ends: closed ? 'closed' : 'open', diameterM } as const) : null;
  const fork = { nominalHz, toleranceHz: 2.5 };
  return analyseRecording(samples, { sampleRateHz: SAMPLE_RATE_HZ, fork, follow: { tube } });
}

const median = (values: readonly number[]): number => [...values].sort((a, b) => a - b)[values.length >> 1];

/** Moments beyond `HERE`, those with a side, and those with the right one; errors of the distance in half widths. */
function judged({ scene, plan, truth }: Recording, { following }: CheckedReport) {
  const sounding = (timeS: number) =>
    plan.strikes.some(({ startS, endS }) => timeS > startS + 0.4 && timeS < endS - 0.1);
  const moments = (following ?? [])
    .filter(({ timeS }) => sounding(timeS))
    .map((place) => ({
      ...place,
      off: truth.offM[Math.round(place.timeS * HAND_RATE_HZ)] / truth.halfWidthM,
    }));
  const beyond = moments.filter(({ off }) => Math.abs(off) > HERE);
  const named = beyond.filter(({ halfWidths }) => halfWidths !== null);
  const right = named.filter(({ halfWidths, off }) => (halfWidths ?? 0) > 0 === off > 0);
  const errors = moments.flatMap(({ halfWidths, off }) =>
    halfWidths === null ? [] : [Math.abs(halfWidths - off)],
  );
  expect(beyond.length, `${scene.world} ${scene.room}`).toBeGreaterThan(30);
  return { beyond: beyond.length, named: named.length, right: right.length, error: median(errors) };
}

// Truth comes from the simulator of hand, tube and room, which shares no code with what follows the column.
describe('a column that is followed after one pass', () => {
  const quiet = [100, 101, 104].map((seed) =>
    drawRecording({ world: 'one pole', room: 'quiet', isStruckAgain: false, seed }),
  );
  const amidTalk = [103, 109, 111].map((seed) =>
    drawRecording({ world: 'line', room: 'talk 0 dB', isStruckAgain: false, seed }),
  );

  it.each([
    ['in the quiet', quiet],
    ['amid talk as loud as the fork', amidTalk],
  ])(
    'is told with its side, %s',
    (_name, recordings) => {
      const scores = recordings.map((recording) => judged(recording, analyse(recording)));
      const sum = (pick: (score: (typeof scores)[number]) => number) =>
        scores.reduce((total, score) => total + pick(score), 0);
      expect(sum(({ named }) => named) / sum(({ beyond }) => beyond)).toBeGreaterThan(0.7);
      expect(sum(({ right }) => right) / sum(({ named }) => named)).toBeGreaterThan(0.98);
      expect(median(scores.map(({ error }) => error))).toBeLessThan(0.3);
    },
    60_000,
  );

  it('passed resonance before the level peaked, and the centre says when', () => {
    for (const recording of [...quiet, ...amidTalk]) {
      const { centreS } = recording.truth;
      const own = analyse(recording).resonances.find(({ timeS }) => Math.abs(timeS - centreS) < 0.4);
      expect(own?.centreS ?? NaN).toBeCloseTo(centreS, 1);
      expect(Math.abs((own?.centreS ?? NaN) - centreS)).toBeLessThan(Math.abs((own?.timeS ?? NaN) - centreS));
    }
  }, 60_000);

  it('is told from what was heard by then: what comes later changes nothing', () => {
    const [recording] = quiet;
    const whole = analyse(recording).following ?? [];
    const untilS = 9;
    const cut = { ...recording, samples: recording.samples.slice(0, untilS * SAMPLE_RATE_HZ) };
    const early = (analyse(cut).following ?? []).filter(({ timeS }) => timeS < untilS - 1);
    expect(early.length).toBeGreaterThan(10);
    expect(whole.slice(0, early.length)).toEqual(early);
  });

  it('has no distance in metres where the tube isn’t known, but its side', () => {
    const [recording] = quiet;
    const report = analyse(recording, false);
    const { named, right, beyond } = judged(recording, report);
    expect(named / beyond).toBeGreaterThan(0.7);
    expect(right / named).toBeGreaterThan(0.98);
    expect(report.following?.every(({ distanceM }) => distanceM === null)).toBe(true);
  });
});
