import { VALUES_PER_FRAME } from '../tone/sideBandNoise.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';

/** Narrow values on either side of a moment that make its level: 0.2 s in all. */
const HALF = 10;
const LEAST_FRAMES = 60;

/**
 * How the room's noise goes with the level in the fork's band: correlation of their logarithms over all flank frames
 * of a growing series. A room knows nothing of the fork (about 0); a talker lights up both (above 0); an automatic gain
 * turns the room down whenever the fork is loud (below 0).
 */
export class LevelAgainstRoom {
  readonly #series: ToneSeries;
  /** First frame that isn't counted yet: number 0 and 1 have too little before them. */
  #next = Math.ceil(HALF / VALUES_PER_FRAME);
  #frames = 0;
  /** Sums of the level, the room, their squares and their product. */
  readonly #sums = new Float64Array(5);

  constructor(series: ToneSeries) {
    this.#series = series;
  }

  /** As of the series' last value, −1..1; null for less than five seconds or no change at all. */
  correlation(): number | null {
    this.#advance();
    const n = this.#frames;
    const [x = 0, y = 0, xx = 0, yy = 0, xy = 0] = this.#sums;
    const varX = xx - (x * x) / n;
    const varY = yy - (y * y) / n;
    if (n < LEAST_FRAMES || !(varX > 0 && varY > 0)) return null;
    return (xy - (x * y) / n) / Math.sqrt(varX * varY);
  }

  #advance(): void {
    const { flanks, length } = this.#series;
    for (; this.#next < flanks.length; this.#next += 1) {
      const middle = this.#next * VALUES_PER_FRAME;
      if (middle + HALF >= length) return;
      this.#count(bandPower(this.#series, middle), flanks.floor[this.#next]);
    }
  }

  #count(power: number, floorDensity: number): void {
    if (!(power > 0 && floorDensity > 0)) return;
    const sums = this.#sums;
    const level = Math.log(power);
    const room = Math.log(floorDensity);
    this.#frames += 1;
    sums[0] = sums[0] + level;
    sums[1] = sums[1] + room;
    sums[2] = sums[2] + level * level;
    sums[3] = sums[3] + room * room;
    sums[4] = sums[4] + level * room;
  }
}

/** Sum of |value|² around one. */
function bandPower({ re, im }: ToneSeries, middle: number): number {
  let power = 0;
  for (let k = middle - HALF; k <= middle + HALF; k += 1) {
    power += re[k] ** 2 + im[k] ** 2;
  }
  return power;
}
