import type { ColumnEnds, Mark, MarkEvidence } from '../../marks/mark.ts';
import type { Fork, Place, Tube } from '../../notebook/experiment.ts';
import { ENDS_LONG } from '../columnEnds.ts';
import { FILLING_NAMES } from '../gasNames.ts';
import type { MarkWords } from '../marks.ts';
import { mouthWords } from '../mouths.ts';
import { counted, fixed, roundPair, stampedHertz } from '../numbers.ts';
import type { RoundedPair } from '../numbers.ts';
import { READING_TAKEN } from '../readingTaken.ts';
import { dayAndTime } from '../times.ts';

export const reportWords = {
  /** Of an experiment without a title: of the report, and of its file. */
  title: 'Speed of sound in an air column',
  fileTitle: 'Air column report',
  dates: (createdAt: string, changedAt: string) =>
    `Begun ${dayAndTime(createdAt)}, last changed ${dayAndTime(changedAt)} (UTC)`,
  names: 'Names',
  classAndDate: 'Class and date',
  date: 'Date',
  group: (group: string) => `Group: ${group}`,
  className: (name: string) => `Class: ${name}`,
  questions: 'Questions',
  task: 'Task',
  note: 'Note',
  notWorked: (places: number) =>
    `Plots, working and budget of ${counted(places, 'further place is', 'further places are')} not printed; Working on the page shows those of the place that is chosen.`,
  cautions: 'Cautions',
  cautionList: [
    'Strike a fork on rubber or the sole of a shoe, never on glass or a hard edge.',
    'Keep a sounding fork away from teeth and glass.',
    'A glass tube breaks: clamp it softly. Keep water and electrical equipment apart.',
    'Played tones start quiet. Your school’s lab rules come first.',
  ],
  discussion: 'Discussion',
} as const;

export const resultPartWords = {
  heading: 'Result: speed of sound in free air',
  own: 'c = ( ________ ± ________ ) m/s',
  speed: (speed: RoundedPair | null) =>
    speed === null ? 'No speed can be given yet.' : `c = (${speed.value} ± ${speed.uncertainty}) m/s`,
  none: 'There is no mark with a length yet.',
  notPrinted: (places: number) => placesNotPrinted(places),
} as const;

/** What belongs to one place: its name, or null where the experiment has no other. */
export const placePartWords = {
  plots: (place: string | null) => `Plots${at(place)}`,
  working: (place: string | null) => `Working${at(place)}`,
  budget: (place: string | null) => `Uncertainty budget${at(place)}`,
  budgetTable: 'Lines of the budget',
} as const;

export const warningsPartWords = {
  heading: 'Warnings',
  none: 'None.',
  ofPlace: (place: string, warning: string) => `${place}: ${warning}`,
  notPrinted: (warnings: number) =>
    `${counted(warnings, 'further warning is', 'further warnings are')} not printed.`,
} as const;

export const apparatusPartWords = {
  heading: 'Apparatus',
  fork: 'Fork',
  forksLeft: 'Further forks',
  tube: 'Tube',
  rule: 'Rule',
  air: (place: string) => `Air, ${place}`,
  placesLeft: 'Further places',
  left: (count: number) => `${count}, not printed; the table of marks holds them`,
} as const;

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
  return `${width}${other}; ${mouthWords(mouth)}; ${ends.map((one) => ENDS_LONG[one]).join(' and ')}`;
}

/** @param readingStandardUncertaintyM  null where nobody stated it */
export function ruleWords(readingStandardUncertaintyM: number | null, zeroOffsetM: number): string {
  const reading =
    readingStandardUncertaintyM === null
      ? `reading uncertainty not stated: ${READING_TAKEN}`
      : `one reading ± ${fixed(readingStandardUncertaintyM * 1000, 1)} mm (standard uncertainty, finding the resonance included)`;
  return `${reading}; it reads ${fixed(zeroOffsetM * 1000, 1)} mm at no length`;
}

export function airWords(place: Place): string {
  const { temperatureC, humidityPct, pressurePa, co2MoleFraction } = place;
  const parts = [
    ...(place.filling === 'air' ? [] : [FILLING_NAMES[place.filling]]),
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

export const marksPartWords = {
  heading: 'Marks',
  none: 'None yet.',
  table: 'Table of marks',
  mark: 'Mark',
  column: 'Fork and column',
  length: 'Length, cm',
  order: 'Order',
  residual: 'From the fit, mm',
  remarks: 'Remarks',
  /** What a cell says where there is nothing to say. */
  nothing: '—',
  /** @param isAgain  whether it is another passage through that mark's resonance */
  number: (number: number, isAgain: boolean) => `${number}${isAgain ? ' again' : ''}`,
  /** Under the table. */
  below: (shown: number, all: number) =>
    `Lengths as the rule reads them.${shown === all ? '' : ` Of ${all} marks the first ${shown} are printed; the tables under Records hold all.`}`,
} as const;

/** A mark's length as the rule reads it, or both of a bracket. */
export function lengthWords({ lengthM, otherLengthM }: Mark): string {
  if (lengthM === null) return marksPartWords.nothing;
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

export const comparisonPartWords = {
  heading: 'Comparison with theory',
  headingHidden: 'Comparison',
  hidden: 'Theory is not shown in this lesson.',
  theory:
    'Theory is the speed of sound in air at the noted temperature, humidity and pressure (Cramer 1993), of another gas √(γRT/M).',
  /** @param difference  rounded, with its unit; null where theory gives no speed */
  place: (place: string, difference: string | null) =>
    `${place}: ${difference === null ? 'the air’s temperature wasn’t noted, so theory gives no speed to compare with.' : `measured minus theory is ${difference}.`}`,
} as const;

/** What a report of very many places doesn't print; null where it prints all. */
export function comparisonsLeftWords(places: number, pairs: number): string | null {
  const parts = [
    ...(places <= 0 ? [] : [placesNotPrinted(places)]),
    ...(pairs === 0
      ? []
      : [
          `${counted(pairs, 'further pair of places is', 'further pairs of places are')} not printed: Compare on the page sets any two against each other.`,
        ]),
  ];
  return parts.length === 0 ? null : parts.join(' ');
}

function placesNotPrinted(places: number): string {
  return `${counted(places, 'further place is', 'further places are')} in the table “Result” under Records.`;
}

function at(place: string | null): string {
  return place === null ? '' : `, ${place}`;
}
