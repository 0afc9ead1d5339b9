import type { PracticeReading, PracticeVerdict } from '../session/hearing/practiceVerdict.ts';
import type { Solution } from '../solver/solution.ts';
import type { NameMark } from './markNames.ts';
import { fixed, signed } from './numbers.ts';

/** What is true of the practice column, as far as it is compared with the result. */
export interface PracticeTruth {
  readonly freeSpeedMps: number;
  readonly forkHz: number;
}

/** The practice column's true speed and fork beside what was found. */
export function truthWords(truth: PracticeTruth, solution: Solution): string {
  const errorMps = solution.speedMps - truth.freeSpeedMps;
  const percent = (100 * errorMps) / truth.freeSpeedMps;
  const covered = Math.abs(errorMps) <= solution.expandedUncertaintyMps;
  return (
    `The true speed is ${fixed(truth.freeSpeedMps, 2)} m/s: you are off by ${signed(errorMps, 2)} m/s (${signed(percent, 2)} %), ` +
    `${covered ? 'which your uncertainty covers' : 'more than your uncertainty says'}. ` +
    `The fork really has ${fixed(truth.forkHz, 2)} Hz.`
  );
}

/** Why the two lengths of each line differ. */
export const whyLoudestWords =
  'The loudest place lies beside the resonance because the fork’s own sound reaches the microphone, too, and adds up best with the column’s a little beside it.';

/** One typed length beside its resonance and the loudest place. */
export function readingWords(reading: PracticeReading, nameMark: NameMark): string {
  const { key, lengthM, resonance, verdict } = reading;
  const besideMm = 1000 * (resonance.loudestM - resonance.lengthM);
  const side = besideMm > 0 ? 'longer' : 'shorter';
  return (
    `${nameMark(key)}: you typed ${centimetresOf(lengthM)} cm. The column resonates at ${centimetresOf(resonance.lengthM)} cm ` +
    `and is loudest at ${centimetresOf(resonance.loudestM)} cm, ${fixed(Math.abs(besideMm), 1)} mm ${side}: ${verdicts[verdict](offMm(reading))}.`
  );
}

/** To the tenth of a millimetre. */
const centimetresOf = (lengthM: number): string => fixed(100 * lengthM, 2);

const offMm = ({ lengthM, resonance }: PracticeReading): string =>
  fixed(1000 * Math.abs(lengthM - resonance.lengthM), 1);

const verdicts: Readonly<Record<PracticeVerdict, (offMm: string) => string>> = {
  resonance: () => 'read well, at the resonance',
  loudest: () => 'read well, at the loudest place',
  between: () => 'read well, between the two',
  'too-long': (mm) => `${mm} mm too long for the resonance`,
  'too-short': (mm) => `${mm} mm too short for the resonance`,
};
