import { budgetRows } from '../../words/budgetLines.ts';
import { markNames } from '../../words/markNames.ts';
import { solverWarningWords } from '../../words/solverWarnings.ts';
import { workingStepWords } from '../../words/workingSteps.ts';
import { dayAndTime } from '../../words/times.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { fitPlot, residualPlot } from '../plots/fitPlot.ts';
import { resultLines } from '../../words/result.ts';
import type { PlaceSolution } from '../tables/placeSolution.ts';
import { apparatusPart } from './apparatusPart.ts';
import { comparisonPart } from './comparisonPart.ts';
import { factsWithoutTheory, hidesTheory, stepsWithoutTheory, warningsWithoutTheory } from '../hideTheory.ts';
import { figurePart } from './figurePart.ts';
import type { LabReportInput } from './labReportInput.ts';
import { marksPart } from './marksPart.ts';
import { methodPart } from './methodPart.ts';
import { MOST_LINES_PRINTED, MOST_PLACES_WORKED } from './mostPrinted.ts';

const CAUTIONS = [
  'Strike a fork on rubber or the sole of a shoe, never on glass or a hard edge.',
  'Keep a sounding fork away from teeth and glass.',
  'A glass tube breaks: clamp it softly. Keep water and electrical equipment apart.',
  'Played tones start quiet. Your school’s lab rules come first.',
];
const DISCUSSION_LINES = 9;

/**
 * The lab report as the inside of a page: apparatus, method, marks, plots, working, budget, result, comparison, warnings,
 * cautions, and empty space for names and discussion. Everything that people typed is escaped.
 */
export function labReport(input: LabReportInput): Markup {
  const { experiment, places } = input;
  const labels = placeLabels(experiment);
  const worked = places.slice(0, MOST_PLACES_WORKED);
  return markup`<article class="report">
<header>
<h1>${experiment.title.trim() === '' ? 'Speed of sound in an air column' : experiment.title}</h1>
<p class="date">Begun ${dayAndTime(experiment.createdAt)}, last changed ${dayAndTime(experiment.changedAt)} (UTC)</p>
<p class="blank">Names</p>
<p class="blank">Class and date</p>
${experiment.lesson === undefined || experiment.lesson.task === '' ? null : markup`<h2>Task</h2><p class="typed">${experiment.lesson.task}</p>`}
${experiment.note.trim() === '' ? null : markup`<h2>Note</h2><p class="typed">${experiment.note}</p>`}
</header>
${resultPart(input, labels)}
${apparatusPart(experiment)}
${methodPart(experiment)}
${marksPart(experiment, places)}
${worked.map((place) => placePart(input, place, labels))}
${
  worked.length === places.length
    ? null
    : markup`<p class="small">Plots, working and budget of ${places.length - worked.length} further places are not printed; Working on the page shows those of the place that is chosen.</p>`
}
${comparisonPart(input)}
${warningsPart(input, labels)}
<section class="whole"><h2>Cautions</h2><ul>${CAUTIONS.map((caution) => markup`<li>${caution}</li>`)}</ul></section>
<section class="whole"><h2>Discussion</h2>
${Array.from({ length: DISCUSSION_LINES }, () => markup`<p class="line"></p>`)}</section>
</article>`;
}

type Labels = ReadonlyMap<string, string>;

function resultPart({ experiment, places }: LabReportInput, labels: Labels): Markup {
  const isHidden = hidesTheory(experiment);
  const left = places.length - MOST_LINES_PRINTED;
  const parts = places.slice(0, MOST_LINES_PRINTED).map(({ placeId, solution }) => {
    const lines = resultLines(solution);
    const facts = isHidden ? factsWithoutTheory(lines) : lines.facts;
    return markup`${places.length > 1 ? markup`<h3>${labels.get(placeId) ?? ''}</h3>` : null}
<p class="result">${lines.speed === null ? 'No speed can be given yet.' : `c = (${lines.speed.value} ± ${lines.speed.uncertainty}) m/s`}</p>
<table class="facts"><tbody>${facts.map((fact) => markup`<tr><th scope="row">${fact.name}</th><td>${fact.value}</td></tr>`)}</tbody></table>`;
  });
  return markup`<section><h2>Result: speed of sound in free air</h2>${
    parts.length > 0 ? parts : markup`<p>There is no mark with a length yet.</p>`
  }${left > 0 ? markup`<p class="small">${left} further places are in the table “Result” under Records.</p>` : null}</section>`;
}

function placePart(
  { experiment, places }: LabReportInput,
  { placeId, solution }: PlaceSolution,
  labels: Labels,
): Markup {
  if (solution.speedMps === null) return markup``;
  const at = places.length > 1 ? `, ${labels.get(placeId) ?? ''}` : '';
  const steps = hidesTheory(experiment) ? stepsWithoutTheory(solution.working) : solution.working;
  return markup`<section><h2>Plots${at}</h2>
${figurePart(fitPlot(experiment, solution))}
${figurePart(residualPlot(experiment, solution))}</section>
<section><h2>Working${at}</h2>
<ol class="working">${steps.map(workingStepWords).map(
    (step) => markup`<li><h3>${step.title}</h3><p class="formula">${step.formula}</p>
<p>${step.numbers}</p><p class="outcome">${step.result}</p></li>`,
  )}</ol></section>
<section class="whole"><h2>Uncertainty budget${at}</h2>
<table><thead><tr><th scope="col">Quantity</th><th scope="col" class="number">Standard uncertainty</th>
<th scope="col" class="number">Adds to the speed</th><th scope="col" class="number">Share</th></tr></thead>
<tbody>${budgetRows(solution.budget).map(
    (row) => markup`<tr><th scope="row">${row.quantity}</th><td class="number">${row.uncertainty}</td>
<td class="number">${row.contribution}</td><td class="number">${row.share}</td></tr>`,
  )}</tbody></table></section>`;
}

function warningsPart({ experiment, places }: LabReportInput, labels: Labels): Markup {
  const isHidden = hidesTheory(experiment);
  const nameMark = markNames(experiment);
  const warnings = places.flatMap(({ placeId, solution }) => {
    const own = isHidden ? warningsWithoutTheory(solution) : solution.warnings;
    return solverWarningWords(own, nameMark).map((message) =>
      places.length > 1 ? `${labels.get(placeId) ?? ''}: ${message}` : message,
    );
  });
  const left = warnings.length - MOST_LINES_PRINTED;
  return markup`<section><h2>Warnings</h2>${
    warnings.length === 0
      ? markup`<p>None.</p>`
      : markup`<ul>${warnings.slice(0, MOST_LINES_PRINTED).map((warning) => markup`<li>${warning}</li>`)}${
          left > 0 ? markup`<li>${left} further warnings are not printed.</li>` : null
        }</ul>`
  }</section>`;
}
