import { quickselect } from '../numeric/quickselect.ts';
import type { ToneSeries } from '../tone/toneSeries.ts';

/**
 * Median noise of one narrow value, mean square.
 * @param frames  how many of the newest side-band frames count
 */
export function medianNoise(series: ToneSeries, frames = Infinity): number {
  const { near, length } = series.sideBands;
  const count = Math.min(frames, length);
  if (count === 0) return 0;
  return quickselect(near.slice(length - count, length), count >> 1) * series.bandwidthHz;
}
