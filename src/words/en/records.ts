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

/** Why a change to an experiment can't be saved, and what to do. */
export const keepingFault = {
  listFull: {
    marks: (most: number) =>
      `An experiment holds ${most} marks at most. Begin another experiment for more (Records).`,
    deletedMarks: (most: number) =>
      `An experiment holds ${most} deleted marks at most. Bring some back, or begin another experiment (Records).`,
    forks: (most: number) => `An experiment holds ${most} forks at most. Remove one that has no marks.`,
    places: (most: number) => `An experiment holds ${most} places at most. Remove one that has no marks.`,
  },
  unreadable: (why: string) => `That can’t be saved: ${why}`,
  tooLarge: (megabytes: string, mostMegabytes: string) =>
    `The experiment would have ${megabytes} MB; its file may have ${mostMegabytes} MB. Begin another one for more (Records), or shorten its notes.`,
};

/** Why a saved experiment can't be opened; goes on after a colon. */
export const notLoaded = {
  missing: 'it is no longer there.',
  unreadable: (why: string) => `${why} Under Records it can be saved as it is.`,
};
