/** Names of places that nobody has named: they are the experiment's from then on, in whatever language. */
export const placeName = {
  usual: 'Lab',
  /** Where the practice column's air is another than that of the place so far. */
  practice: 'Practice column',
};
