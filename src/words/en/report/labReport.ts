import { counted } from '../grammar.ts';
import type { RoundedPair } from '../../numbers.ts';
import { dayAndTime } from '../../dates.ts';

export const report = {
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
    `Plots, working and budget of ${counted(places, 'further place is', 'further places are')} not printed. Working on the page shows those of the chosen place.`,
  cautions: 'Cautions',
  cautionList: [
    'Strike a fork on rubber or the sole of a shoe, never on glass or a hard edge.',
    'Keep a ringing fork away from teeth and glass.',
    'A glass tube breaks: clamp it softly. Keep water and electrical equipment apart.',
    'Played tones start quiet. Your school’s lab rules come first.',
  ],
  discussion: 'Discussion',
};

export const resultPart = {
  heading: 'Result: speed of sound in free air',
  own: 'c = ( ________ ± ________ ) m/s',
  speed: (speed: RoundedPair | null) =>
    speed === null ? 'No speed can be given yet.' : `c = (${speed.value} ± ${speed.uncertainty}) m/s`,
  none: 'There is no mark with a length yet.',
  notPrinted: (places: number) =>
    `${counted(places, 'further place is', 'further places are')} in the table “Result” under Records.`,
};

/** What belongs to one place: its name, or null where the experiment has no other. */
export const placePart = {
  plots: (place: string | null) => (place === null ? 'Plots' : `Plots, ${place}`),
  working: (place: string | null) => (place === null ? 'Working' : `Working, ${place}`),
  budget: (place: string | null) => (place === null ? 'Uncertainty budget' : `Uncertainty budget, ${place}`),
  budgetTable: 'Lines of the budget',
};

export const warningsPart = {
  heading: 'Warnings',
  none: 'None.',
  ofPlace: (place: string, warning: string) => `${place}: ${warning}`,
  notPrinted: (warnings: number) =>
    `${counted(warnings, 'further warning is', 'further warnings are')} not printed.`,
};

export const apparatusPart = {
  heading: 'Apparatus',
  fork: 'Fork',
  forksLeft: 'Further forks',
  tube: 'Tube',
  rule: 'Rule',
  air: (place: string) => `Air, ${place}`,
  placesLeft: 'Further places',
  left: (count: number) => `${count}, not printed; the table “Marks” under Records has them`,
};

/** What stands in the list of apparatus; numbers are rounded. */
export const apparatusFacts = {
  stamped: (hz: string, uncertaintyHz: string) =>
    `stamped ${hz} Hz ± ${uncertaintyHz} Hz (standard uncertainty)`,
  measured: (stampedHz: string, measuredHz: string, uncertaintyHz: string) =>
    `stamped ${stampedHz} Hz, measured ${measuredHz} ± ${uncertaintyHz} Hz (standard uncertainty); the measured frequency counts`,
  noDiameter: 'inside diameter not measured',
  diameter: (mm: string) => `inside diameter ${mm} mm`,
  otherDiameter: (mm: string) => `${mm} mm at the other open end`,
  reading: (mm: string) =>
    `one reading ± ${mm} mm (standard uncertainty, including how well the resonance was found)`,
  readingNotStated: (taken: string) => `reading uncertainty not stated: ${taken}`,
  zeroOffset: (mm: string) => `zero offset ${mm} mm`,
  temperature: (celsius: string, uncertainty: string) =>
    `${celsius} ± ${uncertainty} °C (standard uncertainty)`,
  noTemperature: 'temperature not read',
  humidity: (percent: string) => `${percent} % humidity`,
  noHumidity: 'humidity not read',
  pressure: (hPa: string) => `${hPa} hPa`,
  noPressure: 'pressure not read',
  co2: (ppm: string) => `${ppm} ppm carbon dioxide`,
};

/** What was done, as far as the marks show it: sentences one after the other. */
export const methodPart = {
  heading: 'Method',
  opening:
    'A ringing tuning fork is held at the mouth of an air column, and the length of the column is changed until it resonates: the sound swells at the fork’s frequency.',
  /** @param where  from `sources` */
  heard: (heard: number, marks: number, where: string) =>
    `${heard} of ${counted(marks, 'mark was', 'marks were')} found by listening at the fork’s frequency alone, ${where}, and comparing with the room noise in the same narrow band; the length was then read off the rule.`,
  sources: {
    microphone: 'through the microphone',
    recording: 'in a recording',
    practice: 'on the simulated practice column',
  },
  byHand: (byHand: number, marks: number) =>
    `${byHand} of ${counted(marks, 'mark was', 'marks were')} added by hand.`,
  bracketed: (marks: number) =>
    `Where a mark has two lengths (${marks}), the resonance lies between them and the middle counts.`,
  theory:
    'A closed column resonates where its length is an odd number of quarter wavelengths, an open one where it is a whole number of half wavelengths, less an end correction at each open end. The speed is wavelength times frequency. One weighted fit uses all marks together, each with its uncertainty. Where the tube’s diameter is known, the slowing of the wave by the wall is corrected for.',
};

export const marksPart = {
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
  /** @param isAgain  whether it is another pass through that mark's resonance */
  number: (number: number, isAgain: boolean) => `${number}${isAgain ? ' again' : ''}`,
  /** A resonance that lies between two lengths. */
  between: (oneCm: string, otherCm: string) => `${oneCm} to ${otherCm}`,
  /** Remarks on one mark. */
  repeats: (mark: number) => `the resonance of mark ${mark} passed again`,
  leftOut: 'left out of the fit',
  outlier: (cause: string) => `outlier: ${cause}`,
  /** Under the table. */
  below: (shown: number, all: number) =>
    shown === all
      ? 'Lengths as the rule reads them.'
      : `Lengths as the rule reads them. Of ${all} marks the first ${shown} are printed; the tables under Records have all.`,
};

export const comparisonPart = {
  heading: 'Comparison with theory',
  headingHidden: 'Comparison',
  hidden: 'This lesson hides the predicted speed.',
  theory:
    'The predicted speed is that of sound in air at the noted temperature, humidity and pressure (Cramer 1993); in another gas it is √(γRT/M).',
  /** @param difference  rounded, with its unit; null where no speed can be predicted */
  place: (place: string, difference: string | null) =>
    difference === null
      ? `${place}: the air’s temperature wasn’t noted, so no speed can be predicted.`
      : `${place}: measured minus predicted speed is ${difference}.`,
  pairsLeft: (pairs: number) =>
    `${counted(pairs, 'further pair of places is', 'further pairs of places are')} not printed. Compare on the page shows the difference between any two.`,
};
