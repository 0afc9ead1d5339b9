import { describe, expect, it } from 'vitest';
import { loudestPlaceHalfWidths, widerRiseDb } from '../../../src/air/loudestPlaceSpread.ts';
import { loudestPlace, shareOfRise } from '../../bench/locatedExperiments.ts';

/** Of the loudest place over many angles, searched on |1 + m e^{iθ}/(1 + ix)| itself. */
function searchedRms(riseDb: number): number {
  const angles = 180;
  let squares = 0;
  for (let i = 0; i < angles; i += 1) {
    const angleRad = (2 * Math.PI * (i + 0.5)) / angles - Math.PI;
    squares += loudestPlace(shareOfRise(riseDb, angleRad), angleRad).halfWidths ** 2;
  }
  return Math.sqrt(squares / angles);
}

describe('the loudest place about the centre', () => {
  it.each([3, 6, 8, 10, 14, 20])('is off as far as a search over all angles finds, at %s dB', (riseDb) => {
    expect(Math.abs(loudestPlaceHalfWidths(riseDb) / searchedRms(riseDb) - 1)).toBeLessThan(0.001);
  });

  it('is bounded where nothing stands out', () => {
    for (const riseDb of [-300, 0, 2.9])
      expect(loudestPlaceHalfWidths(riseDb)).toBe(loudestPlaceHalfWidths(3));
    expect(loudestPlaceHalfWidths(300)).toBeGreaterThan(0);
    expect(() => loudestPlaceHalfWidths(NaN)).toThrow(RangeError);
  });

  it('is of a wider resonance whose share fell with the width, both at right angles', () => {
    // At a right angle the largest value R of |1 + im/(1 + ix)| is searched for share m and m/3.
    const share = shareOfRise(12, Math.PI / 2);
    const wider = 20 * Math.log10(loudestPlace(share / 3, Math.PI / 2).loudest);
    expect(widerRiseDb(12, 3)).toBeCloseTo(wider, 3);
    expect(widerRiseDb(12, 1)).toBeCloseTo(12, 9);
  });
});
