import { svg } from 'lit';
import type { TemplateResult } from 'lit';
import { words } from '../../words/inUse.ts';
import { ruleTicks } from './columnGeometry.ts';
import type { ColumnGeometry } from './columnGeometry.ts';

/** The metre rule under the column, to scale. */
export function ruleArt(geometry: ColumnGeometry): TemplateResult {
  const { ruleTopPx, ruleBottomPx, zeroPx, widthPx } = geometry;
  return svg`
    <rect class="rule" x=${zeroPx - 8} y=${ruleTopPx} width=${Math.max(widthPx - zeroPx + 4, 0)}
      height=${ruleBottomPx - ruleTopPx} rx="2" />
    ${ruleTicks(geometry).map(
      (tick) => svg`
        <line class="tick" x1=${tick.atPx} x2=${tick.atPx} y1=${ruleTopPx} y2=${ruleTopPx + tick.heightPx} />
        ${
          tick.label === null
            ? null
            : svg`<text class="tick-label" x=${tick.atPx} y=${ruleBottomPx - 6} text-anchor="middle">${tick.label}</text>`
        }`,
    )}
    <text class="tick-unit" x=${zeroPx - 12} y=${ruleBottomPx - 6} text-anchor="end">${words.columnLabels.unit}</text>
  `;
}
