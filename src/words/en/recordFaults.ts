/** What is wrong with a record or a file of one. Names, numbers and kinds are those of the file. */
export const recordFault = {
  /** @param path  of a field @param what  one of `mustBe`, or that lists are unequal */
  at: (path: string, what: string) => `${path} ${what}`,
  /** What a field must be; its name goes before it. @param found  what stands there */
  mustBe: {
    object: (found: string) => `must be an object, but it is ${found}.`,
    'whole-number': (found: string) => `must be a whole number, but it is ${found}.`,
    flag: (found: string) => `must be true or false, but it is ${found}.`,
    text: (found: string, longest: number) =>
      `must be text of at most ${longest} characters, but it is ${found}.`,
    list: (found: string, longest: number) => `must be a list of at most ${longest}, but it is ${found}.`,
    number: (found: string, lowest: string, highest: string) =>
      `must be a number from ${lowest} to ${highest}, but it is ${found}.`,
    choice: (found: string, choices: string) => `must be one of ${choices}, but it is ${found}.`,
    reading: (found: string, lowest: string, highest: string, zeroOffset: string) =>
      `must be from ${lowest} to ${highest}, so that the zero offset of ${zeroOffset} leaves a column, but it is ${found}.`,
  },
  unequalLists: (one: string, other: string) => `must have as many values in ${one} as in ${other}.`,
  sameId: {
    forks: 'forks: two forks have the same id.',
    places: 'places: two places have the same id.',
    marks: 'marks: two marks have the same id.',
  },
  /** A mark names a fork or place that isn't there. */
  ofMark: {
    fork: (markId: string, id: string) => `mark ${markId}: there is no fork “${id}” in this file.`,
    place: (markId: string, id: string) => `mark ${markId}: there is no place “${id}” in this file.`,
  },
  /** So does what is measured now. */
  ofPresent: {
    fork: (id: string) => `present: there is no fork “${id}” in this file.`,
    place: (id: string) => `present: there is no place “${id}” in this file.`,
  },
  noObject: 'This isn’t an experiment: a JSON object was expected.',
  newerVersion: (version: number, newest: number) =>
    `This was made by a newer version of this page (schemaVersion is ${version}; this one reads up to ${newest}). Reload the page to update it, then open it again.`,
  noVersion: (found: string, newest: number) =>
    `schemaVersion must be a whole number from 1 to ${newest}, but it is ${found}. This may be a file of another program.`,
  /** @param said  the engine's own word for it, the only clue that there is */
  unreadable: (said: string) => `This can’t be read (${said}).`,
};
