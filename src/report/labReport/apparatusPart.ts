import type { Experiment, Fork, Place } from '../../notebook/experiment.ts';
import { placeLabel } from '../marksCsv.ts';
import { markup } from '../markup.ts';
import type { Markup } from '../markup.ts';
import { fixed, roundPair, stampedHertz } from '../../words/numbers.ts';

/** Forks, tube, rule and air that the marks were made with. */
export function apparatusPart(experiment: Experiment): Markup {
  const { tube, rule, marks } = experiment;
  const forks = experiment.forks.filter((fork) => marks.some((mark) => mark.forkId === fork.id));
  const places = experiment.places.filter((place) => marks.some((mark) => mark.placeId === place.id));
  const facts: [string, string][] = [
    ...(forks.length > 0 ? forks : experiment.forks).map((fork): [string, string] => [
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
    ...(places.length > 0 ? places : experiment.places).map((place): [string, string] => [
      `Air, ${placeLabel(experiment, place.id)}`,
      airWords(place),
    ]),
  ];
  return markup`<section><h2>Apparatus</h2><table class="facts"><tbody>${facts.map(
    ([name, words]) => markup`<tr><th scope="row">${name}</th><td>${words}</td></tr>`,
  )}</tbody></table></section>`;
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
