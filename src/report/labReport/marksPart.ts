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
      : markup`<table class="marks stacked" aria-label="${words.table}"><thead><tr><th scope="col" class="number">${words.mark}</th><th scope="col">${words.column}</th>
<th scope="col" class="number">${words.length}</th><th scope="col">${words.order}</th><th scope="col" class="number">${words.residual}</th><th scope="col">${words.remarks}</th></tr></thead>
<tbody>${shown.map(rowOf)}</tbody></table>
<p class="small">${words.below(shown.length, experiment.marks.length)}</p>`
  }</section>`;
}

function row(index: MarkIndex, mark: Mark, words: MarkWords): Markup {
  const number = index.numberOf(mark.id);
  const isAgain = index.repeated(mark) !== null;
  const { mark: name, column, length, order, residual, remarks, nothing } = laterWords.marksPart;
  return markup`<tr><td class="number" data-name="${name}">${laterWords.marksPart.number(number, isAgain)}</td><td data-name="${column}">${words.apparatus}</td><td class="number" data-name="${length}">${lengthWords(mark)}</td>
<td data-name="${order}">${words.order ?? nothing}</td><td class="number" data-name="${residual}">${words.residualMm ?? nothing}</td><td data-name="${remarks}">${remarkWords(mark, words, isAgain ? number : null)}</td></tr>`;
}
