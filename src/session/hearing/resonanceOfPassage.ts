import type { CentreMoment } from '../../resonance/following/passRun.ts';
import { aboveRoomDb, riseDb, riseStandardUncertaintyDb } from '../../resonance/passages/rise.ts';
import type { ResonanceCentre } from '../../marks/mark.ts';
import type { DetectedPassage } from '../../resonance/passages/detectedPassage.ts';
import type { Resonance, Sounding } from './listeningTypes.ts';

/**
 * A passage of the detector as the rest of the bench knows it.
 * @param centre  when the length was right; null where it can't be told
 * @param flaggedAtS  null where it was found offline
 */
export function resonanceOfPassage(
  passage: DetectedPassage,
  soundings: readonly Sounding[],
  centre: CentreMoment | null,
  flaggedAtS: number | null,
): Resonance {
  const { features, timeS, phaseSwingRad, halfPowerStartS, halfPowerEndS } = passage;
  const own = soundingOf(timeS, soundings);
  return {
    timeS,
    centre: centre === null ? null : centreOf(centre),
    riseDb: riseDb(features),
    riseStandardUncertaintyDb: riseStandardUncertaintyDb(features),
    aboveRoomDb: aboveRoomDb(features, 5 * passage.noiseDensity),
    confidence: passage.probability,
    certainty: passage.certainty,
    phaseSwingRad,
    halfPowerStartS,
    halfPowerEndS,
    slide: passage.direction > 0 ? 'longer' : 'shorter',
    soundingIndex: own?.index ?? null,
    flaggedAtS,
  };
}

/** The sounding in which something happened; undefined where none was made out. */
export const soundingOf = (timeS: number, soundings: readonly Sounding[]): Sounding | undefined =>
  soundings.find((s) => s.startS <= timeS + 0.1 && (s.endS === null || timeS <= s.endS + 0.1));

const centreOf = ({
  timeS,
  standardUncertaintyHalfWidths,
  shareRe,
  shareIm,
}: CentreMoment): ResonanceCentre => ({
  timeS,
  standardUncertaintyHalfWidths,
  shareRe,
  shareIm,
});
