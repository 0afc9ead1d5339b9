import { describe, expect, it } from 'vitest';
import { rootMeanSquare } from '../../bench/detector/noises.ts';
import { generatedAlone, piecesAlone } from '../../bench/detector/soundAlone.ts';
import { GENERATED_VOICES } from '../../bench/detector/voices/voices.ts';

const SOUNDS = generatedAlone(GENERATED_VOICES);

describe('sound without a fork', () => {
  it('fills the minutes that were asked for, the last piece with what is left', () => {
    for (const kind of Object.keys(SOUNDS.kinds)) {
      const pieces = piecesAlone(SOUNDS, kind, 0.05, 2, 7);
      const lengthsS = pieces.map((piece) => {
        const { samples, sampleRateHz } = piece.make();
        expect(rootMeanSquare(samples)).toBeGreaterThan(1e-4);
        return Math.round((100 * samples.length) / sampleRateHz) / 100;
      });
      expect(lengthsS, kind).toEqual([2, 1]);
    }
  });

  it('is the same for the same seed, and another for another', () => {
    const [one, other] = piecesAlone(SOUNDS, 'taps', 0.1, 3, 7);
    const [again] = piecesAlone(SOUNDS, 'taps', 0.05, 3, 7);
    expect(one?.make().samples).toEqual(again?.make().samples);
    expect(one?.make().samples).not.toEqual(other?.make().samples);
  });

  it('lets each maker of music meet every fork', () => {
    const pieces = piecesAlone(SOUNDS, 'music', 18, 60, 7);
    const met = new Set(pieces.map(({ what, nominalHz }) => `${what} ${nominalHz}`));
    expect(met.size).toBe(18);
  });
});
