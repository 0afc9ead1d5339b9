import type { Experiment, Fork, Place } from '../../notebook/experiment.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { fixed, roundPair, stampedHertz } from '../../words/numbers.ts';
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
  const facts: Fact[] = [
    ...linesOf(forks.length > 0 ? forks : experiment.forks, 'Further forks', (fork) => [
      'Fork',
      forkWords(fork),
    ]),
    [
      'Tube',
      `${tube.diameterM === null ? 'inside diameter not measured' : `inside diameter ${fixed(tube.diameterM * 1000, 1)} mm`}; ${endsWords(experiment)}`,
    ],
    [
      'Rule',
      `one reading ± ${fixed(rule.readingStandardUncertaintyM * 1000, 1)} mm (standard uncertainty, finding the resonance included); it reads ${fixed(rule.zeroOffsetM * 1000, 1)} mm at no length`,
    ],
    ...linesOf(places.length > 0 ? places : experiment.places, 'Further places', (place) => [
      `Air, ${labels.get(place.id) ?? ''}`,
      airWords(place),
    ]),
  ];
  return markup`<section><h2>Apparatus</h2><table class="facts"><tbody>${facts.map(
    ([name, words]) => markup`<tr><th scope="row">${name}</th><td>${words}</td></tr>`,
  )}</tbody></table></section>`;
}

/** A line for each, as far as they are printed, and one for the rest. */
function linesOf<T>(items: readonly T[], rest: string, line: (item: T) => Fact): Fact[] {
  const left = items.length - MOST_LINES_PRINTED;
  const lines = items.slice(0, MOST_LINES_PRINTED).map(line);
  return left > 0 ? [...lines, [rest, `${left}, not printed; the table of marks holds them`]] : lines;
}

function forkWords(fork: Fork): string {
  const stamped = `stamped ${stampedHertz(fork.nominalHz)} Hz`;
  if (fork.measuredHz === null || !(fork.measuredStandardUncertaintyHz ?? 0))
    return `${stamped} ± ${fixed(fork.standardUncertaintyHz, 2)} Hz (standard uncertainty)`;
  const pair = roundPair(fork.measuredHz, fork.measuredStandardUncertaintyHz ?? 1);
  return `${stamped}, measured ${pair.value} ± ${pair.uncertainty} Hz (standard uncertainty): the measured pitch counts`;
}

function endsWords({ marks, present }: Experiment): string {
  const used = new Set(marks.map((mark) => mark.ends));
  if (used.size === 0) used.add(present.ends);
  return [...used]
    .map((ends) => (ends === 'closed' ? 'closed at one end' : 'open at both ends'))
    .join(' and ');
}

function airWords(place: Place): string {
  const { temperatureC, humidityPct, pressurePa } = place;
  const parts = [
    temperatureC === null
      ? 'temperature not read'
      : `${fixed(temperatureC, 1)} ± ${fixed(place.temperatureStandardUncertaintyC, 1)} °C (standard uncertainty)`,
    humidityPct === null ? 'humidity not read' : `${fixed(humidityPct, 0)} % humidity`,
    pressurePa === null ? 'pressure not read' : `${fixed(pressurePa / 100, 0)} hPa`,
  ];
  return parts.join(', ');
}
