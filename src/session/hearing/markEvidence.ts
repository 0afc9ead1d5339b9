import { isWithin, LIMITS } from '../../limits/limits.ts';
import type { LevelStretch, MarkEvidence, ResonanceCentre } from '../../marks/mark.ts';
import type { LevelLog } from './levelLog.ts';
import type { Resonance, Sounding } from './listeningTypes.ts';

/** What is kept of the level trace before and after a peak, s: the whole of a careful passage. */
export const KEPT_AROUND_S = 3;

/**
 * The stretch of trace that is kept with a mark whose level peaked then, as far as it has been heard.
 * @param endS  where the trace of the mark's fork ends, s
 */
export function evidenceTrace(log: LevelLog, peakS: number, endS = Infinity): LevelStretch | null {
  return log.stretch(peakS - KEPT_AROUND_S, Math.min(peakS + KEPT_AROUND_S, endS));
}

/**
 * What is kept with a mark of the resonance that led to it.
 * @param sounding  the one it was found in; undefined where none was made out
 * @param reason  why it was flagged, in one line for a person
 */
export function evidenceOf(
  resonance: Resonance,
  sounding: Sounding | undefined,
  source: MarkEvidence['source'],
  trace: LevelStretch | null,
  reason: string,
): MarkEvidence {
  return {
    source,
    timeS: resonance.timeS,
    riseDb: resonance.riseDb,
    aboveRoomDb: resonance.aboveRoomDb,
    confidence: resonance.confidence,
    frequencyHz: sounding?.frequencyHz ?? null,
    frequencyStandardUncertaintyHz: sounding?.frequencyStandardUncertaintyHz ?? null,
    reason,
    trace,
    centre: keptCentre(resonance.centre),
  };
}

/** A centre as it may be kept; one beyond a record's limits says nothing. */
function keptCentre(centre: ResonanceCentre | null): ResonanceCentre | null {
  if (centre === null) return null;
  const isSound =
    isWithin(LIMITS.timeS, centre.timeS) &&
    isWithin(LIMITS.centreStandardUncertaintyHalfWidths, centre.standardUncertaintyHalfWidths) &&
    isWithin(LIMITS.centreShare, centre.shareRe) &&
    isWithin(LIMITS.centreShare, centre.shareIm);
  return isSound ? centre : null;
}
