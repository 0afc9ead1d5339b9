import type { CaptureState } from '../../capture/soundSource.ts';
import type { CaptureTrust } from '../../session/captureTrust.ts';
import type { BenchTrace } from '../../session/benchTrace.ts';

/** What is going on and what to do next, in one line. */
export function stageWords(capture: CaptureState, trace: BenchTrace, trust: CaptureTrust): string {
  switch (capture.kind) {
    case 'idle':
      return 'Press Listen. Then both hands are free for fork and tube.';
    case 'starting':
      return capture.message ?? 'Waiting for the sound…';
    case 'interrupted':
      return capture.message;
    case 'failed':
      return capture.failure.message;
    case 'ended':
      return 'The recording is over. Type the lengths of the marks.';
    case 'running':
      if (trust.kind === 'blocked') return 'Flags are off: something may rewrite the level.';
      if (trace.latest === null) return 'Getting to know the room…';
      if (trace.presentSounding === null) return 'Listening. Strike the fork, hold it to the mouth.';
      return trace.guidance === null
        ? 'The fork sounds: slide slowly.'
        : 'Resonance marked. Go back to read it, or slide on.';
  }
}
