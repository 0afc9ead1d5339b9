import type { MovingView, ToneView } from '../toneView.ts';
import { LEAST_STATISTIC, touchesGap } from './candidates.ts';
import type { Candidate } from './candidates.ts';
import { backgroundAround } from './cfarBackground.ts';
import { DecimatedView } from './decimatedView.ts';
import { emptyRow, fillStatistics, localMaxima, matchAt, suppressNonMaxima } from './matchedFilter.ts';
import type { StatisticRow, TemplateMatch } from './matchedFilter.ts';
import { passageFeatures } from './passageFeatures.ts';
import { ringUpsOfFastSlides, templateBank } from './passageTemplates.ts';
import type { BankSettings, PassageTemplate } from './passageTemplates.ts';

/** As far after a shape's middle as before it. */
const SETTINGS: BankSettings = {
  lookAheadS: (halfWidthS) => 4 * halfWidthS + 0.05,
  ringUpRates: ringUpsOfFastSlides,
};

/** Stretches of a long series that are filtered at a time, s, and how much on either side is in view with them: all that a match is compared with. */
const STRETCH_S = 120;
export const BESIDE_S = 20;
/** Cells that are decimated at a time: bounds the memory and keeps the prefix sums' digits. */
const CHUNK = 4096;

/**
 * All that may be a passage in a whole series, each with its features, lost sound left out; stretch by stretch. Indices
 * are the series'.
 * @param view  of the series; is moved along it
 * @param offsetHz  the fork's frequency less the one that was moved to 0 Hz
 */
export function* offlineCandidates(view: MovingView, offsetHz: number): Generator<Candidate> {
  const { series, rateHz } = view;
  const filter = new OfflineFilter(templateBank(rateHz, [SETTINGS]));
  const stretch = Math.round(STRETCH_S * rateHz);
  const beside = Math.round(BESIDE_S * rateHz);
  for (let from = 0; from < series.length; from += stretch) {
    const firstIndex = Math.max(0, from - beside);
    view.show(firstIndex, Math.min(series.length, from + stretch + beside), offsetHz);
    // All of a stretch at once: the view may be moved elsewhere before the next candidate is asked for.
    const found = suppressNonMaxima(filter.matches(view), rateHz).flatMap((match): Candidate[] => {
      const middle = match.middle + firstIndex;
      const isOwn = middle >= from && middle < from + stretch;
      if (!isOwn || touchesGap(series, middle, match.template.shape.halfWidthS)) return [];
      const features = passageFeatures(view, match, view.length - 1);
      const peakIndex = features.peakIndex + firstIndex;
      return [{ match: { ...match, middle }, features: { ...features, middle, peakIndex } }];
    });
    yield* found;
  }
}

/** The matched filter over whole stretches. It owns its workspace: decimated views and a row of statistics. */
class OfflineFilter {
  private readonly bank: readonly PassageTemplate[];
  private readonly cells: ReadonlyMap<number, DecimatedView>;
  private row = emptyRow(0);

  constructor(bank: readonly PassageTemplate[]) {
    this.bank = bank;
    this.cells = new Map(bank.map(({ step }) => [step, new DecimatedView(step)]));
  }

  /** All local maxima in time of each template with a statistic of at least LEAST_STATISTIC. */
  matches(view: ToneView): TemplateMatch[] {
    return this.bank.flatMap((template) => {
      const cells = this.cells.get(template.step);
      return cells === undefined ? [] : this.matchesOf(template, cells, view);
    });
  }

  private matchesOf(template: PassageTemplate, cells: DecimatedView, view: ToneView): TemplateMatch[] {
    const { before, after } = template;
    const middles = cells.cellsIn(view) - before - after;
    if (middles < 3) return [];
    const row = this.rowOf(middles);
    for (let from = 0; from < middles; from += CHUNK) {
      const count = Math.min(CHUNK, middles - from);
      cells.fill(view, from, count + before + after);
      fillStatistics(row, cells, template, { first: before, count }, from);
    }
    return ([1, -1] as const).flatMap((direction) => {
      const statistics = direction === 1 ? row.longer : row.shorter;
      return localMaxima(statistics, middles, LEAST_STATISTIC).map((at) => {
        cells.fill(view, at, before + 1 + after);
        const background = backgroundAround(statistics, middles, at, template, view.rateHz);
        return matchAt(cells, { template, direction, middle: before, background });
      });
    });
  }

  /** A row of so many statistics at least. */
  private rowOf(length: number): StatisticRow {
    if (this.row.longer.length < length) this.row = emptyRow(length);
    return this.row;
  }
}
