import type { Mark } from '../../marks/mark.ts';
import { markIndex } from '../../notebook/markList.ts';
import type { MarkIndex } from '../../marks/markIndex.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { laterWords } from '../../words/inUse.ts';
import { markWords } from '../../words/marks.ts';
import type { MarkWords } from '../../words/marks.ts';
import { lengthWords, remarkWords } from '../../words/report/labReport.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { MOST_MARKS_PRINTED } from './mostPrinted.ts';
import { solvedPlaces } from '../tables/placeSolution.ts';
import type { PlaceSolution } from '../tables/placeSolution.ts';

/** Every mark with its evidence and what the fit makes of it. */
export function marksPart(experiment: Experiment, places: readonly PlaceSolution[]): Markup {
  const solved = new Map(
    solvedPlaces(places).flatMap(({ solution }) => solution.marks.map((mark) => [mark.key, mark] as const)),
  );
  const index = markIndex(experiment);
  const labels = placeLabels(experiment);
  const shown = experiment.marks.slice(0, MOST_MARKS_PRINTED);
  const words = laterWords.marksPart;
  const rowOf = (mark: Mark): Markup =>
    row(index, mark, markWords(experiment, mark, solved.get(mark.id) ?? null, labels));
  return markup`<section><h2>${words.heading}</h2>${
    experiment.marks.length === 0
      ? markup`<p>${words.none}</p>`
      : markup`<div class="sliding" tabindex="0" role="region" aria-label="${words.table}"><table class="marks"><thead><tr><th scope="col" class="number">${words.mark}</th><th scope="col">${words.column}</th>
<th scope="col" class="number">${words.length}</th><th scope="col">${words.order}</th><th scope="col" class="number">${words.residual}</th><th scope="col">${words.remarks}</th></tr></thead>
<tbody>${shown.map(rowOf)}</tbody></table></div>
<p class="small">${words.below(shown.length, experiment.marks.length)}</p>`
  }</section>`;
}

function row(index: MarkIndex, mark: Mark, words: MarkWords): Markup {
  const number = index.numberOf(mark.id);
  const isAgain = index.repeated(mark) !== null;
  return markup`<tr><td class="number">${laterWords.marksPart.number(number, isAgain)}</td><td>${words.apparatus}</td><td class="number">${lengthWords(mark)}</td>
<td>${words.order ?? laterWords.marksPart.nothing}</td><td class="number">${words.residualMm ?? laterWords.marksPart.nothing}</td><td>${remarkWords(mark, words, isAgain ? number : null)}</td></tr>`;
}
