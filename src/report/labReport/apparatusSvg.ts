import { markLengthM } from '../../marks/mark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { escapeMarkup } from '../markup.ts';
import { PLOT_FONTS, PRINT_PALETTE } from '../plots/plot.ts';
import { laterWords, words } from '../../words/inUse.ts';

const WIDTH = 640;
/** For a phone, with the same letters. */
const NARROW_WIDTH = 400;
const HEIGHT = 210;
const LEFT = 70;
const RIGHT = 30;
/** The tube's walls, and where its rule lies. */
const TOP = 62;
const BOTTOM = 102;
const RULE = 128;
/** Names of marks nearer to each other than this would lie on each other, px. */
const NAME_PX = 26;

/** Where the words for the column stand, and those for the fork: beside each other they would meet. */
const COLUMN_LINE = TOP - 28;
const FORK_LINE = TOP - 12;

/**
 * The apparatus from the side, to scale along its rule: fork, tube, far end, rule, and where the marks lie. A whole SVG.
 * @param isNarrow  for a phone: diameter and zero offset, for which there is no room, are left to the text
 */
export function apparatusSvg(experiment: Experiment, isNarrow = false): string {
  const width = isNarrow ? NARROW_WIDTH : WIDTH;
  const { tube, rule, present, marks } = experiment;
  const fork = experiment.forks.find(({ id }) => id === present.forkId) ?? experiment.forks.at(0);
  const lengthsM = marks
    .filter(({ ends, excluded }) => ends === present.ends && !excluded)
    .flatMap((mark) => markLengthM(mark) ?? [])
    .sort((one, other) => one - other);
  const longestM = Math.max(tube.travelM, ...lengthsM);
  const x = (m: number): number => Math.round((LEFT + (m / longestM) * (width - LEFT - RIGHT)) * 10) / 10;
  const mouth = x(Math.max(rule.zeroOffsetM, 0));
  const farEnd = x(lengthsM.at(-1) ?? 0.4 * longestM);
  const { ink, soft, tone } = PRINT_PALETTE;
  const stepM = (longestM > 0.6 ? 0.1 : 0.05) * (isNarrow ? 2 : 1);
  const ticks = Array.from({ length: Math.floor(longestM / stepM + 1e-9) + 1 }, (_, i) => i * stepM);
  let named = -Infinity;
  const stems = lengthsM.map((m) => {
    const at = x(m);
    const hasRoom = at - named >= NAME_PX;
    if (hasRoom) named = at;
    const name = hasRoom ? text(at, HEIGHT - 22, laterWords.drawing.centimetres(m), 'middle') : '';
    return `<path d="M${at} ${RULE + 14}V${HEIGHT - 36}" stroke="${tone}" stroke-width="2"/>${name}`;
  });
  const end =
    present.ends === 'closed'
      ? `<rect x="${farEnd}" y="${TOP}" width="9" height="${BOTTOM - TOP}" fill="${soft}"/><path d="M${farEnd + 9} ${(TOP + BOTTOM) / 2}H${width - 8}" stroke="${soft}" stroke-width="3"/>`
      : `<path d="M${farEnd} ${TOP - 4}V${BOTTOM + 4}" stroke="${soft}" stroke-dasharray="4 4"/>`;
  const wallEnd = present.ends === 'closed' ? width - RIGHT : farEnd;
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${HEIGHT}" width="${width}" height="${HEIGHT}" font-family="${PLOT_FONTS}" font-size="12" fill="${ink}">`,
    `<title>${escapeMarkup(laterWords.drawing.title)}</title><rect width="${width}" height="${HEIGHT}" fill="#ffffff"/>`,
    `<path d="M${mouth} ${TOP}H${wallEnd}M${mouth} ${BOTTOM}H${wallEnd}" stroke="${ink}" stroke-width="3"/>`,
    end,
    // The fork before the mouth, its prongs towards the column.
    `<path d="M12 ${(TOP + BOTTOM) / 2}H30M${mouth - 16} ${TOP + 12}H34a8 8 0 0 0 0 16H${mouth - 16}" fill="none" stroke="${tone}" stroke-width="3"/>`,
    fork === undefined ? '' : text(8, FORK_LINE, laterWords.drawing.fork(fork.nominalHz), 'start'),
    text(
      width / 2,
      COLUMN_LINE,
      laterWords.drawing.column(words.endsLong[present.ends], isNarrow ? null : tube.diameterM),
      'middle',
    ),
    `<path d="M${x(0)} ${RULE}H${x(longestM)}" stroke="${ink}"/>`,
    ...ticks.map(
      (m) =>
        `<path d="M${x(m)} ${RULE}v6" stroke="${ink}"/>${text(x(m), RULE - 5, laterWords.drawing.tick(m), 'middle')}`,
    ),
    ...stems,
    text(width / 2, HEIGHT - 5, laterWords.drawing.below(isNarrow ? 0 : rule.zeroOffsetM), 'middle'),
    '</svg>',
  ].join('\n');
}

function text(x: number, y: number, words: string, anchor: 'start' | 'middle'): string {
  return `<text x="${x}" y="${y}" text-anchor="${anchor}">${escapeMarkup(words)}</text>`;
}
