import type { ColumnEnds, Mark, MarkEvidence } from '../../marks/mark.ts';
import type { Fork, Place, Tube } from '../../notebook/experiment.ts';
import { laterWords, words } from '../inUse.ts';
import { clauses, listed } from '../lists.ts';
import type { MarkWords } from '../marks.ts';
import { mouthWords } from '../mouths.ts';
import { fixed, roundPair, stampedHertz } from '../numbers.ts';
import { readingTakenWords } from '../readingTaken.ts';

export function forkWords(fork: Fork): string {
  const facts = laterWords.apparatusFacts;
  const stamped = stampedHertz(fork.nominalHz);
  if (fork.measuredHz === null || !(fork.measuredStandardUncertaintyHz ?? 0))
    return facts.stamped(stamped, fixed(fork.standardUncertaintyHz, 2));
  const pair = roundPair(fork.measuredHz, fork.measuredStandardUncertaintyHz ?? 1);
  return facts.measured(stamped, pair.value, pair.uncertainty);
}

/** @param ends  those that were used */
export function tubeWords({ diameterM, otherDiameterM, mouth }: Tube, ends: readonly ColumnEnds[]): string {
  const facts = laterWords.apparatusFacts;
  return clauses([
    diameterM === null ? facts.noDiameter : facts.diameter(fixed(diameterM * 1000, 1)),
    ...(otherDiameterM === null || !ends.includes('open')
      ? []
      : [facts.otherDiameter(fixed(otherDiameterM * 1000, 1))]),
    mouthWords(mouth),
    listed(ends.map((one) => words.endsLong[one])),
  ]);
}

/** @param readingStandardUncertaintyM  null where nobody stated it */
export function ruleWords(readingStandardUncertaintyM: number | null, zeroOffsetM: number): string {
  const facts = laterWords.apparatusFacts;
  return clauses([
    readingStandardUncertaintyM === null
      ? facts.readingNotStated(readingTakenWords())
      : facts.reading(fixed(readingStandardUncertaintyM * 1000, 1)),
    facts.zeroOffset(fixed(zeroOffsetM * 1000, 1)),
  ]);
}

export function airWords(place: Place): string {
  const facts = laterWords.apparatusFacts;
  const { temperatureC, humidityPct, pressurePa, co2MoleFraction } = place;
  return clauses([
    ...(place.filling === 'air' ? [] : [words.fillingNames[place.filling]]),
    temperatureC === null
      ? facts.noTemperature
      : facts.temperature(fixed(temperatureC, 1), fixed(place.temperatureStandardUncertaintyC, 1)),
    humidityPct === null ? facts.noHumidity : facts.humidity(fixed(humidityPct, 0)),
    pressurePa === null ? facts.noPressure : facts.pressure(fixed(pressurePa / 100, 0)),
    ...(co2MoleFraction === null ? [] : [facts.co2(fixed(1e6 * co2MoleFraction, 0))]),
  ]);
}

/** What the method says of the marks: how many there are, and how they came about. */
export interface SpokenMethod {
  readonly marks: number;
  readonly heard: number;
  /** Where those that were heard come from, each once. */
  readonly sources: readonly MarkEvidence['source'][];
  readonly bracketed: number;
}

/** What was done, in the words of the trade, as far as the marks show it. */
export function methodWords({ marks, heard, sources, bracketed }: SpokenMethod): string {
  const method = laterWords.methodPart;
  const byHand = marks - heard;
  const where = listed(sources.map((source) => method.sources[source]));
  return [
    method.opening,
    ...(heard === 0 ? [] : [method.heard(heard, marks, where)]),
    ...(byHand === 0 ? [] : [method.byHand(byHand, marks)]),
    ...(bracketed === 0 ? [] : [method.bracketed(bracketed)]),
    method.theory,
  ].join(' ');
}

/** A mark's length as the rule reads it, or both of a bracket. */
export function lengthWords({ lengthM, otherLengthM }: Mark): string {
  const { nothing, between } = laterWords.marksPart;
  if (lengthM === null) return nothing;
  const one = fixed(lengthM * 100, 2);
  return otherLengthM === null || otherLengthM === lengthM ? one : between(one, fixed(otherLengthM * 100, 2));
}

/** How a mark came about and what the fit makes of it. @param againOf  number of the mark that it repeats */
export function remarkWords(mark: Mark, words: MarkWords, againOf: number | null): string {
  const { repeats, leftOut, outlier } = laterWords.marksPart;
  const remarks = [
    words.evidence,
    words.doubt,
    againOf === null ? null : repeats(againOf),
    mark.excluded ? leftOut : null,
    words.cause === null ? null : outlier(words.cause),
    mark.note === '' ? null : mark.note,
  ];
  return clauses(remarks.filter((remark) => remark !== null));
}

/** What a report of very many places doesn't print; null where it prints all. */
export function comparisonsLeftWords(places: number, pairs: number): string | null {
  const parts = [
    ...(places <= 0 ? [] : [laterWords.resultPart.notPrinted(places)]),
    ...(pairs === 0 ? [] : [laterWords.comparisonPart.pairsLeft(pairs)]),
  ];
  return parts.length === 0 ? null : parts.join(' ');
}
