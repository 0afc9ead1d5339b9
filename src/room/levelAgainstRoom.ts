import type { ToneSeries } from '../tone/toneSeries.ts';

/** Narrow values on either side of a moment that make its level: 0.2 s in all. */
const HALF = 10;
const LEAST_FRAMES = 60;

/**
 * How the room's noise goes with the level in the fork's band: correlation of their logarithms over all flank frames.
 * A room knows nothing of the fork (about 0); a talker lights up both (above 0); an automatic gain turns the room
 * down whenever the fork is loud (below 0).
 * @returns −1..1; null for less than five seconds or no change at all
 */
export function levelAgainstRoom(series: ToneSeries): number | null {
  let [n, x, y, xx, yy, xy] = [0, 0, 0, 0, 0, 0];
  for (const frame of series.flanks) {
    const middle = Math.round(frame.timeS * series.rateHz);
    if (middle < HALF || middle + HALF >= series.length || !(frame.floorDensity > 0)) continue;
    let power = 0;
    for (let k = middle - HALF; k <= middle + HALF; k += 1) {
      power += (series.re[k] as number) ** 2 + (series.im[k] as number) ** 2;
    }
    if (!(power > 0)) continue;
    const level = Math.log(power);
    const room = Math.log(frame.floorDensity);
    n += 1;
    x += level;
    y += room;
    xx += level * level;
    yy += room * room;
    xy += level * room;
  }
  const varX = xx - (x * x) / n;
  const varY = yy - (y * y) / n;
  if (n < LEAST_FRAMES || !(varX > 0 && varY > 0)) return null;
  return (xy - (x * y) / n) / Math.sqrt(varX * varY);
}
