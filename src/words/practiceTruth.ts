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
  return [
    said.speed(fixed(truth.freeSpeedMps, 2)),
    said[isCovered ? 'covered' : 'notCovered'](
      signed(errorMps, 2),
      signed((100 * errorMps) / truth.freeSpeedMps, 2),
    ),
    said.fork(fixed(truth.forkHz, 2)),
  ].join(' ');
}

/** One typed length beside its resonance and the loudest place. */
export function readingWords(reading: PracticeReading, nameMark: NameMark): string {
  const { key, lengthM, resonance } = reading;
  const said = laterWords.practiceReading;
  const besideM = resonance.loudestM - resonance.lengthM;
  const loudest = besideM > 0 ? said.loudestLonger : said.loudestShorter;
  return [
    said.typed(nameMark(key), centimetres(lengthM)),
    loudest(centimetres(resonance.lengthM), centimetres(resonance.loudestM), millimetres(besideM)),
    verdictWords(reading),
  ].join(' ');
}

function verdictWords({ verdict, lengthM, resonance }: PracticeReading): string {
  const { atResonance, atLoudest, between, tooLong, tooShort } = laterWords.practiceReading;
  const off = millimetres(lengthM - resonance.lengthM);
  switch (verdict) {
    case 'resonance':
      return atResonance;
    case 'loudest':
      return atLoudest;
    case 'between':
      return between;
    case 'too-long':
      return tooLong(off);
    case 'too-short':
      return tooShort(off);
  }
}

/** To the tenth of a millimetre. */
function centimetres(lengthM: number): string {
  return fixed(100 * lengthM, 2);
}

/** Without the side. */
function millimetres(lengthM: number): string {
  return fixed(1000 * Math.abs(lengthM), 1);
}
