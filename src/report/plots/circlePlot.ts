import type { Complex } from '../../numeric/complex.ts';
import { loudestPlace, phasorAt } from '../../resonance/following/loudestPlace.ts';
import { circlePlotWords } from '../../words/circle.ts';
import { laterWords } from '../../words/inUse.ts';
import type { Picture } from './picture.ts';
import type { Plot, PlotLine, PlotPoint } from './plot.ts';
import { plotAspect, plotSvg } from './plotSvg.ts';

/** How far the path is drawn to either side, half widths, and in how many steps. */
const REACH = 6;
const STEPS = 160;

/**
 * The path of the sound at the microphone as a column slides through resonance, drawn to one scale in both directions.
 * @param share  the column's part over the fork's direct sound at resonance
 * @param name  whose circle it is
 */
export function circlePicture(share: Complex, name: string): Picture {
  const plot = (isSmall: boolean): Plot => circlePlot(share, name, plotAspect(isSmall));
  const { title, words } = plot(false);
  return { title, words, svg: (palette, isSmall) => plotSvg(plot(isSmall), palette, isSmall) };
}

/** @param aspect  width over height of the area: a circle stays one */
export function circlePlot(share: Complex, name: string, aspect: number): Plot {
  const place = loudestPlace(share);
  const path = Array.from({ length: STEPS + 1 }, (_, i) => pathPoint(share, (2 * i) / STEPS - 1));
  const ends = [{ x: 0, y: 0 }, { x: 1, y: 0 }, ...path];
  return {
    title: laterWords.circlePlot.title(name),
    xLabel: laterWords.circlePlot.x,
    yLabel: laterWords.circlePlot.y,
    words: circlePlotWords(
      Math.hypot(share.re, share.im),
      (180 / Math.PI) * Math.atan2(share.im, share.re),
      place?.halfWidths ?? null,
    ),
    points: [
      point(0, 0, 'cross', 'soft', laterWords.circlePlot.silence),
      point(1, 0, 'ring', 'room', laterWords.circlePlot.direct),
      at(share, 0, 'diamond', 'ink', laterWords.circlePlot.resonance),
      ...(place === null ? [] : [at(share, place.halfWidths, 'disc', 'tone', laterWords.circlePlot.loudest)]),
      at(share, -1, 'cross', 'ink', laterWords.circlePlot.tooShort),
      at(share, 1, 'cross', 'ink', laterWords.circlePlot.tooLong),
    ],
    lines: [
      { points: path, dash: null, colour: 'tone' },
      ...(place === null ? [] : [fromZero(share, place.halfWidths)]),
    ],
    bands: [],
    include: equalScales(ends, aspect),
  };
}

/** Evenly spaced along the circle, not along the rule. @param part  -1..1 */
function pathPoint(share: Complex, part: number): { readonly x: number; readonly y: number } {
  const { re, im } = phasorAt(share, Math.tan(part * Math.atan(REACH)));
  return { x: re, y: im };
}

function fromZero(share: Complex, halfWidths: number): PlotLine {
  const { re, im } = phasorAt(share, halfWidths);
  return {
    points: [
      { x: 0, y: 0 },
      { x: re, y: im },
    ],
    dash: '6 4',
    colour: 'soft',
  };
}

type Look = [shape: PlotPoint['shape'], colour: PlotPoint['colour'], label: string];

function at(share: Complex, halfWidths: number, ...look: Look): PlotPoint {
  const { re, im } = phasorAt(share, halfWidths);
  return point(re, im, ...look);
}

const point = (x: number, y: number, ...[shape, colour, label]: Look): PlotPoint => ({
  x,
  y,
  yBar: null,
  shape,
  colour,
  label,
});

/** What must be in sight so that a step to the right is as long as one upwards. */
function equalScales(
  points: readonly { readonly x: number; readonly y: number }[],
  aspect: number,
): Plot['include'] {
  const xs = points.map(({ x }) => x);
  const ys = points.map(({ y }) => y);
  const width = Math.max(...xs) - Math.min(...xs);
  const height = Math.max(...ys) - Math.min(...ys);
  const wide = Math.max(width, height * aspect);
  const around = (values: readonly number[], size: number): readonly number[] => {
    const middle = (Math.min(...values) + Math.max(...values)) / 2;
    return [middle - size / 2, middle + size / 2];
  };
  return { x: around(xs, wide), y: around(ys, wide / aspect) };
}
