/** Where things stand in the column's picture, in CSS pixels. The length axis is to scale, the width isn't. */
export interface ColumnGeometry {
  readonly widthPx: number;
  readonly heightPx: number;
  /** The open rim: zero of the rule. */
  readonly zeroPx: number;
  readonly pxPerM: number;
  readonly travelM: number;
  /** Upper and lower inner wall. */
  readonly tubeTopPx: number;
  readonly tubeBottomPx: number;
  readonly ruleTopPx: number;
  readonly ruleBottomPx: number;
  readonly isNarrow: boolean;
}

/** The picture for a column of `travelM` in a box of this width. */
export function columnGeometry(widthPx: number, travelM: number): ColumnGeometry {
  const isNarrow = widthPx < 560;
  const zeroPx = isNarrow ? 44 : 96;
  const rightPx = isNarrow ? 14 : 36;
  const tubeTopPx = 46;
  const tubeBottomPx = tubeTopPx + (isNarrow ? 62 : 84);
  const ruleTopPx = tubeBottomPx + 12;
  const ruleBottomPx = ruleTopPx + 36;
  return {
    widthPx,
    heightPx: ruleBottomPx + 2,
    zeroPx,
    pxPerM: Math.max(widthPx - zeroPx - rightPx, 60) / travelM,
    travelM,
    tubeTopPx,
    tubeBottomPx,
    ruleTopPx,
    ruleBottomPx,
    isNarrow,
  };
}

/** Pixels from the left for a reading on the rule. */
export function toPx(geometry: ColumnGeometry, readingM: number): number {
  return geometry.zeroPx + readingM * geometry.pxPerM;
}

export interface RuleTick {
  readonly atPx: number;
  readonly heightPx: number;
  /** Printed centimetres; null on a bare tick. */
  readonly label: string | null;
}

/** Ticks of the rule: as fine as they stay apart, numbered as often as the numbers have room. */
export function ruleTicks(geometry: ColumnGeometry): readonly RuleTick[] {
  const pxPerMm = geometry.pxPerM / 1000;
  const stepMm = [1, 2, 5, 10, 20, 50].find((step) => step * pxPerMm >= 3) ?? 100;
  const labelMm = [10, 20, 50, 100, 200, 500].find((step) => step * pxPerMm >= 34) ?? 1000;
  const ticks: RuleTick[] = [];
  for (let mm = 0; mm <= geometry.travelM * 1000 + 0.01; mm += stepMm) {
    const heightPx = mm % 100 === 0 ? 16 : mm % 10 === 0 ? 12 : mm % 5 === 0 ? 9 : 6;
    const label = mm % labelMm === 0 ? String(mm / 10) : null;
    ticks.push({ atPx: toPx(geometry, mm / 1000), heightPx, label });
  }
  return ticks;
}
