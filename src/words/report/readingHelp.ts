import { laterWords } from '../inUse.ts';

/** Where it is to be found, as every language cites it. */
const REFERENCES = {
  speed: 'O. Cramer, J. Acoust. Soc. Am. 93, 2510 (1993)',
  end: 'H. Levine, J. Schwinger, Phys. Rev. 73, 383 (1948); J.-P. Dalmont, C. J. Nederveen, N. Joly, J. Sound Vib. 244, 505 (2001)',
  wall: 'C. Zwikker, C. W. Kosten, Sound Absorbing Materials (1949); D. H. Keefe, J. Acoust. Soc. Am. 75, 58 (1984)',
  uncertainty: 'JCGM 100:2008, Guide to the Expression of Uncertainty in Measurement',
} as const;

/** What the working rests on. @param hideTheory  where a lesson keeps the predicted speed back */
export function sourcesWords(hideTheory: boolean): readonly string[] {
  const { speed, end, wall, uncertainty } = laterWords.readingHelp.sources;
  return [
    ...(hideTheory ? [] : [speed(REFERENCES.speed)]),
    end(REFERENCES.end),
    wall(REFERENCES.wall),
    uncertainty(REFERENCES.uncertainty),
  ];
}
