import { measuredEnd } from '../solver/measuredEnd.ts';
import type { AirTemperature } from '../solver/airTemperature.ts';
import type { GasMatch } from '../solver/otherGas.ts';
import type { Solution } from '../solver/solution.ts';
import type { UnknownFork } from '../solver/unknownFork.ts';
import { words } from './inUse.ts';
import { fixed, roundPair } from './numbers.ts';

/** The fork's frequency as its lengths and theory's speed give it. */
export function forkFrequencyWords(found: UnknownFork | null): string {
  if (found === null) {
    return 'Note the air’s temperature and mark at least one resonance of the fork chosen above.';
  }
  const pair = roundPair(found.frequencyHz, found.expandedUncertaintyHz);
  return `The fork chosen above has ${pair.value} ± ${pair.uncertainty} Hz (95 %), with theory’s speed at the noted temperature.`;
}

/** The air's temperature as the measured speed gives it. */
export function temperatureWords(found: AirTemperature | null): string {
  if (found === null) return 'There is no speed yet, or none that air has between −30 and 60 °C.';
  const pair = roundPair(found.temperatureC, 2 * found.standardUncertaintyC);
  return `The air is at ${pair.value} ± ${pair.uncertainty} °C (95 %), if it is air.`;
}

/** Deviation beyond which a gas is ruled out, in standard uncertainties. */
const RULED_OUT = 3;

/** Which gas the measured speed fits. */
export function gasWords(matches: readonly GasMatch[]): string {
  const best = matches.at(0);
  if (best === undefined) return 'Note the temperature and mark at least one resonance.';
  const fitting = matches.filter((match) => Math.abs(match.deviation) <= RULED_OUT);
  if (fitting.length === 0) {
    return `No gas on the list has this speed; ${words.gasNames[best.gas.id]} comes nearest with ${fixed(best.speedMps, 0)} m/s.`;
  }
  const names = fitting
    .map((match) => `${words.gasNames[match.gas.id]} (${fixed(match.speedMps, 0)} m/s)`)
    .join(' or ');
  return `The speed fits ${names}; the other gases on the list are ruled out.`;
}

/** The end correction as a part of the tube's diameter, beside what theory and the bench rule say. */
export function endRatioWords(solution: Solution | null, diameterM: number | null): string {
  if (solution === null || diameterM === null) return 'Note the tube’s diameter and mark two resonances.';
  const measured = measuredEnd(solution, diameterM / 2);
  if (measured === null) {
    return 'So far the end correction comes from theory: mark resonances of two orders to measure it.';
  }
  const pair = roundPair(
    measured.endCorrectionM / diameterM,
    (2 * measured.standardUncertaintyM) / diameterM,
  );
  return `e = (${pair.value} ± ${pair.uncertainty}) · d (95 %). A thin rim has 0.307 · d in theory (Levine & Schwinger 1948), the bench rule is 0.3 · d.`;
}
