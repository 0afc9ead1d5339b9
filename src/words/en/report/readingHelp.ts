/** What a reader of the report needs beside the numbers. */
export const readingHelp = {
  legend:
    'In the plots, a point is a mark and the bar through it is its uncertainty. The line is the fit. A cross is an outlier, which the fit leaves out.',
  termsHeading: 'What the letters mean',
  /** After "k: " and the like. */
  terms: {
    k: 'the coverage factor. The standard uncertainty times k gives an interval that covers the true value in 95 of 100 such measurements.',
    ν: 'the degrees of freedom: how well the uncertainty itself is known. The fewer there are, the larger k is.',
    Eₙ: 'the difference between two values, divided by their combined expanded uncertainty. Between −1 and 1 the two agree.',
  },
  sourcesHeading: 'Sources',
  sources: {
    speed: (references: string) => `Speed of sound in air: ${references}.`,
    end: (references: string) => `End correction: ${references}.`,
    wall: (references: string) => `Slowing by the wall: ${references}.`,
    uncertainty: (references: string) => `Uncertainty: ${references}.`,
  },
};
