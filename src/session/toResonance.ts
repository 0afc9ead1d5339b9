import { passageCourse } from '../resonance/passageCourse.ts';
import type { JudgedCandidate } from '../resonance/passages.ts';
import { aboveRoomDb, reasonText, riseDb, riseStandardUncertaintyDb } from '../resonance/reason.ts';
import type { ToneView } from '../resonance/toneView.ts';
import type { Resonance, Sounding } from './listeningTypes.ts';

/**
 * An event of the detector as the rest of the bench knows it.
 * @param view  the view that the event's indices belong to
 * @param flaggedAtS  null for a second look
 */
export function toResonance(
  event: JudgedCandidate,
  view: ToneView,
  soundings: readonly Sounding[],
  flaggedAtS: number | null,
): Resonance {
  const { evidence } = event;
  const toS = (index: number): number => (index + view.firstIndex) / view.rateHz;
  const timeS = toS(evidence.peakIndex);
  const course = passageCourse(view, evidence);
  const rise = riseDb(evidence);
  const above = aboveRoomDb(evidence, 5 * (view.noiseDensity[evidence.peakIndex] ?? 0));
  const own = soundings.find((s) => s.startS <= timeS + 0.1 && (s.endS === null || timeS <= s.endS + 0.1));
  return {
    timeS,
    riseDb: rise,
    riseStandardUncertaintyDb: riseStandardUncertaintyDb(evidence),
    aboveRoomDb: above,
    confidence: event.probability,
    phaseSwingRad: course.phaseSwingRad,
    halfPowerStartS: toS(course.halfPowerStart),
    halfPowerEndS: toS(course.halfPowerEnd),
    slide: event.fit.direction > 0 ? 'longer' : 'shorter',
    soundingIndex: own?.index ?? null,
    flaggedAtS,
    reason: reasonText(rise, above, course.phaseSwingRad),
  };
}
