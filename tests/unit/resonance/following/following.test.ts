import { describe, expect, it } from 'vitest';
import type { CheckedReport } from '../../../../src/session/recording/analyseRecording.ts';
import { drawRecording, SAMPLE_RATE_HZ } from '../../../bench/following/recording.ts';
import type { Recording } from '../../../bench/following/recording.ts';
import { analyse, score } from '../../../bench/following/score.ts';
import type { Score } from '../../../bench/following/score.ts';
import { median } from '../../../../src/numeric/median.ts';

/** Enough moments to be judged by, and what came of them. */
function judged(recording: Recording, report: CheckedReport): Score {
  const found = score(recording, report);
  expect(found.beyond, `${recording.scene.world} ${recording.scene.room}`).toBeGreaterThan(30);
  return found;
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
      expect(median(scores.map(({ errorsHalfWidths }) => median(errorsHalfWidths)))).toBeLessThan(0.3);
    },
    60_000,
  );

  it('passed resonance before the level peaked, and the centre says when', () => {
    for (const recording of [...quiet, ...amidTalk]) {
      const { centreS } = recording.truth;
      const own = analyse(recording).resonances.find(({ timeS }) => Math.abs(timeS - centreS) < 0.4);
      expect(own?.centre?.timeS ?? NaN).toBeCloseTo(centreS, 1);
      expect(Math.abs((own?.centre?.timeS ?? NaN) - centreS)).toBeLessThan(
        Math.abs((own?.timeS ?? NaN) - centreS),
      );
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
