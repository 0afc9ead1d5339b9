import { unrounded } from '../../words/numbers.ts';
import { escapeMarkup } from '../markup.ts';
import { labelPlaces } from './labelPlaces.ts';
import type { Stroke } from './labelPlaces.ts';
import { PLOT_FONTS, roundTicks } from './plot.ts';
import type { Plot, PlotBand, PlotLine, PlotPalette, PlotPoint } from './plot.ts';

const LEFT = 76;
const RIGHT = 20;
const TOP = 44;
const BOTTOM = 58;

/** Size of a plot in its own pixels; letters keep theirs, so a small plot is one for a narrow place. */
interface PlotSize {
  readonly widthPx: number;
  readonly heightPx: number;
  /** About how many ticks have room along x. */
  readonly xTicks: number;
  /** Where the title begins, and how large its letters are. */
  readonly titlePx: number;
  readonly titleFontPx: number;
}

/** For paper and files. */
const LARGE: PlotSize = { widthPx: 640, heightPx: 400, xTicks: 7, titlePx: LEFT, titleFontPx: 16 };
/** For a telephone or a narrow card. */
const SMALL: PlotSize = { widthPx: 400, heightPx: 300, xTicks: 4, titlePx: 10, titleFontPx: 13 };

/** No point is drawn larger, from its middle. */
const POINT_PX = 6;

/** Up to so many points each is drawn, wherever it lies. */
const MOST_POINTS = 500;

/** Width over height of the area in which a plot's values lie. */
export function plotAspect(isSmall: boolean): number {
  const { widthPx, heightPx } = isSmall ? SMALL : LARGE;
  return (widthPx - LEFT - RIGHT) / (heightPx - TOP - BOTTOM);
}

interface Scale {
  readonly low: number;
  readonly high: number;
  readonly at: (value: number) => number;
}

/**
 * A plot as a self-contained SVG file: every colour and size is in it, every text is escaped.
 * @param isSmall  drawn for a place of about 400 px: the same letters around a smaller picture
 */
export function plotSvg(plot: Plot, palette: PlotPalette, isSmall = false): string {
  const size = isSmall ? SMALL : LARGE;
  const { widthPx, heightPx } = size;
  const xs = [
    ...plot.points.map((point) => point.x),
    ...plot.lines.flatMap((line) => line.points.map((point) => point.x)),
    ...plot.include.x,
  ];
  const ys = [
    ...plot.points.flatMap((point) => [point.y - (point.yBar ?? 0), point.y + (point.yBar ?? 0)]),
    ...plot.lines.flatMap((line) => line.points.map((point) => point.y)),
    ...plot.bands.flatMap((band) => band.points.flatMap((point) => [point.low, point.high])),
    ...plot.include.y,
  ];
  const x = scale(xs, LEFT, widthPx - RIGHT);
  const y = scale(ys, heightPx - BOTTOM, TOP);
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${widthPx} ${heightPx}" width="${widthPx}" height="${heightPx}" font-family="${PLOT_FONTS}" font-size="14" fill="${palette.ink}">`,
    `<title>${escapeMarkup(plot.title)}</title><desc>${escapeMarkup(plot.words)}</desc>`,
    `<rect width="${widthPx}" height="${heightPx}" fill="${palette.paper}"/>`,
    `<text x="${size.titlePx}" y="24" font-size="${size.titleFontPx}" font-weight="600">${escapeMarkup(plot.title)}</text>`,
    axes(plot, x, y, palette, size),
    ...plot.bands.map((band) => bandSvg(band, x, y, palette)),
    ...plot.lines.map((line) => lineSvg(line, x, y, palette)),
    ...pointsApart(plot.points, x, y).map((point) => pointSvg(point, x, y, palette)),
    labelsSvg(plot, x, y, widthPx - RIGHT),
    '</svg>',
  ].join('\n');
}

function scale(values: readonly number[], from: number, to: number): Scale {
  const lowest = values.length === 0 ? 0 : Math.min(...values);
  const highest = values.length === 0 ? 1 : Math.max(...values);
  const room = highest > lowest ? 0.06 * (highest - lowest) : Math.max(Math.abs(highest) * 0.01, 0.5);
  const low = lowest - room;
  const high = highest + room;
  return { low, high, at: (value) => from + ((value - low) / (high - low)) * (to - from) };
}

function axes(plot: Plot, x: Scale, y: Scale, palette: PlotPalette, size: PlotSize): string {
  const { widthPx, heightPx, xTicks } = size;
  const bottom = heightPx - BOTTOM;
  const middle = (LEFT + widthPx - RIGHT) / 2;
  const centre = (TOP + bottom) / 2;
  return [
    ...roundTicks(x.low, x.high, xTicks).map(
      (tick) =>
        `<path d="M${px(x.at(tick))} ${TOP}V${bottom}" stroke="${palette.line}"/><text x="${px(x.at(tick))}" y="${bottom + 20}" text-anchor="middle">${unrounded(tick)}</text>`,
    ),
    ...roundTicks(y.low, y.high, 6).map(
      (tick) =>
        `<path d="M${LEFT} ${px(y.at(tick))}H${widthPx - RIGHT}" stroke="${tick === 0 ? palette.ink : palette.line}"/><text x="${LEFT - 8}" y="${px(y.at(tick) + 5)}" text-anchor="end">${unrounded(tick)}</text>`,
    ),
    `<path d="M${LEFT} ${TOP}V${bottom}H${widthPx - RIGHT}" fill="none" stroke="${palette.ink}"/>`,
    `<text x="${middle}" y="${heightPx - 14}" text-anchor="middle">${escapeMarkup(plot.xLabel)}</text>`,
    `<text transform="translate(20 ${centre}) rotate(-90)" text-anchor="middle">${escapeMarkup(plot.yLabel)}</text>`,
  ].join('');
}

function bandSvg(band: PlotBand, x: Scale, y: Scale, palette: PlotPalette): string {
  const upper = band.points.map((point) => `${px(x.at(point.x))} ${px(y.at(point.high))}`);
  const lower = [...band.points].reverse().map((point) => `${px(x.at(point.x))} ${px(y.at(point.low))}`);
  return `<path d="M${[...upper, ...lower].join('L')}Z" fill="${palette.room}" fill-opacity="0.2"/>`;
}

function lineSvg(line: PlotLine, x: Scale, y: Scale, palette: PlotPalette): string {
  const path = line.points.map((point) => `${px(x.at(point.x))} ${px(y.at(point.y))}`).join('L');
  const dash = line.dash === null ? '' : ` stroke-dasharray="${line.dash}"`;
  return `<path d="M${path}" fill="none" stroke="${palette[line.colour]}" stroke-width="2"${dash}/>`;
}

/** Of very many points those that the eye tells apart: one for each half pixel and kind. */
function pointsApart(points: readonly PlotPoint[], x: Scale, y: Scale): readonly PlotPoint[] {
  if (points.length <= MOST_POINTS) return points;
  const seen = new Set<string>();
  return points.filter(({ x: atX, y: atY, shape, colour }) => {
    const name = `${Math.round(2 * x.at(atX))} ${Math.round(2 * y.at(atY))} ${shape} ${colour}`;
    return seen.size !== seen.add(name).size;
  });
}

function pointSvg(point: PlotPoint, x: Scale, y: Scale, palette: PlotPalette): string {
  const cx = px(x.at(point.x));
  const cy = px(y.at(point.y));
  const colour = palette[point.colour];
  const shapes = {
    disc: `<circle cx="${cx}" cy="${cy}" r="5" fill="${colour}"/>`,
    ring: `<circle cx="${cx}" cy="${cy}" r="5" fill="${palette.paper}" stroke="${colour}" stroke-width="2"/>`,
    cross: `<path d="M${cx} ${cy}m-5 -5l10 10m0 -10l-10 10" stroke="${colour}" stroke-width="2.5"/>`,
    diamond: `<path d="M${cx} ${cy}m0 -6l6 6l-6 6l-6 -6Z" fill="${colour}"/>`,
  };
  const bar =
    point.yBar === null
      ? ''
      : `<path d="M${cx} ${px(y.at(point.y - point.yBar))}V${px(y.at(point.y + point.yBar))}" stroke="${colour}" stroke-width="1.5"/>`;
  return bar + shapes[point.shape];
}

function labelsSvg(plot: Plot, x: Scale, y: Scale, rightPx: number): string {
  const labelled = plot.points.flatMap((point) =>
    point.label === null ? [] : [{ xPx: x.at(point.x), yPx: y.at(point.y), label: point.label }],
  );
  const places = labelPlaces(labelled, LEFT, rightPx, strokesOf(plot, x, y));
  return places
    .map(
      ({ xPx, yPx, anchor }, index) =>
        `<text x="${px(xPx)}" y="${px(yPx)}" font-size="12" text-anchor="${anchor}">${escapeMarkup(labelled[index]?.label ?? '')}</text>`,
    )
    .join('');
}

/** What a label would stand on: lines, points, and the bars of points. */
function strokesOf({ lines, points }: Plot, x: Scale, y: Scale): readonly Stroke[] {
  const ofLines = lines.flatMap((line) => {
    const places = line.points.map((point): Stroke['from'] => [x.at(point.x), y.at(point.y)]);
    return places.slice(1).map((to, index): Stroke => ({ from: places[index], to }));
  });
  const ofPoints = points.map((point): Stroke => {
    const barPx = Math.abs(y.at(point.y + (point.yBar ?? 0)) - y.at(point.y));
    const reachPx = Math.max(barPx, POINT_PX);
    const [xPx, yPx] = [x.at(point.x), y.at(point.y)];
    return { from: [xPx, yPx - reachPx], to: [xPx, yPx + reachPx] };
  });
  return [...ofLines, ...ofPoints];
}

function px(value: number): number {
  return Math.round(value * 10) / 10;
}
