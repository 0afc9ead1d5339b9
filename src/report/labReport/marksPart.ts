import type { Mark } from '../../marks/mark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import type { SolvedMark } from '../../solver/solution.ts';
import { markWords } from '../markWords.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { fixed } from '../rounding.ts';
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
      : markup`<table class="marks"><thead><tr><th scope="col" class="number">Mark</th><th scope="col">Fork and column</th>
<th scope="col" class="number">Length, cm</th><th scope="col">Order</th><th scope="col" class="number">From the fit, mm</th><th scope="col">Remarks</th></tr></thead>
<tbody>${experiment.marks.map((mark, index) => row(experiment, mark, index + 1, solved.get(mark.id) ?? null))}</tbody></table>
<p class="small">Lengths as the rule reads them.</p>`
  }</section>`;
}

function row(experiment: Experiment, mark: Mark, number: number, solved: SolvedMark | null): Markup {
  const words = markWords(experiment, mark, solved);
  const again = experiment.marks.findIndex((other) => other.id === mark.repeatOf);
  const remarks = [
    words.evidence,
    again < 0 ? null : `the resonance of mark ${again + 1} passed again`,
    mark.excluded ? 'left out of the fit' : null,
    words.cause === null ? null : `outlier: ${words.cause}`,
    mark.note === '' ? null : mark.note,
  ].filter((remark) => remark !== null);
  return markup`<tr><td class="number">${number}</td><td>${words.apparatus}</td><td class="number">${lengthWords(mark)}</td>
<td>${words.order ?? '—'}</td><td class="number">${words.residual?.replace(' mm from the fit', '') ?? '—'}</td><td>${remarks.join('; ')}</td></tr>`;
}

function lengthWords({ lengthM, otherLengthM }: Mark): string {
  if (lengthM === null) return '—';
  const one = fixed(lengthM * 100, 2);
  return otherLengthM === null ? one : `${one} to ${fixed(otherLengthM * 100, 2)}`;
}
