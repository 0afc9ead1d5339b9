import type { Fork } from './experiment.ts';

/** The pitch that counts in the fit, with its standard uncertainty: as measured, else as stamped. */
export function forkInUse(fork: Fork): { readonly hz: number; readonly standardUncertaintyHz: number } {
  return fork.measuredHz === null || fork.measuredStandardUncertaintyHz === null
    ? { hz: fork.nominalHz, standardUncertaintyHz: fork.standardUncertaintyHz }
    : { hz: fork.measuredHz, standardUncertaintyHz: fork.measuredStandardUncertaintyHz };
}
