import { svg } from 'lit';
import type { TemplateResult } from 'lit';
import { stemLabel } from '../../words/page/columnPicture.ts';
import { toPx } from './columnGeometry.ts';
import type { ColumnGeometry } from './columnGeometry.ts';
import type { Stem } from './columnScene.ts';

/** A stem that stands this high for a mark made by hand, and never lower than it can be seen. */
const PLAIN_HEIGHT_PX = 14;
const TALLEST_DB = 25;
/** More stems on one rule than these stand on each other. */
const MOST_STEMS = 300;

/** Marks as stems on the column: as tall as their rise, down to the rule, with order and length. */
export function stemsArt(geometry: ColumnGeometry, stems: readonly Stem[]): TemplateResult {
  const drawn = stems.length > MOST_STEMS ? apart(geometry, stems) : stems;
  const labelled = spacedLabels(geometry, drawn);
  return svg`${drawn.map((stem, index) => stemArt(geometry, stem, labelled[index] ?? false))}`;
}

/** Of very many stems those that can be told apart: in each pixel the tallest, an outlier before all others. */
function apart(geometry: ColumnGeometry, stems: readonly Stem[]): readonly Stem[] {
  const byPixel = new Map<string, Stem>();
  const rank = (stem: Stem): number => (stem.isOutlier ? 1000 : 0) + (stem.riseDb ?? 0);
  for (const stem of stems) {
    const name = `${Math.round(toPx(geometry, stem.lengthM))}${stem.isExcluded ? ' left out' : ''}`;
    const there = byPixel.get(name);
    if (there === undefined || rank(stem) > rank(there)) byPixel.set(name, stem);
  }
  return [...byPixel.values()];
}

function stemArt(geometry: ColumnGeometry, stem: Stem, isLabelled: boolean): TemplateResult {
  const { tubeTopPx, ruleTopPx } = geometry;
  const x = toPx(geometry, stem.lengthM);
  const tall =
    stem.riseDb === null
      ? PLAIN_HEIGHT_PX
      : 8 + (Math.min(Math.max(stem.riseDb, 0), TALLEST_DB) / TALLEST_DB) * 20;
  const top = tubeTopPx - tall;
  const look = stem.isExcluded ? 'stem left-out' : stem.isOutlier ? 'stem outlier' : 'stem';
  const state = stem.isUnsure ? `${look} unsure` : look;
  return svg`
    <g class=${state}>
      <path class="drop" d=${`M${x} ${tubeTopPx} V${ruleTopPx + 20}`} />
      <path class="post" d=${`M${x} ${tubeTopPx} V${top}`} />
      ${
        stem.isOutlier
          ? svg`<path class="head" d=${`M${x - 5} ${top - 5} L${x + 5} ${top + 5} M${x + 5} ${top - 5} L${x - 5} ${top + 5}`} />`
          : heads(stem.passes).map((dx) => svg`<circle class="head" cx=${x + dx} cy=${top} r="4" />`)
      }
      ${
        stem.fittedLengthM === null
          ? null
          : svg`<path class="fitted" d=${`M${toPx(geometry, stem.fittedLengthM)} ${ruleTopPx} l-5 -8 h10 Z`} />`
      }
      ${isLabelled ? svg`<text x=${x} y=${top - 9} text-anchor="middle">${stemLabel(stem)}</text>` : null}
    </g>
  `;
}

/** More passes of one resonance than these are told by their number alone. */
const MOST_HEADS = 5;

/** A head a pass, side by side about the stem, px. */
function heads(passes: number): readonly number[] {
  const count = Math.min(passes, MOST_HEADS);
  return Array.from({ length: count }, (_, index) => 11 * (index - (count - 1) / 2));
}

/** About how wide a letter of a label is. */
const LETTER_PX = 6;

/** Which labels have room: repeats of one resonance share the first one's. */
function spacedLabels(geometry: ColumnGeometry, stems: readonly Stem[]): boolean[] {
  const gapPx = geometry.isNarrow ? 8 : 40;
  let endPx = -Infinity;
  return stems.map((stem) => {
    const x = toPx(geometry, stem.lengthM);
    const halfPx = (stemLabel(stem).length * LETTER_PX) / 2;
    if (x - halfPx < endPx + gapPx) return false;
    endPx = x + halfPx;
    return true;
  });
}
