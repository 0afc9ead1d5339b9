import { aboveRoomDb, riseDb, riseStandardUncertaintyDb } from '../../resonance/passages/rise.ts';
import type { DetectedPassage } from '../../resonance/passages/detectedPassage.ts';
import type { Resonance, Sounding } from './listeningTypes.ts';

/**
 * A passage of the detector as the rest of the bench knows it.
 * @param flaggedAtS  null where it was found offline
 */
export function toResonance(
  passage: DetectedPassage,
  soundings: readonly Sounding[],
  flaggedAtS: number | null,
): Resonance {
  const { features, timeS, phaseSwingRad, halfPowerStartS, halfPowerEndS } = passage;
  const own = soundings.find((s) => s.startS <= timeS + 0.1 && (s.endS === null || timeS <= s.endS + 0.1));
  return {
    timeS,
    riseDb: riseDb(features),
    riseStandardUncertaintyDb: riseStandardUncertaintyDb(features),
    aboveRoomDb: aboveRoomDb(features, 5 * passage.noiseDensity),
    confidence: passage.probability,
    phaseSwingRad,
    halfPowerStartS,
    halfPowerEndS,
    slide: passage.direction > 0 ? 'longer' : 'shorter',
    soundingIndex: own?.index ?? null,
    flaggedAtS,
  };
}
