import { escapeMarkup } from '../report/markup.ts';
import type { Picture } from '../report/plots/picture.ts';
import { PLOT_FONTS, roundTicks } from '../report/plots/plot.ts';
import type { PlotPalette } from '../report/plots/plot.ts';
import { speedLabel, spreadWords } from '../words/classroom.ts';
import { laterWords } from '../words/inUse.ts';
import { unrounded } from '../words/numbers.ts';
import type { ClassResult } from './classResult.ts';

const WIDTH = 760;
const LEFT = 150;
const RIGHT = 24;
const TOP = 48;
const BOTTOM = 52;
/** Names are legible up to this many groups; more stand closer, without names. */
const MOST_NAMED = 40;
/** A group beyond this many half widths of the usual ones is drawn at the edge, m/s. */
const WIDEST = 4;

/** The picture of a class's spread. */
export function spreadPicture(result: ClassResult): Picture {
  return {
    title: laterWords.spreadPicture.title,
    words: spreadWords(result),
    svg: (palette) => spreadSvg(result, palette),
  };
}

/** Every group's speed with its 95 % interval, sorted, over the class's band; a whole SVG file. */
export function spreadSvg(result: ClassResult, palette: PlotPalette): string {
  const { pooled } = result;
  const shown = result.rows
    .flatMap((row) =>
      row.speedMps === null || row.standardUncertaintyMps === null
        ? []
        : [{ row, speedMps: row.speedMps, halfMps: 2 * row.standardUncertaintyMps }],
    )
    .sort((one, other) => one.speedMps - other.speedMps);
  const isNamed = shown.length <= MOST_NAMED;
  const rowHeight = isNamed ? 20 : Math.max(2, 800 / Math.max(shown.length, 1));
  const height = Math.round(TOP + BOTTOM + Math.max(shown.length, 3) * rowHeight);
  const usual = shown.filter(({ row }) => row.state === 'counted');
  const ends = (usual.length > 0 ? usual : shown).flatMap((one) => [
    one.speedMps - one.halfMps,
    one.speedMps + one.halfMps,
  ]);
  const middle = pooled?.value ?? 343;
  const half = Math.max(1, ...ends.map((end) => Math.abs(end - middle)));
  const reach = Math.min(
    WIDEST * half,
    Math.max(half, ...shown.map(({ speedMps }) => Math.abs(speedMps - middle))) * 1.05,
  );
  const [low, high] = [middle - reach, middle + reach];
  const x = (mps: number): number =>
    Math.round(
      (LEFT + ((Math.min(Math.max(mps, low), high) - low) / (high - low)) * (WIDTH - LEFT - RIGHT)) * 10,
    ) / 10;
  const bottom = height - BOTTOM;
  const ticks = roundTicks(low, high, 8).map(
    (tick) =>
      `<path d="M${x(tick)} ${TOP}V${bottom}" stroke="${palette.line}"/><text x="${x(tick)}" y="${bottom + 20}" text-anchor="middle">${unrounded(tick)}</text>`,
  );
  const band =
    pooled === null
      ? ''
      : `<rect x="${x(pooled.value - pooled.expandedUncertainty)}" y="${TOP}" width="${Math.max(1, x(pooled.value + pooled.expandedUncertainty) - x(pooled.value - pooled.expandedUncertainty))}" height="${bottom - TOP}" fill="${palette.room}" fill-opacity="0.25"/><path d="M${x(pooled.value)} ${TOP}V${bottom}" stroke="${palette.room}" stroke-width="2"/>`;
  const radius = isNamed ? 5 : Math.min(4, Math.max(1.5, rowHeight / 2));
  const points = shown.map(({ row, speedMps, halfMps }, index) => {
    const y = Math.round((TOP + (index + 0.5) * rowHeight) * 10) / 10;
    const isOut = row.state === 'outlying';
    const colour = row.state === 'counted' ? palette.tone : isOut ? palette.ink : palette.soft;
    const at = x(speedMps);
    const shape = isOut
      ? `<path d="M${at} ${y}m-5 -5l10 10m0 -10l-10 10" stroke="${colour}" stroke-width="2.5"/>`
      : `<circle cx="${at}" cy="${y}" r="${radius}" fill="${row.state === 'counted' ? colour : palette.paper}" stroke="${colour}"/>`;
    // Beyond the picture's edge: the number stands for the place.
    const isBeyond = speedMps < low || speedMps > high;
    const beyond =
      isBeyond && isNamed
        ? `<text x="${speedMps > high ? at - 12 : at + 12}" y="${y + 4}" text-anchor="${speedMps > high ? 'end' : 'start'}" font-size="12">${speedLabel(speedMps)} ${speedMps > high ? '→' : '←'}</text>`
        : '';
    const name = isNamed
      ? `<text x="${LEFT - 10}" y="${y + 4}" text-anchor="end" font-size="12">${escapeMarkup(short(row.group.source.name))}</text>`
      : '';
    return `<path d="M${x(speedMps - halfMps)} ${y}H${x(speedMps + halfMps)}" stroke="${colour}" stroke-width="${isNamed ? 1.5 : 0.8}"/>${shape}${name}${beyond}`;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${WIDTH} ${height}" width="${WIDTH}" height="${height}" font-family="${PLOT_FONTS}" font-size="14" fill="${palette.ink}">`,
    `<title>${escapeMarkup(laterWords.spreadPicture.title)}</title><desc>${escapeMarkup(spreadWords(result))}</desc>`,
    `<rect width="${WIDTH}" height="${height}" fill="${palette.paper}"/>`,
    `<text x="16" y="26" font-size="16" font-weight="600">${escapeMarkup(laterWords.spreadPicture.heading)}</text>`,
    ...ticks,
    band,
    ...points,
    `<text x="${(LEFT + WIDTH - RIGHT) / 2}" y="${height - 12}" text-anchor="middle">${escapeMarkup(laterWords.spreadPicture.axis)}</text>`,
    '</svg>',
  ].join('\n');
}

function short(name: string): string {
  return name.length > 20 ? `${name.slice(0, 19)}…` : name;
}
