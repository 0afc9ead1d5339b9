import { counted, plural } from './grammar.ts';

/** What the groups' results give together. */
export const classResult = {
  none: 'No group has a result yet.',
  counted: (groups: number, all: number) => `${groups} of ${counted(all, 'group')} counted.`,
  others: 'The others are in the table with the reason.',
  interval: 'In 95 of 100 such classes the true speed lies within the ±, if the groups share no error.',
  spread: (mps: string) =>
    `The groups’ results differ more than their own uncertainties explain: by another ${mps} m/s (standard deviation). A group alone can’t see such errors.`,
  noSpread: 'The groups differ by no more than their own uncertainties explain.',
  noAir: 'No group noted a temperature: the speeds are used as they are.',
  referred: (celsius: string) =>
    `All speeds are converted to ${celsius} °C with the formula for the speed of sound in air.`,
  withoutAir: (groups: number) =>
    plural(
      groups,
      `${groups} group noted no temperature: its speed is used as it is.`,
      `${groups} groups noted no temperature: their speeds are used as they are.`,
    ),
  theory: (mps: string, difference: string) =>
    `The predicted speed for this air is ${mps} m/s. Difference of the class from it: ${difference} m/s.`,
  shared:
    'Errors that all groups share, such as rules of the same make, don’t average out and are not in this uncertainty.',
  method: 'Method: random-effects mean (Paule & Mandel 1982); interval by Hartung & Knapp 2001.',
};

/** What the table of a class says of one group. */
export const classGroup = {
  row: (number: string) => `Row ${number}`,
  mark: (number: string) => `Mark ${number}`,
  /** What is wrong with a mark; it goes by one of the names above. */
  markCause: (mark: string, cause: string) => `${mark}: ${cause}`,
  noResult: 'No result.',
  outlier: (difference: string) => `Outlier, not counted: ${difference} m/s from the class’s result.`,
  noReason: 'No marks came with it that could show why.',
  held: 'Not counted until you have checked it. Tick it to count it as it is.',
  longColumn: (metres: string) =>
    `A column of ${metres} m is longer than school tubes are. Were millimetres typed for centimetres?`,
  resultAlone: 'A result without marks.',
  noAir: 'No temperature noted: the speed is used as it is.',
  /** A group that a table of results doesn't name. */
  unnamed: (table: string, row: number) => `${table}, row ${row}`,
};

/** Which group brought this one's result already. */
export const sameGroup = {
  'same marks': (group: string) => `The same marks as “${group}”.`,
  'earlier state of the same experiment': (group: string) => `An earlier version of “${group}”.`,
  'same group again': (group: string) => `The same group as “${group}”.`,
};

/** What a class may talk about. */
export const classDiscussion = {
  spread: 'The groups’ results differ more than their uncertainties allow. What did nobody think of?',
  agree: 'The groups agree within their uncertainties. What could all of them have got wrong together?',
  apart: (groups: string) =>
    `These results stand apart: ${groups}. Everybody can learn from them: what in the setup would make just this difference?`,
  /** The end of a list of groups. */
  others: (count: number) => counted(count, 'other'),
  temperatures: (coldest: string, warmest: string) =>
    `The air was from ${coldest} to ${warmest} °C. In the picture of speed and temperature, how many m/s per degree do you find, and are the groups’ uncertainties small enough to see it?`,
  moreGroups: 'How would the mean and its uncertainty change if twice as many groups had measured?',
};

export const spreadPicture = {
  title: 'Spread of the class',
  heading: 'Speed of sound, group by group',
  axis: 'speed of sound, m/s (bars: 95 %)',
  shows: (groups: number, mps: string, uncertainty: string) =>
    `${counted(groups, 'group')}, from the slowest to the fastest, with 95 % intervals. The band is the class’s result, ${mps} ± ${uncertainty} m/s. Hollow points are not counted.`,
  outliers: (count: number) =>
    plural(count, 'The cross is an outlier.', `The ${count} crosses are outliers.`),
  beyond: 'What lies beyond the edge is drawn at the edge.',
};
