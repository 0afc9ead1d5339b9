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
    `Plots, working and budget of ${counted(places, 'further place is', 'further places are')} not printed; Working on the page shows those of the place that is chosen.`,
  cautions: 'Cautions',
  cautionList: [
    'Strike a fork on rubber or the sole of a shoe, never on glass or a hard edge.',
    'Keep a sounding fork away from teeth and glass.',
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
  left: (count: number) => `${count}, not printed; the table of marks holds them`,
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
  /** @param isAgain  whether it is another passage through that mark's resonance */
  number: (number: number, isAgain: boolean) => `${number}${isAgain ? ' again' : ''}`,
  /** Under the table. */
  below: (shown: number, all: number) =>
    `Lengths as the rule reads them.${shown === all ? '' : ` Of ${all} marks the first ${shown} are printed; the tables under Records hold all.`}`,
};

export const comparisonPart = {
  heading: 'Comparison with theory',
  headingHidden: 'Comparison',
  hidden: 'Theory is not shown in this lesson.',
  theory:
    'Theory is the speed of sound in air at the noted temperature, humidity and pressure (Cramer 1993), of another gas √(γRT/M).',
  /** @param difference  rounded, with its unit; null where theory gives no speed */
  place: (place: string, difference: string | null) =>
    `${place}: ${difference === null ? 'the air’s temperature wasn’t noted, so theory gives no speed to compare with.' : `measured minus theory is ${difference}.`}`,
};
