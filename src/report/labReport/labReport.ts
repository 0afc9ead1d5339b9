import { titleWords } from '../../words/titles.ts';
import { markNames } from '../../words/markNames.ts';
import { solverWarningWords } from '../../words/solverWarnings.ts';
import { letterWords } from '../../words/workingLetters.ts';
import { workingStepWords } from '../../words/workingSteps.ts';
import { questionWords } from '../../words/report/questions.ts';
import { sourcesWords } from '../../words/report/readingHelp.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { fitPlot, residualPlot } from '../plots/fitPlot.ts';
import { resultLines } from '../../words/result.ts';
import { laterWords } from '../../words/inUse.ts';
import type { PlaceSolution } from '../tables/placeSolution.ts';
import { apparatusPart } from './apparatusPart.ts';
import { budgetPart } from './budgetPart.ts';
import { comparisonPart } from './comparisonPart.ts';
import { factsWithoutTheory, hidesTheory, stepsWithoutTheory, warningsWithoutTheory } from '../hideTheory.ts';
import { figurePart } from './figurePart.ts';
import type { LabReportInput } from './labReportInput.ts';
import { marksPart } from './marksPart.ts';
import { methodPart } from './methodPart.ts';
import { reportQuestions } from './reportQuestions.ts';
import { MOST_LINES_PRINTED, MOST_PLACES_WORKED } from './mostPrinted.ts';

const DISCUSSION_LINES = 9;
/** Room to calculate a step, and to answer a question. */
const LINES_A_STEP = 4;
const LINES_A_QUESTION = 3;

/**
 * The lab report as the inside of a page: apparatus, method, marks, plots, working, budget, result, comparison, warnings,
 * cautions, and empty space for names and discussion. Everything that people typed is escaped.
 */
export function labReport(input: LabReportInput): Markup {
  const { experiment, places, leavesWorking = false } = input;
  const labels = placeLabels(experiment);
  const worked = places.slice(0, MOST_PLACES_WORKED);
  return markup`<article class="report">
<header>
<h1>${experiment.title.trim() === '' ? laterWords.report.title : titleWords(experiment)}</h1>
<p class="date">${laterWords.report.dates(experiment.createdAt, experiment.changedAt)}</p>
${groupPart(experiment)}
${experiment.lesson === undefined || experiment.lesson.task === '' ? null : markup`<h2>${laterWords.report.task}</h2><p class="typed">${experiment.lesson.task}</p>`}
${experiment.note.trim() === '' ? null : markup`<h2>${laterWords.report.note}</h2><p class="typed">${experiment.note}</p>`}
</header>
${leavesWorking ? ownResultPart() : resultPart(input, labels)}
${apparatusPart(experiment)}
${methodPart(experiment)}
${marksPart(experiment, leavesWorking ? [] : places)}
${worked.map((place) => (leavesWorking ? roomPart(input, place, labels) : placePart(input, place, labels)))}
${
  worked.length === places.length
    ? null
    : markup`<p class="small">${laterWords.report.notWorked(places.length - worked.length)}</p>`
}
${leavesWorking ? null : comparisonPart(input)}
${leavesWorking ? null : warningsPart(input, labels)}
${readingPart(experiment, worked)}
<section class="whole"><h2>${laterWords.report.cautions}</h2><ul>${laterWords.report.cautionList.map((caution) => markup`<li>${caution}</li>`)}</ul></section>
${questionsPart(input)}
<section class="whole"><h2>${laterWords.report.discussion}</h2>
${Array.from({ length: DISCUSSION_LINES }, () => markup`<p class="line"></p>`)}</section>
</article>`;
}

/** Whose report it is: what the group said of itself, and lines for the rest. */
function groupPart({ group, className }: Experiment): Markup {
  const isNamed = group.trim() !== '';
  const hasClass = className.trim() !== '';
  return markup`${isNamed ? markup`<p class="typed"><strong>${laterWords.report.group(group.trim())}</strong></p>` : null}
${hasClass ? markup`<p class="typed">${laterWords.report.className(className.trim())}</p>` : null}
<p class="blank">${laterWords.report.names}</p>
<p class="blank">${hasClass ? laterWords.report.date : laterWords.report.classAndDate}</p>`;
}

function ownResultPart(): Markup {
  return markup`<section><h2>${laterWords.resultPart.heading}</h2><p class="result">${laterWords.resultPart.own}</p></section>`;
}

/** The steps by name and formula, with room to calculate. */
function roomPart(
  { experiment, places }: LabReportInput,
  { placeId, solution }: PlaceSolution,
  labels: Labels,
): Markup {
  if (solution.speedMps === null) return markup``;
  const place = places.length > 1 ? (labels.get(placeId) ?? '') : null;
  const steps = hidesTheory(experiment) ? stepsWithoutTheory(solution.working) : solution.working;
  return markup`<section><h2>${laterWords.placePart.working(place)}</h2>
<ol class="working">${steps
    .map(workingStepWords)
    .map(
      (step) =>
        markup`<li><h3>${step.title}</h3><p class="formula">${step.formula}</p>${lines(LINES_A_STEP)}</li>`,
    )}</ol></section>`;
}

function lines(count: number): readonly Markup[] {
  return Array.from({ length: count }, () => markup`<p class="line"></p>`);
}

/** What the letters mean and what the working rests on. */
function readingPart(experiment: Experiment, worked: readonly PlaceSolution[]): Markup {
  const isHidden = hidesTheory(experiment);
  const steps = worked.flatMap(({ solution }) => (solution.speedMps === null ? [] : solution.working));
  const letters = letterWords(isHidden ? stepsWithoutTheory(steps) : steps, ['c', 'k', 'ν']);
  return markup`<section class="whole"><h2>${laterWords.readingHelp.termsHeading}</h2><ul>${letters.map(
    ({ letter, meaning }) => markup`<li><strong>${letter}</strong>: ${meaning}</li>`,
  )}</ul></section>
<section class="whole"><h2>${laterWords.readingHelp.sourcesHeading}</h2><ul>${sourcesWords(isHidden).map((source) => markup`<li>${source}</li>`)}</ul></section>`;
}

function questionsPart({ experiment, places, leavesWorking = false }: LabReportInput): Markup | null {
  const questions = reportQuestions(experiment, places, hidesTheory(experiment));
  if (questions.length === 0) return null;
  return markup`<section><h2>${laterWords.report.questions}</h2><ol>${questions.map(
    (question) => markup`<li>${questionWords(question, !leavesWorking)}${lines(LINES_A_QUESTION)}</li>`,
  )}</ol></section>`;
}

type Labels = ReadonlyMap<string, string>;

function resultPart({ experiment, places }: LabReportInput, labels: Labels): Markup {
  const isHidden = hidesTheory(experiment);
  const left = places.length - MOST_LINES_PRINTED;
  const parts = places.slice(0, MOST_LINES_PRINTED).map(({ placeId, solution }) => {
    const lines = resultLines(solution);
    const facts = isHidden ? factsWithoutTheory(lines) : lines.facts;
    return markup`${places.length > 1 ? markup`<h3>${labels.get(placeId) ?? ''}</h3>` : null}
<p class="result">${laterWords.resultPart.speed(lines.speed)}</p>
<table class="facts"><tbody>${facts.map((fact) => markup`<tr><th scope="row">${fact.name}</th><td>${fact.value}</td></tr>`)}</tbody></table>`;
  });
  return markup`<section><h2>${laterWords.resultPart.heading}</h2>${
    parts.length > 0 ? parts : markup`<p>${laterWords.resultPart.none}</p>`
  }${left > 0 ? markup`<p class="small">${laterWords.resultPart.notPrinted(left)}</p>` : null}</section>`;
}

function placePart(
  { experiment, places }: LabReportInput,
  { placeId, solution }: PlaceSolution,
  labels: Labels,
): Markup {
  if (solution.speedMps === null) return markup``;
  const words = laterWords.placePart;
  const place = places.length > 1 ? (labels.get(placeId) ?? '') : null;
  const steps = hidesTheory(experiment) ? stepsWithoutTheory(solution.working) : solution.working;
  return markup`<section><h2>${words.plots(place)}</h2>
${figurePart(fitPlot(experiment, solution))}
${figurePart(residualPlot(experiment, solution))}
<p class="small">${laterWords.readingHelp.legend}</p></section>
<section><h2>${words.working(place)}</h2>
<ol class="working">${steps.map(workingStepWords).map(
    (step) => markup`<li><h3>${step.title}</h3><p class="formula">${step.formula}</p>
<p>${step.numbers}</p><p class="outcome">${step.result}</p>${step.why === null ? null : markup`<p class="small">${step.why}</p>`}</li>`,
  )}</ol></section>
<section class="whole"><h2>${words.budget(place)}</h2>
${budgetPart(solution)}</section>`;
}

function warningsPart({ experiment, places }: LabReportInput, labels: Labels): Markup {
  const isHidden = hidesTheory(experiment);
  const nameMark = markNames(experiment);
  const warnings = places.flatMap(({ placeId, solution }) => {
    const own = isHidden ? warningsWithoutTheory(solution) : solution.warnings;
    return solverWarningWords(own, nameMark).map((message) =>
      places.length > 1 ? laterWords.warningsPart.ofPlace(labels.get(placeId) ?? '', message) : message,
    );
  });
  const left = warnings.length - MOST_LINES_PRINTED;
  return markup`<section><h2>${laterWords.warningsPart.heading}</h2>${
    warnings.length === 0
      ? markup`<p>${laterWords.warningsPart.none}</p>`
      : markup`<ul>${warnings.slice(0, MOST_LINES_PRINTED).map((warning) => markup`<li>${warning}</li>`)}${
          left > 0 ? markup`<li>${laterWords.warningsPart.notPrinted(left)}</li>` : null
        }</ul>`
  }</section>`;
}
