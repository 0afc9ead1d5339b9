import { comparisonWords, groupNames } from '../../words/comparison.ts';
import { hidesTheory } from '../hideTheory.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { placeSpeeds, temperaturePlot } from '../plots/temperaturePlot.ts';
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
    return markup`<section><h2>Comparison</h2><p>Theory is not shown in this lesson.</p></section>`;
  }
  const nameGroup = groupNames(experiment, 'place');
  const between = comparisons.map((comparison) => markup`<li>${comparisonWords(comparison, nameGroup)}</li>`);
  const speeds = placeSpeeds(experiment, places);
  const labels = placeLabels(experiment);
  const solved = solvedPlaces(places);
  const withTheory = solved.slice(0, MOST_LINES_PRINTED).map(({ placeId, solution }) => {
    const difference = resultLines(solution).facts.find(({ kind }) => kind === 'difference')?.value;
    const { agreement } = solution;
    const words =
      difference === undefined || agreement === null
        ? 'the air’s temperature wasn’t noted, so theory gives no speed to compare with.'
        : `measured minus theory is ${difference}.`;
    return markup`<li>${labels.get(placeId) ?? ''}: ${words}</li>`;
  });
  const plot = speeds.length === 0 ? null : temperaturePlot(speeds);
  return markup`<section><h2>Comparison with theory</h2>
<p>Theory is the speed of sound in air at the noted temperature, humidity and pressure (Cramer 1993).</p>
<ul>${withTheory}${between}</ul>
${leftOutWords(solved.length - withTheory.length, pairsLeftOut)}
${plot === null ? null : figurePart(plot)}</section>`;
}

/** What a report of very many places doesn't print. */
function leftOutWords(places: number, pairs: number): Markup | null {
  if (places <= 0 && pairs === 0) return null;
  const parts = [
    places <= 0 ? '' : `${places} further places are in the table “Result” under Records.`,
    pairs === 0
      ? ''
      : `${pairs} further pairs of places are not printed: Compare on the page sets any two against each other.`,
  ];
  return markup`<p class="small">${parts.filter((part) => part !== '').join(' ')}</p>`;
}
