/** Is a difference real? */
export const compare = {
  region: 'Compare',
  heading: 'Is the difference real?',
  lead: 'Errors that both results share (the same rule, the same fork) cancel out. Only the others count.',
  by: 'Compare',
  ways: {
    place: 'places (and their temperatures)',
    fork: 'forks',
    ends: 'closed and open columns',
  },
  theoryHidden: 'This lesson hides the predicted speed.',
  noMark: 'No mark has a length yet. Mark a resonance under Measure first.',
  /** How a second one to compare comes about. */
  onlyOne: {
    place: (name: string) =>
      `There is only “${name}” to compare yet. Add a place under Apparatus, choose it above the column and mark a resonance there.`,
    fork: (name: string) =>
      `There is only “${name}” to compare yet. Add a fork under Apparatus, choose it above the column and mark a resonance with it.`,
    ends: (name: string) =>
      `There is only “${name}” to compare yet. Choose the other kind of column above the picture and mark a resonance in it.`,
  },
  manyPairs: (groups: number) =>
    `${groups} of them make ${(groups * (groups - 1)) / 2} pairs. Choose one to compare with each of the others.`,
  against: 'Compare with the others',
};

/** Speed against temperature, one row a place. */
export const temperatures = {
  heading: 'Speed against temperature',
  lead: 'One point for each place. The band is the predicted speed, from dry to saturated air.',
  columns: { place: 'Place', speed: 'Speed', theory: 'Difference from prediction' },
  noSpeed: '—',
  noTemperature: 'temperature not noted',
};

/** End correction against diameter. */
export const ends = {
  heading: 'End correction against diameter',
  lead: 'One point for each tube. Measure each tube in an experiment of its own; the end correction needs resonances of two orders.',
};

/** The same marks read the other way. */
export const turned = {
  heading: 'Turn it round',
  lead: 'The same marks, with another quantity as the unknown.',
  fork: 'Speed known, fork unknown',
  temperature: 'Fork known, temperature unknown',
  gas: 'Fork and temperature known, gas unknown',
  ends: 'End correction as a part of the diameter',
  pending: '…',
};
