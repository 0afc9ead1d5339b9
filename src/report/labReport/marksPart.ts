import type { Mark } from '../../marks/mark.ts';
import { markNumber, repeatedMark } from '../../marks/markList.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import type { SolvedMark } from '../../solver/solution.ts';
import { markWords, residualMm } from '../../words/marks.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { fixed } from '../../words/numbers.ts';
import { solvedPlaces } from '../tables/placeSolution.ts';
import type { PlaceSolution } from '../tables/placeSolution.ts';

/** Every mark with its evidence and what the fit makes of it. */
export function marksPart(experiment: Experiment, places: readonly PlaceSolution[]): Markup {
  const solved = new Map(
    solvedPlaces(places).flatMap(({ solution }) => solution.marks.map((mark) => [mark.key, mark] as const)),
  );
  return markup`<section><h2>Marks</h2>${
    experiment.marks.length === 0
      ? markup`<p>None yet.</p>`
      : markup`<div class="sliding" tabindex="0" role="region" aria-label="Table of marks"><table class="marks"><thead><tr><th scope="col" class="number">Mark</th><th scope="col">Fork and column</th>
<th scope="col" class="number">Length, cm</th><th scope="col">Order</th><th scope="col" class="number">From the fit, mm</th><th scope="col">Remarks</th></tr></thead>
<tbody>${experiment.marks.map((mark) => row(experiment, mark, solved.get(mark.id) ?? null))}</tbody></table></div>
<p class="small">Lengths as the rule reads them.</p>`
  }</section>`;
}

function row(experiment: Experiment, mark: Mark, solved: SolvedMark | null): Markup {
  const { marks } = experiment;
  const number = markNumber(marks, mark.id);
  const isAgain = repeatedMark(marks, mark) !== null;
  const words = markWords(experiment, mark, solved);
  const remarks = [
    words.evidence,
    isAgain ? `the resonance of mark ${number} passed again` : null,
    mark.excluded ? 'left out of the fit' : null,
    words.cause === null ? null : `outlier: ${words.cause}`,
    mark.note === '' ? null : mark.note,
  ].filter((remark) => remark !== null);
  return markup`<tr><td class="number">${number}${isAgain ? ' again' : ''}</td><td>${words.apparatus}</td><td class="number">${lengthWords(mark)}</td>
<td>${words.order ?? '—'}</td><td class="number">${solved === null ? '—' : residualMm(solved)}</td><td>${remarks.join('; ')}</td></tr>`;
}

function lengthWords({ lengthM, otherLengthM }: Mark): string {
  if (lengthM === null) return '—';
  const one = fixed(lengthM * 100, 2);
  return otherLengthM === null || otherLengthM === lengthM
    ? one
    : `${one} to ${fixed(otherLengthM * 100, 2)}`;
}
