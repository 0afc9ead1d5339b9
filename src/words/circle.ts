import { laterWords } from './inUse.ts';
import { fixed } from './numbers.ts';

/** Nearer than this the loudest place is the resonance, half widths: what is said has two decimals. */
const ALIKE = 0.005;

/** Where the loudest place of a resonance lies beside it. */
export interface SpokenLoudest {
  /** From the resonance, > 0 where a column that is read there is too long. */
  readonly halfWidths: number;
  /** The same in metres; null where order, tube or fork isn't known. */
  readonly offsetM: number | null;
  /** Above the level at the resonance. */
  readonly louderDb: number;
}

/** How far the loudest place lies beside the resonance; null: no place is loudest. */
export function loudestPlaceWords(loudest: SpokenLoudest | null): string {
  const said = laterWords.circle;
  if (loudest === null) return said.nowhere;
  const { halfWidths, offsetM, louderDb } = loudest;
  if (Math.abs(halfWidths) < ALIKE) return said.alike;
  const side = halfWidths > 0 ? said.tooLong : said.tooShort;
  const [size, decibels] = [Math.abs(halfWidths), fixed(louderDb, 1)];
  return offsetM === null
    ? side.inHalfWidths(size, decibels)
    : side.inMillimetres(size, fixed(Math.abs(offsetM) * 1000, 1), decibels);
}

/**
 * What the picture of the circle shows.
 * @param size  the column's sound over the fork's own at resonance
 * @param angleDegrees  by which it is ahead
 * @param loudestHalfWidths  from resonance to the loudest place, > 0 too long; null where none is loudest
 */
export function circlePlotWords(
  size: number,
  angleDegrees: number,
  loudestHalfWidths: number | null,
): string {
  const said = laterWords.circlePlot;
  const part = angleDegrees < 0 ? said.behind : said.ahead;
  return [
    said.way,
    part(fixed(size, 1), fixed(Math.abs(angleDegrees), 0)),
    ...(loudestHalfWidths === null ? [] : [loudestInPlot(loudestHalfWidths)]),
  ].join(' ');
}

function loudestInPlot(halfWidths: number): string {
  const said = laterWords.circlePlot;
  if (Math.abs(halfWidths) < ALIKE) return said.loudestAlike;
  const side = halfWidths > 0 ? said.loudestTooLong : said.loudestTooShort;
  return side(fixed(Math.abs(halfWidths), 2));
}
