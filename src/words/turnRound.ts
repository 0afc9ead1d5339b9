import { LOW_FREQUENCY_END_RATIO } from '../air/endCorrection.ts';
import { LIMITS } from '../limits/limits.ts';
import { measuredEnd } from '../solver/measuredEnd.ts';
import type { AirTemperature } from '../solver/airTemperature.ts';
import type { GasMatch } from '../solver/otherGas.ts';
import type { Solution } from '../solver/solution.ts';
import type { UnknownFork } from '../solver/unknownFork.ts';
import { laterWords, words } from './inUse.ts';
import { either } from './lists.ts';
import { fixed, roundPair } from './numbers.ts';

/** The fork's frequency as its lengths and the predicted speed give it. */
export function forkFrequencyWords(found: UnknownFork | null): string {
  if (found === null) return laterWords.turnRound.noFork;
  const pair = roundPair(found.frequencyHz, found.expandedUncertaintyHz);
  return laterWords.turnRound.fork(pair.value, pair.uncertainty);
}

/** The air's temperature as the measured speed gives it. */
export function temperatureWords(found: AirTemperature | null): string {
  if (found === null) {
    const { lowest, highest } = LIMITS.temperatureC;
    return laterWords.turnRound.noTemperature(fixed(lowest, 0), fixed(highest, 0));
  }
  const pair = roundPair(found.temperatureC, 2 * found.standardUncertaintyC);
  return laterWords.turnRound.temperature(pair.value, pair.uncertainty);
}

/** Deviation beyond which a gas is ruled out, in standard uncertainties. */
const RULED_OUT = 3;

/** Which gas the measured speed fits. */
export function gasWords(matches: readonly GasMatch[]): string {
  const best = matches.at(0);
  if (best === undefined) return laterWords.turnRound.noGas;
  const fitting = matches.filter((match) => Math.abs(match.deviation) <= RULED_OUT);
  if (fitting.length === 0) return laterWords.turnRound.nearestGas(gasAndSpeed(best));
  return laterWords.turnRound.fittingGases(either(fitting.map(gasAndSpeed)));
}

function gasAndSpeed({ gas, speedMps }: GasMatch): string {
  return laterWords.turnRound.gas(words.gasNames[gas.id], fixed(speedMps, 0));
}

/** End correction over diameter as a rule of thumb. */
const USUAL_RATIO = 0.3;

/** The end correction as a part of the tube's diameter, beside what theory and the rule of thumb say. */
export function endRatioWords(solution: Solution | null, diameterM: number | null): string {
  if (solution === null || diameterM === null) return laterWords.turnRound.noDiameter;
  const measured = measuredEnd(solution, diameterM / 2);
  if (measured === null) return laterWords.turnRound.endFromTheory;
  const pair = roundPair(
    measured.endCorrectionM / diameterM,
    (2 * measured.standardUncertaintyM) / diameterM,
  );
  return laterWords.turnRound.endRatio(
    pair.value,
    pair.uncertainty,
    fixed(LOW_FREQUENCY_END_RATIO.unflanged / 2, 3),
    fixed(USUAL_RATIO, 1),
  );
}
