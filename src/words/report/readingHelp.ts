/** What a reader needs beside the numbers. */
export const legendWords =
  'In the plots a point is a mark, the bar through it is its uncertainty, the line is the fit, and a cross is an outlier that the fit leaves out.';

export const TERMS_HEADING = 'What the letters mean';

/** A sentence each. @param hideTheory  where a lesson keeps the comparison back */
export function termsWords(
  hideTheory: boolean,
): readonly { readonly name: string; readonly words: string }[] {
  return [
    {
      name: 'k',
      words:
        'the coverage factor: the standard uncertainty times k gives the interval that covers the true value in 95 of 100 such measurements.',
    },
    {
      name: 'ν',
      words:
        'the degrees of freedom: how much the uncertainty itself rests on; the fewer there are, the larger k.',
    },
    ...(hideTheory
      ? []
      : [
          {
            name: 'Eₙ',
            words:
              'the difference between two values over both expanded uncertainties together; within ±1 the two agree.',
          },
        ]),
  ];
}

export const SOURCES_HEADING = 'Sources';

/** What the working rests on. @param hideTheory  where a lesson keeps theory's speed back */
export function sourcesWords(hideTheory: boolean): readonly string[] {
  return [
    ...(hideTheory ? [] : ['Speed of sound in air: O. Cramer, J. Acoust. Soc. Am. 93, 2510 (1993).']),
    'End correction: H. Levine and J. Schwinger, Phys. Rev. 73, 383 (1948); J.-P. Dalmont, C. J. Nederveen and N. Joly, J. Sound Vib. 244, 505 (2001).',
    'Slowing by the walls: C. Zwikker and C. W. Kosten, Sound Absorbing Materials (1949); D. H. Keefe, J. Acoust. Soc. Am. 75, 58 (1984).',
    'Uncertainty: JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement.',
  ];
}
