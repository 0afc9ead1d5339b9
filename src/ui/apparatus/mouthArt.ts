import { svg } from 'lit';
import type { TemplateResult } from 'lit';
import type { MouthShape } from '../../air/mouth.ts';

/** Inner walls of the drawn tube, its mouth at x = 34. */
const TOP = 18;
const BOTTOM = 46;
const MOUTH = 34;
const END = 92;

/** How far the column acts beyond the rim, px: the tube's radius is 14. */
const REACH: Readonly<Record<Exclude<MouthShape, 'ideal'>, number>> = {
  'thin-rim': 8.6,
  'thick-rim': 9.7,
  flange: 11.5,
  obstructed: 10.6,
};

/** A tube's mouth from the side, with the sound that reaches beyond it. @param mouth  null: not described */
export function mouthArt(mouth: MouthShape | null): TemplateResult {
  return svg`${wallsArt(mouth)}${reachArt(mouth)}`;
}

function wallsArt(mouth: MouthShape | null): TemplateResult {
  const thin = svg`<path class="wall" d=${`M${MOUTH} ${TOP} H${END} M${MOUTH} ${BOTTOM} H${END}`} />`;
  switch (mouth) {
    case null:
      return svg`
        <path class="wall" d=${`M52 ${TOP} H${END} M52 ${BOTTOM} H${END}`} />
        <path class="wall unsaid" d=${`M${MOUTH} ${TOP} H52 M${MOUTH} ${BOTTOM} H52`} />`;
    case 'thick-rim':
      return svg`
        <rect class="solid" x=${MOUTH} y=${TOP - 6} width=${END - MOUTH} height="6" />
        <rect class="solid" x=${MOUTH} y=${BOTTOM} width=${END - MOUTH} height="6" />`;
    case 'flange':
      return svg`${thin}
        <rect class="solid" x=${MOUTH} y="2" width="4" height=${TOP - 2} />
        <rect class="solid" x=${MOUTH} y=${BOTTOM} width="4" height=${TOP - 2} />`;
    case 'obstructed':
      return svg`${thin}<rect class="solid" x="12" y="22" width="7" height="40" rx="3.5" />`;
    case 'thin-rim':
    case 'ideal':
      return thin;
  }
}

/** The end of the acting column: a bulge before the rim, or the rim itself. */
function reachArt(mouth: MouthShape | null): TemplateResult | null {
  if (mouth === null) return svg`<text class="ask" x="16" y="39">?</text>`;
  if (mouth === 'ideal') return svg`<path class="reach" d=${`M${MOUTH} ${TOP + 2} V${BOTTOM - 2}`} />`;
  const x = MOUTH - 2 * REACH[mouth];
  return svg`<path class="reach" d=${`M${MOUTH} ${TOP} Q${x} ${(TOP + BOTTOM) / 2} ${MOUTH} ${BOTTOM}`} />`;
}
