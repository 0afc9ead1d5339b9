import { svg } from 'lit';
import type { TemplateResult } from 'lit';
import { words } from '../../words/inUse.ts';
import { toPx } from './columnGeometry.ts';
import type { ColumnGeometry } from './columnGeometry.ts';
import type { WavePoint } from './columnScene.ts';

export interface TubeLook {
  readonly ends: 'closed' | 'open';
  /** Rule reading at the mouth. */
  readonly mouthM: number;
  /** Rule reading at the piston, or at the far open end. */
  readonly farEndM: number;
}

/** The tube's walls alone, where nobody knows how long the column is. @param mouthM  rule reading at the mouth */
export function wallsArt(geometry: ColumnGeometry, mouthM: number): TemplateResult {
  const { tubeTopPx: top, tubeBottomPx: bottom, travelM } = geometry;
  const mouth = toPx(geometry, mouthM);
  const end = toPx(geometry, travelM);
  return svg`<path class="wall" d=${`M${mouth} ${top} H${end} M${mouth} ${bottom} H${end}`} />`;
}

/** The tube's walls with its piston, or with the sleeve that slides at an open end. */
export function tubeArt(geometry: ColumnGeometry, look: TubeLook): TemplateResult {
  const { tubeTopPx: top, tubeBottomPx: bottom, widthPx } = geometry;
  const mouth = toPx(geometry, look.mouthM);
  const far = toPx(geometry, look.farEndM);
  const middle = (top + bottom) / 2;
  if (look.ends === 'open') {
    // The outer tube is half the column; a sleeve slides out of it.
    const sleeveFrom = mouth + (far - mouth) * 0.5;
    return svg`
      <path class="wall" d=${`M${mouth} ${top} H${sleeveFrom + 24} M${mouth} ${bottom} H${sleeveFrom + 24}`} />
      <path class="wall sleeve" d=${`M${sleeveFrom} ${top + 5} H${far} M${sleeveFrom} ${bottom - 5} H${far}`} />
      <circle class="handle" cx=${far} cy=${bottom - 5} r="7" />
    `;
  }
  return svg`
    ${wallsArt(geometry, look.mouthM)}
    <rect class="piston" x=${far} y=${top + 2} width="12" height=${bottom - top - 4} rx="2" />
    <path class="rod" d=${`M${far + 12} ${middle} H${widthPx - 6}`} />
  `;
}

/** The standing wave as the band that it fills between its two extremes, from the mouth to the far end. */
export function waveArt(
  geometry: ColumnGeometry,
  wave: readonly WavePoint[],
  look: TubeLook & { readonly strength: number; readonly quantity: 'pressure' | 'displacement' },
): TemplateResult {
  const { tubeTopPx: top, tubeBottomPx: bottom } = geometry;
  const middle = (top + bottom) / 2;
  const reach = (bottom - top) / 2 - 6;
  const at = (point: WavePoint, sign: 1 | -1): string =>
    `${toPx(geometry, look.mouthM + point.atM).toFixed(1)} ${(middle + sign * reach * point.size * (0.25 + 0.75 * look.strength)).toFixed(1)}`;
  const upper = wave.map((point) => at(point, -1)).join(' L');
  const lower = [...wave]
    .reverse()
    .map((point) => at(point, 1))
    .join(' L');
  return svg`
    <path class=${`wave ${look.quantity}`} d=${`M${upper} L${lower} Z`}
      .style=${`--strength:${look.strength.toFixed(2)}`} />
  `;
}

/** Nodes (a bar) and antinodes (a ring) of the displacement along the column's middle. */
export function nodesArt(
  geometry: ColumnGeometry,
  places: readonly { readonly atM: number; readonly kind: 'node' | 'antinode' }[],
  mouthM: number,
): TemplateResult {
  const { tubeTopPx: top, tubeBottomPx: bottom } = geometry;
  const middle = (top + bottom) / 2;
  return svg`${places.map(({ atM, kind }) => {
    const x = toPx(geometry, mouthM + atM);
    return kind === 'node'
      ? svg`<g class="node"><path d=${`M${x} ${middle - 9} V${middle + 9}`} /><text x=${x + 5} y=${middle - 10}>${words.columnLabels.node}</text></g>`
      : svg`<g class="node"><circle cx=${x} cy=${middle} r="4.5" /><text x=${x + 5} y=${middle - 10}>${words.columnLabels.antinode}</text></g>`;
  })}`;
}

/** Faint hatched bands where a resonance may be expected, with their order. */
export function expectedArt(
  geometry: ColumnGeometry,
  expected: readonly {
    readonly order: number;
    readonly lengthM: number;
    readonly standardUncertaintyM: number;
  }[],
): TemplateResult {
  const { tubeTopPx: top, ruleBottomPx } = geometry;
  return svg`${expected.map((place) => {
    const half = Math.max(2 * place.standardUncertaintyM * geometry.pxPerM, 4);
    const x = toPx(geometry, place.lengthM);
    return svg`<rect class="expected" x=${x - half} y=${top + 3} width=${2 * half} height=${ruleBottomPx - top - 3} />`;
  })}`;
}
