import type { PracticeReading } from '../session/hearing/practiceVerdict.ts';
import type { Solution } from '../solver/solution.ts';
import { laterWords } from './inUse.ts';
import type { NameMark } from './markNames.ts';
import { fixed, signed } from './numbers.ts';

/** What is true of the practice column, as far as it is compared with the result. */
export interface PracticeTruth {
  readonly freeSpeedMps: number;
  readonly forkHz: number;
}

/** The practice column's true speed and fork beside what was found. */
export function truthWords(truth: PracticeTruth, solution: Solution): string {
  const said = laterWords.practiceTruth;
  const errorMps = solution.speedMps - truth.freeSpeedMps;
  const isCovered = Math.abs(errorMps) <= solution.expandedUncertaintyMps;
  const beside = isCovered ? said.covered : said.notCovered;
  const speed = beside(
    fixed(truth.freeSpeedMps, 2),
    signed(errorMps, 2),
    signed((100 * errorMps) / truth.freeSpeedMps, 2),
  );
  return `${speed} ${said.fork(fixed(truth.forkHz, 2))}`;
}

/** One typed length beside its resonance and the loudest place. */
export function readingWords(reading: PracticeReading, nameMark: NameMark): string {
  const { key, lengthM, resonance, verdict } = reading;
  const said = laterWords.practiceTruth;
  const beside = said.reading(
    nameMark(key),
    centimetresOf(lengthM),
    centimetresOf(resonance.lengthM),
    centimetresOf(resonance.loudestM),
    signed(1000 * (resonance.loudestM - resonance.lengthM), 1),
  );
  const how = said.verdicts[verdict];
  return `${beside} ${typeof how === 'string' ? how : how(offMm(reading))}`;
}

/** To the tenth of a millimetre. */
const centimetresOf = (lengthM: number): string => fixed(100 * lengthM, 2);

const offMm = ({ lengthM, resonance }: PracticeReading): string =>
  fixed(1000 * Math.abs(lengthM - resonance.lengthM), 1);
