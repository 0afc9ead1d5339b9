import type { ToneView } from '../toneView.ts';
import { LEAST_STATISTIC } from './candidates.ts';
import { RecentBackground } from './cfarBackground.ts';
import { DecimatedView } from './decimatedView.ts';
import { JUDGEMENTS } from './lookAheads.ts';
import { emptyRow, fillStatistics, localMaxima, matchAt } from './matchedFilter.ts';
import type { StatisticRow, TemplateMatch } from './matchedFilter.ts';
import { templateBank } from './passageTemplates.ts';
import type { PassageTemplate, SlideDirection } from './passageTemplates.ts';

/** Narrow values between two steps of the online detector: 0.1 s. */
export const STEP = 10;
const STEPS_PER_S = 10;

/** One template of the bank. */
interface WatchedTemplate {
  readonly template: PassageTemplate;
  /** Statistics of the present step's middles. */
  readonly row: StatisticRow;
  readonly directions: readonly WatchedDirection[];
}

/** One direction of a template, with what it has reached lately. */
interface WatchedDirection {
  readonly direction: SlideDirection;
  readonly statistics: Float64Array;
  readonly recent: RecentBackground;
}

/** Templates that need the same decimation. */
interface WatchedStep {
  readonly cells: DecimatedView;
  readonly templates: readonly WatchedTemplate[];
  /** Cells of the longest window. */
  readonly longest: number;
}

/** The matched filter over the newest values: each template is matched when its window has just filled. */
export class OnlineFilter {
  private readonly watched: readonly WatchedStep[];

  /** @param rateHz  narrow values a second */
  constructor(rateHz: number) {
    const bank = templateBank(rateHz, JUDGEMENTS);
    const steps = new Set(bank.map(({ step }) => step));
    this.watched = [...steps].map((step) =>
      watchStep(
        bank.filter((template) => template.step === step),
        step,
      ),
    );
  }

  /**
   * Matches whose middle is one of the last step's or a neighbour's on either side.
   * @param view  the newest seconds, STEP values further than at the call before
   */
  push(view: ToneView): TemplateMatch[] {
    const matches: TemplateMatch[] = [];
    for (const { cells, templates, longest } of this.watched) {
      const middles = middlesPerStep(cells.step);
      const all = cells.cellsIn(view);
      const filled = Math.min(all, longest + middles);
      cells.fill(view, all - filled, filled);
      for (const { template, row, directions } of templates) {
        const newest = filled - template.after;
        const first = Math.max(template.before, newest - middles);
        const count = Math.max(0, newest - first);
        fillStatistics(row, cells, template, { first, count });
        for (const { direction, statistics, recent } of directions) {
          for (const at of localMaxima(statistics, count, LEAST_STATISTIC)) {
            const { background } = recent;
            matches.push(matchAt(cells, { template, direction, middle: first + at, background }));
          }
          recent.push(statistics, count);
        }
      }
    }
    return matches;
  }
}

/** Cells that a step's middles span: those of one step and a neighbour either side. */
const middlesPerStep = (step: number): number => Math.ceil(STEP / step) + 2;

function watchStep(bank: readonly PassageTemplate[], step: number): WatchedStep {
  return {
    cells: new DecimatedView(step),
    templates: bank.map(watchTemplate),
    longest: Math.max(...bank.map((template) => template.re.length)),
  };
}

function watchTemplate(template: PassageTemplate): WatchedTemplate {
  const row = emptyRow(middlesPerStep(template.step));
  const watch = (direction: SlideDirection, statistics: Float64Array): WatchedDirection => ({
    direction,
    statistics,
    recent: new RecentBackground(template.shape.halfWidthS, STEPS_PER_S),
  });
  return { template, row, directions: [watch(1, row.longer), watch(-1, row.shorter)] };
}
