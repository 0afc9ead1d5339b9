import { lowerMedian } from '../numeric/quickselect.ts';
import type { ToneSegment } from '../tone/toneSegment.ts';

/** Blocks whose levels tell how a sounding dies, s. */
const BLOCK_S = 0.2;
/** What the strike's clang may cover, s. */
const CLANG_S = 0.3;
/** Fewest blocks, and fewest pairs of them. */
const LEAST_BLOCKS = 8;
const LEAST_PAIRS = 6;
/** Of a long sounding about so many blocks are used: their pairs grow with the square. */
const USED_BLOCKS = 60;
/** Slower than this is no dying, s. */
const LONGEST_S = 120;

/**
 * Time in which the amplitude falls to 1/e, from a robust line through the logarithm of the level (Theil–Sen: the
 * median of all pairwise slopes; Sen 1968, J. Am. Stat. Assoc. 63, 1379): up to a quarter of outliers (passages, turns
 * of the fork) does no harm.
 * @param sounding  from its strike on
 * @returns s; null where the sounding is too short or doesn't fall
 */
export function decayTimeS(sounding: ToneSegment): number | null {
  const { rateHz } = sounding;
  const block = Math.round(BLOCK_S * rateHz);
  const start = sounding.from + Math.round(CLANG_S * rateHz);
  const count = Math.floor((sounding.to - start) / block);
  if (count < LEAST_BLOCKS) return null;
  const stride = Math.max(1, Math.floor(count / USED_BLOCKS));
  const levels = Float64Array.from({ length: Math.ceil(count / stride) }, (_, b) =>
    levelNp(sounding, start + b * stride * block, block),
  );
  const apart = Math.max(1, Math.ceil((1.01 * rateHz) / (stride * block)));
  const slopes = pairwiseSlopes(levels, apart, stride * block, rateHz);
  if (slopes.length < LEAST_PAIRS) return null;
  const slope = lowerMedian(slopes);
  return slope < -1 / LONGEST_S ? -1 / slope : null;
}

/** ln of the rms amplitude of `count` values. */
function levelNp({ re, im }: ToneSegment, from: number, count: number): number {
  let sum = 0;
  for (let k = from; k < from + count; k += 1) sum += re[k] ** 2 + im[k] ** 2;
  return 0.5 * Math.log(sum / count + 1e-30);
}

/**
 * Slopes per s between all pairs of levels that are `apart` places from each other or more.
 * @param step  values of the stream from one level to the next
 */
function pairwiseSlopes(levels: Float64Array, apart: number, step: number, rateHz: number): Float64Array {
  const most = Math.max(0, levels.length - apart);
  const slopes = new Float64Array((most * (most + 1)) / 2);
  let pairs = 0;
  for (let i = 0; i < levels.length; i += 1) {
    for (let j = i + apart; j < levels.length; j += 1) {
      slopes[pairs] = (levels[j] - levels[i]) / (((j - i) * step) / rateHz);
      pairs += 1;
    }
  }
  return slopes;
}
