import { describe, expect, it } from 'vitest';
import type { PassageFeatures } from '../../../../src/resonance/passages/passageFeatures.ts';
import { samePassage } from '../../../../src/resonance/passages/candidates.ts';
import { viewOf } from '../../../../src/resonance/toneView.ts';
import { ToneSeries } from '../../../../src/tone/toneSeries.ts';

const RATE_HZ = 100;
const PEAKS_S = [2, 2.8] as const;

/** Two peaks with a smooth dip between them, no noise. */
function twoPeaks(dipDb: number) {
  const [first, second] = PEAKS_S;
  const amplitude = Array.from({ length: 5 * RATE_HZ }, (_, k) => {
    const part = (k / RATE_HZ - first) / (second - first);
    const isBetween = part > 0 && part < 1;
    return isBetween ? 10 ** ((-dipDb * Math.sin(Math.PI * part) ** 2) / 20) : 1;
  });
  const series = new ToneSeries(RATE_HZ, 50);
  series.pushValues(
    amplitude,
    amplitude.map(() => 0),
    amplitude.length,
  );
  return viewOf(series, 0, series.length, 0);
}

/** What is asked of two peaks' features. */
const peak = (timeS: number, halfWidthS: number): PassageFeatures =>
  ({ peakIndex: timeS * RATE_HZ, logHalfWidth: Math.log(halfWidthS), peakPower: 1 }) as PassageFeatures;

const areSame = (dipDb: number, halfWidthS: number, secondS: number = PEAKS_S[1]): boolean =>
  samePassage(twoPeaks(dipDb), peak(PEAKS_S[0], halfWidthS), peak(secondS, halfWidthS));

describe('two peaks are one passage', () => {
  it.each([
    { dipDb: 1, halfWidthS: 0.1, same: true, why: 'the level hardly falls between them' },
    { dipDb: 6, halfWidthS: 0.1, same: false, why: 'it falls, and narrow shapes don’t reach that far' },
    { dipDb: 6, halfWidthS: 0.7, same: true, why: 'it falls within the reach of a wide shape: a wobble' },
    { dipDb: 14, halfWidthS: 0.7, same: false, why: 'it falls further than any wobble' },
  ])('$same: $dipDb dB, half width $halfWidthS s: $why', ({ dipDb, halfWidthS, same }) => {
    expect(areSame(dipDb, halfWidthS)).toBe(same);
  });

  it('within 0.3 s whatever lies between', () => {
    expect(areSame(30, 0.05, PEAKS_S[0] + 0.25)).toBe(true);
  });
});
