/** A text that is longer than an experiment may hold, and what to do. */
export const tooLong = {
  title: (length: number, longest: number): string =>
    `The title has ${length} characters; ${longest} is the most. Shorten it.`,
  place: (length: number, longest: number): string =>
    `The place’s name has ${length} characters; ${longest} is the most. Shorten it.`,
  group: (length: number, longest: number): string =>
    `The group’s name has ${length} characters; ${longest} is the most. Shorten it.`,
  fork_id: (length: number, longest: number): string =>
    `The fork’s name has ${length} characters; ${longest} is the most. Shorten it.`,
  note: (length: number, longest: number): string =>
    `The note has ${length} characters; ${longest} is the most. Shorten it.`,
};
