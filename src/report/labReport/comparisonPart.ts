import { comparisonWords, groupNames } from '../../words/comparison.ts';
import { hidesTheory } from '../hideTheory.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { placeSpeeds, temperaturePlot } from '../plots/temperaturePlot.ts';
import { laterWords } from '../../words/inUse.ts';
import { comparisonsLeftWords } from '../../words/report/labReport.ts';
import { resultLines } from '../../words/result.ts';
import { solvedPlaces } from '../tables/placeSolution.ts';
import { figurePart } from './figurePart.ts';
import type { LabReportInput } from './labReportInput.ts';
import { MOST_LINES_PRINTED } from './mostPrinted.ts';

/** The result beside theory, and places beside each other. */
export function comparisonPart({
  experiment,
  places,
  comparisons,
  pairsLeftOut = 0,
}: LabReportInput): Markup {
  if (hidesTheory(experiment)) {
    return markup`<section><h2>${laterWords.comparisonPart.headingHidden}</h2><p>${laterWords.comparisonPart.hidden}</p></section>`;
  }
  const nameGroup = groupNames(experiment, 'place');
  const between = comparisons.map((comparison) => markup`<li>${comparisonWords(comparison, nameGroup)}</li>`);
  const speeds = placeSpeeds(experiment, places);
  const labels = placeLabels(experiment);
  const solved = solvedPlaces(places);
  const withTheory = solved.slice(0, MOST_LINES_PRINTED).map(({ placeId, solution }) => {
    const difference = resultLines(solution).facts.find(({ kind }) => kind === 'difference')?.value;
    return markup`<li>${laterWords.comparisonPart.place(labels.get(placeId) ?? '', difference ?? null)}</li>`;
  });
  const left = comparisonsLeftWords(solved.length - withTheory.length, pairsLeftOut);
  const plot = speeds.length === 0 ? null : temperaturePlot(speeds);
  return markup`<section><h2>${laterWords.comparisonPart.heading}</h2>
<p>${laterWords.comparisonPart.theory}</p>
<ul>${withTheory}${between}</ul>
${left === null ? null : markup`<p class="small">${left}</p>`}
${plot === null ? null : figurePart(plot)}</section>`;
}
