import { describe, expect, it } from 'vitest';
import { rootMeanSquare } from '../../bench/detector/noises.ts';
import { ALONE_KINDS, piecesAlone } from '../../bench/detector/soundAlone.ts';
import { GENERATED_VOICES } from '../../bench/detector/voices/voices.ts';

describe('sound without a fork', () => {
  it('fills the minutes that were asked for, the last piece with what is left', () => {
    for (const kind of ALONE_KINDS) {
      const pieces = piecesAlone(kind, 0.05, 2, 7, GENERATED_VOICES);
      const lengthsS = pieces.map((piece) => {
        const { samples, sampleRateHz } = piece.make();
        expect(rootMeanSquare(samples)).toBeGreaterThan(1e-4);
        return Math.round((100 * samples.length) / sampleRateHz) / 100;
      });
      expect(lengthsS, kind).toEqual([2, 1]);
    }
  });

  it('is the same for the same seed, and another for another', () => {
    const [one, other] = piecesAlone('taps', 0.1, 3, 7, GENERATED_VOICES);
    const [again] = piecesAlone('taps', 0.05, 3, 7, GENERATED_VOICES);
    expect(one?.make().samples).toEqual(again?.make().samples);
    expect(one?.make().samples).not.toEqual(other?.make().samples);
  });

  it('lets each maker of music meet every fork', () => {
    const pieces = piecesAlone('music', 18, 60, 7, GENERATED_VOICES);
    const met = new Set(pieces.map(({ what, nominalHz }) => `${what} ${nominalHz}`));
    expect(met.size).toBe(18);
  });
});
