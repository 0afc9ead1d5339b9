/** Is a difference real? */
export const compare = {
  region: 'Compare',
  heading: 'Is the difference real?',
  lead: 'Errors that two results share (the same rule, the same fork) cancel; the rest decides.',
  by: 'Compare',
  ways: {
    place: 'places (and their temperatures)',
    fork: 'forks',
    ends: 'closed against open',
  },
  theoryHidden: 'Theory is hidden in this lesson.',
  noMark: 'There is no mark with a length yet: measure under Measure first.',
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
    `${groups} of them make ${(groups * (groups - 1)) / 2} pairs. Choose one: it is compared with each of the others.`,
  against: 'Against the others',
};

/** Speed against temperature, one row a place. */
export const temperatures = {
  heading: 'Speed against temperature',
  lead: 'One point a place; theory is the band from dry to saturated air.',
  columns: { place: 'Place', speed: 'Speed', theory: 'Compared with theory' },
  noSpeed: '—',
  noTemperature: 'temperature not noted',
};

/** End correction against diameter. */
export const ends = {
  heading: 'End correction against diameter',
  lead: 'One point a tube, each an experiment of its own in the notebook; the end correction needs resonances of two orders.',
};

/** The same marks read the other way. */
export const turned = {
  heading: 'Turn it round',
  lead: 'The same lengths, with another quantity as the unknown.',
  fork: 'Speed known, fork unknown',
  temperature: 'Fork known, temperature unknown',
  gas: 'Fork and temperature known, gas unknown',
  ends: 'End correction against the tube’s width',
  pending: '…',
};
