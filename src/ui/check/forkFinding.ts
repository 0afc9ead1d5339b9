import type { Fork } from '../../notebook/experiment.ts';
import type { Sounding } from '../../session/hearing/listeningTypes.ts';
import type { ForkFinding } from '../../words/page/soundCheck.ts';

/** Nobody knows a fork better than this, Hz. */
const LEAST_UNCERTAINTY_HZ = 1e-3;

/**
 * The best measured pitch of this run against the fork's stamp.
 * @returns null before any sounding gave a pitch
 */
export function forkFinding(soundings: readonly Sounding[], fork: Fork): ForkFinding | null {
  let best: { hz: number; u: number; decayS: number | null } | null = null;
  for (const { frequencyHz, frequencyStandardUncertaintyHz, decayTimeS } of soundings) {
    if (frequencyHz === null || frequencyStandardUncertaintyHz === null) continue;
    if (best === null || frequencyStandardUncertaintyHz < best.u) {
      best = { hz: frequencyHz, u: frequencyStandardUncertaintyHz, decayS: decayTimeS };
    }
  }
  if (best === null) return null;
  return {
    measuredHz: best.hz,
    standardUncertaintyHz: Math.max(best.u, LEAST_UNCERTAINTY_HZ),
    stampedHz: fork.nominalHz,
    decayTimeS: best.decayS,
  };
}
