import { resonanceWidthM, resonantLengthM, ringUpTimeS } from '../../air/columnResonance.ts';
import { endCorrection } from '../../air/endCorrection.ts';
import { speedOfSound } from '../../air/speedOfSound.ts';
import { USUAL_AIR } from '../../air/airState.ts';
import { wallLoss } from '../../air/wallLoss.ts';

/** What a resonance may be: which one, how wide, and how long the column takes to ring up. */
export interface ColumnGuess {
  /** n = 1, 2, 3…; null where the tube isn't known. */
  readonly order: number | null;
  /** Half of the width in length at half power, m; null where the tube isn't known. */
  readonly halfWidthM: number | null;
  /** Time constant of ringing up, s. */
  readonly ringUpS: number;
  /** How probable it is before anything is heard, > 0; need not add up to 1. */
  readonly weight: number;
}

/** What decides the widths. */
export interface KnownTube {
  /** Of the fork that is listened for, Hz, > 0. */
  readonly frequencyHz: number;
  readonly ends: 'closed' | 'open';
  /** Inside, m, > 0. */
  readonly diameterM: number;
  /** °C; 20 where nobody has read it: ten degrees change a width by 1 %. */
  readonly temperatureC?: number;
}

/**
 * How likely a resonance that is passed first is the first, second or third one (a judgement: students begin at the
 * short end, and a metre of tube holds three of the higher forks').
 */
const FIRST_MET = [0.5, 0.42, 0.08] as const;

/** Without a tube: from a wide tube's first resonance to a narrow one's third (references: tens of ms). */
const ANY_RING_UP_S = [0.035, 0.055, 0.085] as const;

/** Where nothing is known of the tube: how far off is then known in half widths alone. */
export const ANY_COLUMN: readonly ColumnGuess[] = ANY_RING_UP_S.map((ringUpS) => ({
  order: null,
  halfWidthM: null,
  ringUpS,
  weight: 1 / ANY_RING_UP_S.length,
}));

/**
 * One resonance of a tube from walls and radiation.
 * @param order  n = 1, 2, 3…
 * @throws RangeError naming the argument, its range and the value
 * @see resonanceWidthM
 */
export function columnGuess(tube: KnownTube, order: number, weight = 1): ColumnGuess {
  const { frequencyHz, ends, diameterM, temperatureC = USUAL_AIR.temperatureC } = tube;
  const radiusM = diameterM / 2;
  const freeMps = speedOfSound({ ...USUAL_AIR, temperatureC }).speedMps;
  const { speedRatio, attenuationNpPerM } = wallLoss(radiusM, frequencyHz, temperatureC, freeMps);
  const speedMps = freeMps * speedRatio;
  const { endCorrectionM } = endCorrection(radiusM, frequencyHz, speedMps);
  const lengthM = resonantLengthM({ order, ends, speedMps, frequencyHz, endCorrectionM });
  const column = { ends, radiusM, frequencyHz, speedMps, attenuationNpPerM };
  return {
    order,
    halfWidthM: resonanceWidthM({ ...column, lengthM }) / 2,
    // The air that moves beyond the open ends rings, too.
    ringUpS:
      (ringUpTimeS({ ...column, lengthM }) * (lengthM + endCorrectionM * (ends === 'open' ? 2 : 1))) /
      lengthM,
    weight,
  };
}

/** What the resonance that is passed first may be, in a tube that is known. */
export const guessesOf = (tube: KnownTube): readonly ColumnGuess[] =>
  FIRST_MET.map((weight, i) => columnGuess(tube, i + 1, weight));
