import { comparisonWords, groupNames } from '../../words/comparison.ts';
import { hidesTheory } from '../hideTheory.ts';
import { placeLabel } from '../marksCsv.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { placeSpeeds, temperaturePlot } from '../plots/temperaturePlot.ts';
import { resultLines } from '../../words/result.ts';
import { solvedPlaces } from '../tables/placeSolution.ts';
import { figurePart } from './figurePart.ts';
import type { LabReportInput } from './labReportInput.ts';

/** The result beside theory, and places beside each other. */
export function comparisonPart({ experiment, places, comparisons }: LabReportInput): Markup {
  if (hidesTheory(experiment)) {
    return markup`<section><h2>Comparison</h2><p>Theory is not shown in this lesson.</p></section>`;
  }
  const between = comparisons.map(
    (comparison) => markup`<li>${comparisonWords(comparison, groupNames(experiment, 'place'))}</li>`,
  );
  const speeds = placeSpeeds(experiment, places);
  const withTheory = solvedPlaces(places).map(({ placeId, solution }) => {
    const difference = resultLines(solution).facts.find(({ kind }) => kind === 'difference')?.value;
    const { agreement } = solution;
    const words =
      difference === undefined || agreement === null
        ? 'the air’s temperature wasn’t noted, so theory gives no speed to compare with.'
        : `measured minus theory is ${difference}.`;
    return markup`<li>${placeLabel(experiment, placeId)}: ${words}</li>`;
  });
  const plot = speeds.length === 0 ? null : temperaturePlot(speeds);
  return markup`<section><h2>Comparison with theory</h2>
<p>Theory is the speed of sound in air at the noted temperature, humidity and pressure (Cramer 1993).</p>
<ul>${withTheory}${between}</ul>
${plot === null ? null : figurePart(plot)}</section>`;
}
