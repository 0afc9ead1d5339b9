/** A stretch of the narrow stream: values [from, to) of `re` and `im`, `rateHz` of them a second. */
export interface ToneSegment {
  readonly re: ArrayLike<number>;
  readonly im: ArrayLike<number>;
  readonly from: number;
  readonly to: number;
  readonly rateHz: number;
}
