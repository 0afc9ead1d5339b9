import type { ColumnEnds, Mark, MarkEvidence } from '../../marks/mark.ts';
import type { Fork, Place, Tube } from '../../notebook/experiment.ts';
import { laterWords, words } from '../inUse.ts';
import type { MarkWords } from '../marks.ts';
import { mouthWords } from '../mouths.ts';
import { counted } from '../en/grammar.ts';
import { fixed, roundPair, stampedHertz } from '../numbers.ts';
import { readingTakenWords } from '../readingTaken.ts';

export function forkWords(fork: Fork): string {
  const stamped = `stamped ${stampedHertz(fork.nominalHz)} Hz`;
  if (fork.measuredHz === null || !(fork.measuredStandardUncertaintyHz ?? 0))
    return `${stamped} ± ${fixed(fork.standardUncertaintyHz, 2)} Hz (standard uncertainty)`;
  const pair = roundPair(fork.measuredHz, fork.measuredStandardUncertaintyHz ?? 1);
  return `${stamped}, measured ${pair.value} ± ${pair.uncertainty} Hz (standard uncertainty): the measured pitch counts`;
}

/** @param ends  those that were used */
export function tubeWords({ diameterM, otherDiameterM, mouth }: Tube, ends: readonly ColumnEnds[]): string {
  const width =
    diameterM === null ? 'inside diameter not measured' : `inside diameter ${fixed(diameterM * 1000, 1)} mm`;
  const other =
    otherDiameterM === null || !ends.includes('open')
      ? ''
      : `, ${fixed(otherDiameterM * 1000, 1)} mm at the other open end`;
  return `${width}${other}; ${mouthWords(mouth)}; ${ends.map((one) => words.endsLong[one]).join(' and ')}`;
}

/** @param readingStandardUncertaintyM  null where nobody stated it */
export function ruleWords(readingStandardUncertaintyM: number | null, zeroOffsetM: number): string {
  const reading =
    readingStandardUncertaintyM === null
      ? `reading uncertainty not stated: ${readingTakenWords()}`
      : `one reading ± ${fixed(readingStandardUncertaintyM * 1000, 1)} mm (standard uncertainty, finding the resonance included)`;
  return `${reading}; it reads ${fixed(zeroOffsetM * 1000, 1)} mm at no length`;
}

export function airWords(place: Place): string {
  const { temperatureC, humidityPct, pressurePa, co2MoleFraction } = place;
  const parts = [
    ...(place.filling === 'air' ? [] : [words.fillingNames[place.filling]]),
    temperatureC === null
      ? 'temperature not read'
      : `${fixed(temperatureC, 1)} ± ${fixed(place.temperatureStandardUncertaintyC, 1)} °C (standard uncertainty)`,
    humidityPct === null ? 'humidity not read' : `${fixed(humidityPct, 0)} % humidity`,
    pressurePa === null ? 'pressure not read' : `${fixed(pressurePa / 100, 0)} hPa`,
    ...(co2MoleFraction === null ? [] : [`${fixed(1e6 * co2MoleFraction, 0)} ppm carbon dioxide`]),
  ];
  return parts.join(', ');
}

export const METHOD_HEADING = 'Method';

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
  const byHand = marks - heard;
  const sentences = [
    'A sounding tuning fork is held at the mouth of an air column, and the column’s length is changed until the column resonates: its sound swells at the fork’s pitch.',
    heard === 0
      ? ''
      : `${heard} of ${counted(marks, 'mark was', 'marks were')} found by listening at the fork’s pitch alone, ${sources.map((source) => SOURCES[source]).join(' and ')}, against the room’s noise in the same narrow band; the length was then read off the rule.`,
    byHand === 0 ? '' : `${byHand} of ${counted(marks, 'was', 'were')} marked by hand.`,
    bracketed === 0
      ? ''
      : `Where two lengths stand (${bracketed}), the resonance lies between them: the middle counts.`,
    'A closed column resonates where its length is an odd number of quarter wavelengths, an open one where it is a whole number of half wavelengths, less an end correction at each open end. The speed is the wavelength times the pitch; one weighted fit takes all marks together, each with its uncertainty, and the walls’ slowing of the wave is taken out where the tube’s diameter is known.',
  ];
  return sentences.filter((sentence) => sentence !== '').join(' ');
}

const SOURCES: Readonly<Record<MarkEvidence['source'], string>> = {
  microphone: 'through the microphone',
  recording: 'in a recording',
  practice: 'on the simulated practice column',
};

/** A mark's length as the rule reads it, or both of a bracket. */
export function lengthWords({ lengthM, otherLengthM }: Mark): string {
  if (lengthM === null) return laterWords.marksPart.nothing;
  const one = fixed(lengthM * 100, 2);
  return otherLengthM === null || otherLengthM === lengthM
    ? one
    : `${one} to ${fixed(otherLengthM * 100, 2)}`;
}

/** How a mark came about and what the fit makes of it. @param againOf  number of the mark that it repeats */
export function remarkWords(mark: Mark, words: MarkWords, againOf: number | null): string {
  const remarks = [
    words.evidence,
    words.doubt,
    againOf === null ? null : `the resonance of mark ${againOf} passed again`,
    mark.excluded ? 'left out of the fit' : null,
    words.cause === null ? null : `outlier: ${words.cause}`,
    mark.note === '' ? null : mark.note,
  ];
  return remarks.filter((remark) => remark !== null).join('; ');
}

/** What a report of very many places doesn't print; null where it prints all. */
export function comparisonsLeftWords(places: number, pairs: number): string | null {
  const parts = [
    ...(places <= 0 ? [] : [laterWords.resultPart.notPrinted(places)]),
    ...(pairs === 0
      ? []
      : [
          `${counted(pairs, 'further pair of places is', 'further pairs of places are')} not printed: Compare on the page sets any two against each other.`,
        ]),
  ];
  return parts.length === 0 ? null : parts.join(' ');
}
