import { describe, expect, it } from 'vitest';
import type { CaptureSettings, CaptureState } from '../../../../src/capture/soundSource.ts';
import { RecentLevels } from '../../../../src/session/hearing/recentLevels.ts';
import type { LevelPoint } from '../../../../src/session/hearing/listeningTypes.ts';
import { soundFacts } from '../../../../src/ui/check/soundFacts.ts';
import { forkFindingWords, soundFactWords } from '../../../../src/words/page/soundCheck.ts';

const point = (broadbandDb: number): LevelPoint => ({
  timeS: 1,
  toneDb: null,
  roomDb: -81.6,
  broadbandDb,
  riseDb: null,
});

/** What the check of input and fork says while a source runs: each fact's words, and whether it is good. */
function said(capture: CaptureState, points: readonly LevelPoint[], isFaint = false) {
  const trace = new RecentLevels();
  trace.points = [...points];
  if (isFaint) trace.warnings = [{ code: 'too-faint', largest: 0.001, timeS: null }];
  return soundFacts(capture, trace).map((fact) => {
    const { name, value } = soundFactWords(fact);
    return { name, value, isGood: fact.isGood };
  });
}

const running = (settings: CaptureSettings | null): Extract<CaptureState, { kind: 'running' }> => ({
  kind: 'running',
  sampleRateHz: 48_000,
  settings,
});

describe('the check of input and fork', () => {
  it('waits for sound, and judges nothing before', () => {
    expect(said({ kind: 'idle' }, [])).toEqual([
      { name: 'Raw sound', value: 'press Listen first', isGood: null },
      { name: 'Input', value: 'nothing heard yet', isGood: null },
      { name: 'Room noise', value: 'not heard yet', isGood: null },
    ]);
  });

  it('says how loud the loudest sound was, and that it is faint below −75 dB', () => {
    const [, loud, room] = said(running(null), [point(-60.2), point(-30.4)]);
    expect(loud).toEqual({ name: 'Input', value: 'up to −30 dB (0 dB: a sine of full scale)', isGood: true });
    expect(room?.value).toBe('−82 dB at the fork’s frequency');
    const [, faint] = said(running(null), [point(-75.6)]);
    expect(faint).toMatchObject({
      value: 'up to −76 dB (0 dB: a sine of full scale); very faint',
      isGood: false,
    });
  });

  it('lets a warning stand before the level', () => {
    const [, input] = said(running(null), [point(-30)], true);
    expect(input?.isGood).toBe(false);
    expect(input?.value).not.toContain('up to');
  });

  it('says that no sound at all arrives, and what to try', () => {
    const [, input] = said({ ...running(null), isSilent: true }, [point(-200)]);
    expect(input?.isGood).toBe(false);
    expect(input?.value).toMatch(/^No sound at all arrives.* mute switch .* choose another one/);
  });

  it('gives a fork’s frequency with its distance from the stamp', () => {
    const finding = { measuredHz: 511.4, standardUncertaintyHz: 0.02, stampedHz: 512, decayTimeS: 4 };
    // −0.6 of 512 Hz are −0.117 %.
    expect(forkFindingWords(finding)).toBe(
      '511.400 ± 0.020 Hz, −0.60 Hz (−0.12 %) from its stamp; it falls to 1/e in 4.0 s',
    );
    expect(forkFindingWords(null)).toBe('strike it to measure its real frequency');
  });
});
