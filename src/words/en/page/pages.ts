/** Going through any long list. */
export const pages = {
  previous: 'Previous',
  next: 'Next',
  shown: 'Shown',
  part: (first: number, last: number) => `${first} to ${last}`,
};

/** What is said of each list that has pages. */
export const list = {
  forks: {
    pages: 'Pages of forks',
    previous: 'Previous forks',
    next: 'Next forks',
    which: 'Which forks are shown',
    ofAll: (total: number) => `of ${total} forks`,
  },
  places: {
    pages: 'Pages of places',
    previous: 'Previous places',
    next: 'Next places',
    which: 'Which places are shown',
    ofAll: (total: number) => `of ${total} places`,
  },
  marks: {
    pages: 'Pages of marks',
    previous: 'Previous marks',
    next: 'Next marks',
    which: 'Which marks are shown',
    ofAll: (total: number) => `of ${total} marks`,
  },
  deletedMarks: {
    pages: 'Pages of deleted marks',
    previous: 'Previous deleted marks',
    next: 'Next deleted marks',
    which: 'Which deleted marks are shown',
    ofAll: (total: number) => `of ${total} deleted marks`,
  },
  pairs: {
    pages: 'Pages of pairs',
    previous: 'Previous pairs',
    next: 'Next pairs',
    which: 'Which pairs are shown',
    ofAll: (total: number) => `of ${total} pairs`,
  },
};
