import type { ToldPlace } from '../../session/hearing/wayBack.ts';

/** So many half widths lie between the centre and either end of the drawn piece of rule. */
const REACH_HALF_WIDTHS = 5;
const MIDDLE_PX = 150;
const REACH_PX = 140;
const TICK_M = 0.001;

/** Where a column so far from resonance ends in the picture, px; what is farther stands at its edge. */
export function wayBackX(halfWidths: number): number {
  const share = Math.min(Math.max(halfWidths / REACH_HALF_WIDTHS, -1), 1);
  return MIDDLE_PX + share * REACH_PX;
}

/** The rule's millimetres in the picture, px; half widths where they aren't known. */
export function ticksOf(place: ToldPlace | null): readonly number[] {
  const perM = place === null || place.distanceM === null ? null : place.halfWidths / place.distanceM;
  const step = perM === null || !Number.isFinite(perM) ? 1 : TICK_M * perM;
  const each = Math.floor(REACH_HALF_WIDTHS / step);
  return Array.from({ length: 2 * each + 1 }, (_, index) => wayBackX((index - each) * step));
}
