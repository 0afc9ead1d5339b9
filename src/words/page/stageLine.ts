import { waitingMarks } from '../../notebook/markList.ts';
import type { Session } from '../../session/session.ts';
import { captureFailureWords } from '../capture.ts';
import { inFull } from '../faultWords.ts';
import { words } from '../inUse.ts';

/** How long the line says that a slide was too fast, s. */
const SAID_S = 5;

/** Has a resonance just gone by too fast? */
function isTooFast({ warnings, latest }: Session['hearing']['trace']): boolean {
  const fast = warnings.find(({ code }) => code === 'slide-too-fast');
  return fast !== undefined && latest !== null && latest.timeS - (fast.timeS ?? -Infinity) < SAID_S;
}

/** What comes before any next step while the page listens; null where nothing does. */
export function urgentWords({ capture, trace }: Session['hearing']): string | null {
  if (capture.kind === 'starting')
    return capture.waitsFor === undefined ? words.stageLine.waiting : words.waitsFor[capture.waitsFor];
  if (capture.kind !== 'running') return null;
  if (capture.isSilent === true) return words.noSound;
  if (isTooFast(trace)) return `${words.stageLine.tooFast} ${words.listening.slower}`;
  return trace.latest === null ? words.stageLine.roomNoise : null;
}

/** What is going on and what to do next, in one line. @param isRecording  whether that is the source that is chosen */
export function stageWords(
  { experiment, hearing }: Pick<Session, 'experiment' | 'hearing'>,
  isRecording: boolean,
): string {
  const { capture, trace } = hearing;
  const said = words.stageLine;
  switch (capture.kind) {
    case 'idle':
      return isRecording ? said.openRecording : said.listenFirst;
    case 'interrupted':
      return words.hold[capture.hold];
    case 'failed':
      return inFull(captureFailureWords(capture.failure));
    case 'ended':
      return waitingMarks(experiment).length > 0 ? said.overTypeLengths : said.over;
    case 'starting':
    case 'running': {
      const urgent = urgentWords(hearing);
      if (urgent !== null) return urgent;
      if (!trace.soundsOrDid) return said.strike;
      if (trace.guidance === null) return said.slide;
      return hearing.isUndecided ? said.perhaps : said.marked;
    }
  }
}
