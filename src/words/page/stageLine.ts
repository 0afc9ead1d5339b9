import { waitingMarks } from '../../notebook/markList.ts';
import type { Session } from '../../session/session.ts';
import { captureFailureWords, holdWords, waitsForWords } from '../capture.ts';
import { inFull } from '../faultWords.ts';

/** What is going on and what to do next, in one line. @param isRecording  whether that is the source that is chosen */
export function stageWords(
  { experiment, hearing: { capture, trace, trust } }: Pick<Session, 'experiment' | 'hearing'>,
  isRecording: boolean,
): string {
  switch (capture.kind) {
    case 'idle':
      return isRecording
        ? 'Open a recording of the fork over the column.'
        : 'Press Listen. Then both hands are free for fork and tube.';
    case 'starting':
      return capture.waitsFor === undefined ? 'Waiting for the sound…' : waitsForWords[capture.waitsFor];
    case 'interrupted':
      return holdWords[capture.hold];
    case 'failed':
      return inFull(captureFailureWords(capture.failure));
    case 'ended':
      return waitingMarks(experiment).length > 0
        ? 'The recording is over. Type the lengths of the marks.'
        : 'The recording is over.';
    case 'running':
      if (trust.kind === 'blocked') return 'Flags are off: something may rewrite the level.';
      if (trace.latest === null) return 'Getting to know the room…';
      if (!trace.soundsOrDid) return 'Listening. Strike the fork, hold it to the mouth.';
      return trace.guidance === null
        ? 'The fork sounds: slide slowly.'
        : 'Resonance marked. Go back to read it, or slide on.';
  }
}
