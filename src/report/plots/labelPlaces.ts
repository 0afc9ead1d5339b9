/** A point with a label, in pixels. */
export interface LabelledPoint {
  readonly xPx: number;
  readonly yPx: number;
  readonly label: string;
}

/** A straight piece of something drawn, in pixels. */
export interface Stroke {
  readonly from: readonly [xPx: number, yPx: number];
  readonly to: readonly [xPx: number, yPx: number];
}

/** Where a label stands: its start or its end, and its base line, in pixels. */
export interface LabelPlace {
  readonly xPx: number;
  readonly yPx: number;
  readonly anchor: 'start' | 'end';
}

/** Of a letter 12 px high, on the average. Estimated, no source. */
const LETTER_PX = 6.6;
const LINE_PX = 12;
const ASIDE_PX = 9;
const ABOVE_PX = 7;
const BELOW_PX = 16;
/** How far a letter reaches above and below its base line, with a little air. Estimated, no source. */
const RISES_PX = 11;
const FALLS_PX = 4;

/**
 * Places labels beside their points, above or below at the right, at the left where the right has no room. None stands
 * on another where that can be helped, and then none on a stroke. In the points' order.
 * @param strokes  what else is drawn
 */
export function labelPlaces(
  points: readonly LabelledPoint[],
  leftPx: number,
  rightPx: number,
  strokes: readonly Stroke[] = [],
): readonly LabelPlace[] {
  const taken: { readonly fromPx: number; readonly toPx: number; readonly yPx: number }[] = [];
  return points.map(({ xPx, yPx, label }) => {
    const widthPx = label.length * LETTER_PX;
    const fitsRight = xPx + ASIDE_PX + widthPx <= rightPx;
    const fitsLeft = xPx - ASIDE_PX - widthPx >= leftPx;
    const isLeftFirst = !fitsRight && (fitsLeft || xPx - leftPx > rightPx - xPx);
    const sides = isLeftFirst ? [true, false] : [false, true];
    const all = sides.flatMap((isLeft) =>
      [-ABOVE_PX, BELOW_PX].map((downPx) => {
        const atPx = isLeft ? xPx - ASIDE_PX : xPx + ASIDE_PX;
        return {
          fromPx: isLeft ? atPx - widthPx : atPx,
          toPx: isLeft ? atPx : atPx + widthPx,
          yPx: yPx + downPx,
          place: { xPx: atPx, yPx: yPx + downPx, anchor: isLeft ? 'end' : 'start' } as const,
        };
      }),
    );
    const isFree = (one: (typeof all)[number]): boolean =>
      one.fromPx >= leftPx &&
      one.toPx <= rightPx &&
      taken.every(
        (other) =>
          one.toPx < other.fromPx || one.fromPx > other.toPx || Math.abs(one.yPx - other.yPx) >= LINE_PX,
      );
    const free = all.filter(isFree);
    const best =
      free.find((one) => !strokes.some((stroke) => isCrossed(one, stroke))) ?? free.at(0) ?? all.at(0);
    if (best === undefined) throw new RangeError('a label has four places');
    taken.push(best);
    return best.place;
  });
}

/** Whether a stroke goes through a label: where it is beside its letters, is it between their top and foot? */
function isCrossed(
  label: { readonly fromPx: number; readonly toPx: number; readonly yPx: number },
  { from, to }: Stroke,
): boolean {
  const [left, right] = from[0] <= to[0] ? [from, to] : [to, from];
  const beginPx = Math.max(left[0], label.fromPx);
  const endPx = Math.min(right[0], label.toPx);
  if (beginPx > endPx) return false;
  const widthPx = right[0] - left[0];
  const yAt = (xPx: number): number => left[1] + ((xPx - left[0]) / widthPx) * (right[1] - left[1]);
  const ends = widthPx === 0 ? [left[1], right[1]] : [yAt(beginPx), yAt(endPx)];
  return Math.max(...ends) >= label.yPx - RISES_PX && Math.min(...ends) <= label.yPx + FALLS_PX;
}
