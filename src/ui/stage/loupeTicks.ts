import type { RuleTick } from './columnGeometry.ts';

const WIDTH_PX = 240;
const PX_PER_MM = 9;

/** Millimetre ticks of the rule around a reading, which stands in the middle of 240 px. */
export function loupeTicks(readingM: number): readonly RuleTick[] {
  const centreMm = readingM * 1000;
  const halfMm = WIDTH_PX / 2 / PX_PER_MM;
  const ticks: RuleTick[] = [];
  for (let mm = Math.max(Math.ceil(centreMm - halfMm), 0); mm <= centreMm + halfMm; mm += 1) {
    ticks.push({
      atPx: WIDTH_PX / 2 + (mm - centreMm) * PX_PER_MM,
      heightPx: mm % 10 === 0 ? 26 : mm % 5 === 0 ? 20 : 13,
      label: mm % 10 === 0 ? String(mm / 10) : null,
    });
  }
  return ticks;
}
