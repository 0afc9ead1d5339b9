import { describe, expect, it } from 'vitest';
import { lengthAnswerWords } from '../../../../src/words/page/lengthCheck.ts';
import type { CheckHindrance } from '../../../../src/resonance/lengthCheck/checkLength.ts';

const detail = (hindrance: CheckHindrance, comparisons: number): string =>
  lengthAnswerWords({
    verdict: 'cannot-tell',
    riseDb: null,
    standardUncertaintyDb: null,
    comparisons,
    hindrance,
  }).detail;

describe('a check that can’t tell', () => {
  it('counts comings and goings only where too few are the reason', () => {
    expect(detail('few-changes', 0)).toContain('0 times so far; at least three');
    expect(detail('few-changes', 1)).toContain('once so far');
    for (const other of ['no-fork', 'lost-sound', 'noise', 'unsteady'] as const) {
      expect(detail(other, 4)).not.toMatch(/\d|so far;/);
    }
  });

  it('names the room, the missing fork and the hand', () => {
    expect(detail('noise', 4)).toContain('room is too loud');
    expect(detail('no-fork', 0)).toContain('No fork has been heard');
    expect(detail('lost-sound', 0)).toContain('Sound was lost');
    expect(detail('unsteady', 2)).toContain('hold the fork still');
  });
});
