import type { ColumnEnds } from '../../marks/mark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { laterWords } from '../../words/inUse.ts';
import { airWords, forkWords, ruleWords, tubeWords } from '../../words/report/labReport.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { apparatusSvg } from './apparatusSvg.ts';
import { figure } from './figurePart.ts';
import { MOST_LINES_PRINTED } from './mostPrinted.ts';

type Fact = readonly [name: string, words: string];

/** Forks, tube, rule and air that the marks were made with. */
export function apparatusPart(experiment: Experiment): Markup {
  const { tube, rule, marks } = experiment;
  const usedForks = new Set(marks.map((mark) => mark.forkId));
  const usedPlaces = new Set(marks.map((mark) => mark.placeId));
  const forks = experiment.forks.filter((fork) => usedForks.has(fork.id));
  const places = experiment.places.filter((place) => usedPlaces.has(place.id));
  const labels = placeLabels(experiment);
  const words = laterWords.apparatusPart;
  const facts: Fact[] = [
    ...linesOf(forks.length > 0 ? forks : experiment.forks, words.forksLeft, (fork) => [
      words.fork,
      forkWords(fork),
    ]),
    [words.tube, tubeWords(tube, usedEnds(experiment))],
    [words.rule, ruleWords(rule.readingStandardUncertaintyM, rule.zeroOffsetM)],
    ...linesOf(places.length > 0 ? places : experiment.places, words.placesLeft, (place) => [
      words.air(labels.get(place.id) ?? ''),
      airWords(place),
    ]),
  ];
  return markup`<section><h2>${words.heading}</h2>${figure(apparatusSvg(experiment), apparatusSvg(experiment, true), laterWords.drawing.caption)}<table class="facts"><tbody>${facts.map(
    ([name, fact]) => markup`<tr><th scope="row">${name}</th><td>${fact}</td></tr>`,
  )}</tbody></table></section>`;
}

/** A line for each, as far as they are printed, and one for the rest. */
function linesOf<T>(items: readonly T[], rest: string, line: (item: T) => Fact): Fact[] {
  const left = items.length - MOST_LINES_PRINTED;
  const lines = items.slice(0, MOST_LINES_PRINTED).map(line);
  return left > 0 ? [...lines, [rest, laterWords.apparatusPart.left(left)]] : lines;
}

/** The ends that the marks were made with; those that are set now where there are none. */
function usedEnds({ marks, present }: Experiment): readonly ColumnEnds[] {
  const used = new Set(marks.map((mark) => mark.ends));
  if (used.size === 0) used.add(present.ends);
  return [...used];
}
