import { svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { ColumnGeometry } from './columnGeometry.ts';

/** The fork before the mouth, or away from it; drawn double while it sounds. */
export function forkArt(
  geometry: ColumnGeometry,
  fork: { readonly label: string; readonly isSounding: boolean; readonly isAtMouth: boolean },
): TemplateResult {
  const { tubeTopPx, tubeBottomPx, zeroPx, isNarrow } = geometry;
  const gap = isNarrow ? 9 : 13;
  const x = zeroPx - (isNarrow ? 12 : 22) - gap / 2 - (fork.isAtMouth ? 0 : isNarrow ? 10 : 26);
  const middle = (tubeTopPx + tubeBottomPx) / 2;
  const top = middle - (isNarrow ? 22 : 32) - (fork.isAtMouth ? 0 : 14);
  // On a phone the label begins before the mouth and would run into the wall.
  const labelPx = isNarrow ? Math.min(top - 10, tubeTopPx - 8) : top - 10;
  const bend = top + (isNarrow ? 34 : 50);
  const stem = bend + gap / 2 + (isNarrow ? 20 : 30);
  const tines = (spread: number): string =>
    `M${x - gap / 2 - spread} ${top} V${bend} a${gap / 2 + spread} ${gap / 2} 0 0 0 ${gap + 2 * spread} 0 V${top}`;
  return svg`
    <g class=${fork.isAtMouth ? 'fork' : 'fork away'}>
      ${fork.isSounding ? svg`<path class="swing" d=${tines(isNarrow ? 2.5 : 4)} />` : null}
      <path class="tines" d=${tines(0)} />
      <path class="tines" d=${`M${x} ${bend + gap / 2} V${stem}`} />
      <text class="fork-label" x=${isNarrow ? 2 : x} y=${labelPx} text-anchor=${isNarrow ? 'start' : 'middle'}>${fork.label}</text>
    </g>
  `;
}
