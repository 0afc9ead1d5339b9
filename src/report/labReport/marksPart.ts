import type { Mark } from '../../marks/mark.ts';
import { MarkIndex } from '../../marks/markIndex.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { markWords } from '../../words/marks.ts';
import type { MarkWords } from '../../words/marks.ts';
import { fixed } from '../../words/numbers.ts';
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
  const index = new MarkIndex(experiment.marks);
  const labels = placeLabels(experiment);
  const shown = experiment.marks.slice(0, MOST_MARKS_PRINTED);
  const left = experiment.marks.length - shown.length;
  const rowOf = (mark: Mark): Markup =>
    row(index, mark, markWords(experiment, mark, solved.get(mark.id) ?? null, labels));
  return markup`<section><h2>Marks</h2>${
    experiment.marks.length === 0
      ? markup`<p>None yet.</p>`
      : markup`<div class="sliding" tabindex="0" role="region" aria-label="Table of marks"><table class="marks"><thead><tr><th scope="col" class="number">Mark</th><th scope="col">Fork and column</th>
<th scope="col" class="number">Length, cm</th><th scope="col">Order</th><th scope="col" class="number">From the fit, mm</th><th scope="col">Remarks</th></tr></thead>
<tbody>${shown.map(rowOf)}</tbody></table></div>
<p class="small">Lengths as the rule reads them.${
          left === 0
            ? null
            : ` Of ${experiment.marks.length} marks the first ${shown.length} are printed; the tables under Records hold all.`
        }</p>`
  }</section>`;
}

function row(index: MarkIndex, mark: Mark, words: MarkWords): Markup {
  const number = index.numberOf(mark.id);
  const isAgain = index.repeated(mark) !== null;
  const remarks = [
    words.evidence,
    isAgain ? `the resonance of mark ${number} passed again` : null,
    mark.excluded ? 'left out of the fit' : null,
    words.cause === null ? null : `outlier: ${words.cause}`,
    mark.note === '' ? null : mark.note,
  ].filter((remark) => remark !== null);
  return markup`<tr><td class="number">${number}${isAgain ? ' again' : ''}</td><td>${words.apparatus}</td><td class="number">${lengthWords(mark)}</td>
<td>${words.order ?? '—'}</td><td class="number">${words.residualMm ?? '—'}</td><td>${remarks.join('; ')}</td></tr>`;
}

function lengthWords({ lengthM, otherLengthM }: Mark): string {
  if (lengthM === null) return '—';
  const one = fixed(lengthM * 100, 2);
  return otherLengthM === null || otherLengthM === lengthM
    ? one
    : `${one} to ${fixed(otherLengthM * 100, 2)}`;
}
