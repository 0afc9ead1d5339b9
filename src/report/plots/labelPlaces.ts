/** A point with a label, in pixels. */
export interface LabelledPoint {
  readonly xPx: number;
  readonly yPx: number;
  readonly label: string;
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

/**
 * Places labels beside their points, so that none stands on another where that can be helped: above or below at the
 * right, at the left where the right has no room. In the points' order.
 */
export function labelPlaces(
  points: readonly LabelledPoint[],
  leftPx: number,
  rightPx: number,
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
    const best = all.find(isFree) ?? all.at(0);
    if (best === undefined) throw new RangeError('a label has four places');
    taken.push(best);
    return best.place;
  });
}
