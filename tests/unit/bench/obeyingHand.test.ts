import { describe, expect, it } from 'vitest';
import { DistancePolicy, LevelPolicy, MovingHand } from '../../bench/following/obeyingHand.ts';
import type { Policy, Told } from '../../bench/following/obeyingHand.ts';
import { Random } from '../../bench/detector/random.ts';

const STEP_S = 0.02;
const DELAY_S = 0.3;
/** How old a told place is. */
const LAG_S = 0.15;
const HALF_WIDTH_M = 0.003;

/** How far off, m, a hand is after 5 s that begins 20 mm off, sliding away, and is told nothing but the truth. */
function endsOffM(policy: Policy, tell: (offM: number, timeS: number) => Told, seed: number): number {
  const hand = new MovingHand(new Random(seed), 0.02);
  hand.slide(0.03);
  const offs: number[] = [];
  for (let timeS = 0; timeS < 5; timeS += STEP_S) {
    hand.step(STEP_S);
    offs.push(hand.positionM);
    const lateS = DELAY_S + LAG_S;
    const seen = offs.at(-1 - Math.round(lateS / STEP_S));
    if (seen !== undefined) policy.look(tell(seen, timeS - lateS), hand, timeS);
  }
  return hand.positionM;
}

const NOTHING = { flags: 1, isHere: false, place: null, belowBestDb: null };

/** "Here" is told within 0.2 half widths: 0.6 mm. */
const tellsTruth = (offM: number, timeS: number): Told => {
  const isHere = Math.abs(offM) <= 0.2 * HALF_WIDTH_M;
  return { ...NOTHING, isHere, place: isHere ? null : { timeS, distanceM: offM } };
};

describe('a hand that obeys a page which is never wrong', () => {
  it('is at resonance within 5 s by the distance, though it looks 0.3 s late', () => {
    for (let seed = 1; seed <= 20; seed += 1) {
      expect(Math.abs(endsOffM(new DistancePolicy(-1), tellsTruth, seed))).toBeLessThan(0.00061);
    }
  });

  it('waits for a place that was heard since it moved, instead of moving by the same one twice', () => {
    const holdsFirst = (offM: number, timeS: number): Told =>
      timeS < 1 ? tellsTruth(offM, timeS) : { ...NOTHING, place: { timeS: 1, distanceM: 0.01 } };
    const settled = (offM: number): Told => ({ ...NOTHING, place: { timeS: 0, distanceM: offM } });
    // Nothing that it is told was heard after the first slide ended: it stays where that one ended, past 20 mm.
    expect(endsOffM(new DistancePolicy(-1), settled, 1)).toBeGreaterThan(0.02);
    expect(Math.abs(endsOffM(new DistancePolicy(-1), holdsFirst, 1))).toBeLessThan(0.02);
  });

  it('is near by the level of a resonance 12 dB high', () => {
    let bestDb = -Infinity;
    const tell = (offM: number): Told => {
      const levelDb = 20 * Math.log10(1 + 3 / Math.hypot(1, offM / HALF_WIDTH_M));
      bestDb = Math.max(bestDb, levelDb, 12);
      return { ...NOTHING, belowBestDb: levelDb - bestDb };
    };
    // 1.5 dB, up to which it holds, are 0.7 half widths; it overshoots by what it does in 0.45 s.
    expect(Math.abs(endsOffM(new LevelPolicy(-1, DELAY_S), tell, 1))).toBeLessThan(0.006);
  });

  it('passes to and fro where nothing is told', () => {
    expect(Math.abs(endsOffM(new DistancePolicy(-1), () => NOTHING, 1))).toBeLessThan(0.04);
  });
});
