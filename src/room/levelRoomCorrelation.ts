import { VALUES_PER_FRAME } from '../tone/sideBandNoise.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';

/** Narrow values on either side of a moment that make its level: 0.2 s in all. */
const HALF = 10;
const LEAST_FRAMES = 60;

/**
 * How the room's noise goes with the level in the fork's band: correlation of their logarithms over all side-band
 * frames of a growing series. A room knows nothing of the fork (about 0); a talker lights up both (above 0); an
 * automatic gain turns the room down whenever the fork is loud (below 0).
 */
export class LevelRoomCorrelation {
  private readonly series: ToneSeries;
  /** First frame that isn't counted yet: number 0 and 1 have too little before them. */
  private next = Math.ceil(HALF / VALUES_PER_FRAME);
  private frames = 0;
  /** Sums of the logarithms of level and room, of their squares and of their product. */
  private readonly sums = { level: 0, room: 0, levelSquares: 0, roomSquares: 0, product: 0 };

  constructor(series: ToneSeries) {
    this.series = series;
  }

  /** As of the series' last value, −1..1; null for less than five seconds or no change at all. */
  correlation(): number | null {
    this.advance();
    const n = this.frames;
    const { level, room, levelSquares, roomSquares, product } = this.sums;
    const levelVariance = levelSquares - (level * level) / n;
    const roomVariance = roomSquares - (room * room) / n;
    if (n < LEAST_FRAMES || !(levelVariance > 0 && roomVariance > 0)) return null;
    return (product - (level * room) / n) / Math.sqrt(levelVariance * roomVariance);
  }

  private advance(): void {
    const { sideBands, length } = this.series;
    for (; this.next < sideBands.length; this.next += 1) {
      const middle = this.next * VALUES_PER_FRAME;
      if (middle + HALF >= length) return;
      this.count(bandPower(this.series, middle), sideBands.floor[this.next]);
    }
  }

  private count(power: number, floorDensity: number): void {
    if (!(power > 0 && floorDensity > 0)) return;
    const level = Math.log(power);
    const room = Math.log(floorDensity);
    const sums = this.sums;
    this.frames += 1;
    sums.level += level;
    sums.room += room;
    sums.levelSquares += level * level;
    sums.roomSquares += room * room;
    sums.product += level * room;
  }
}

/** Sum of |value|² around one. */
function bandPower({ re, im }: ToneSeries, middle: number): number {
  let power = 0;
  for (let k = middle - HALF; k <= middle + HALF; k += 1) power += re[k] ** 2 + im[k] ** 2;
  return power;
}
