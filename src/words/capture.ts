import type { CaptureFailure } from '../capture/soundSource.ts';
import type { FaultWords } from './faultWords.ts';
import { words } from './inUse.ts';
import { unheardPitchWords } from './listening.ts';
import { recordingFaultWords } from './recordingFaults.ts';

/** Why nothing is heard, or no more, and what to do. */
export function captureFailureWords(failure: CaptureFailure): FaultWords {
  const said = words.captureFailure;
  switch (failure.code) {
    case 'pitch-unheard':
      return unheardPitchWords(failure.why);
    case 'not-audio':
    case 'empty-recording':
    case 'recording-too-long':
      return recordingFaultWords(failure.why);
    case 'capture-broken':
      if (failure.what === 'recording') return said['recording-broken'];
      if (failure.what === 'listening') return said['listening-broken'];
      return withoutMicrophone(said['audio-broken']);
    case 'refused-by-user':
      return withoutMicrophone(said[failure.how]);
    case 'refused-by-policy':
      return withoutMicrophone(said[failure.by]);
    case 'no-microphone':
      return withoutMicrophone(said[failure.why]);
    default:
      return withoutMicrophone(said[failure.code]);
  }
}

/** There is always a way on without a microphone. */
function withoutMicrophone({ what, advice }: FaultWords): FaultWords {
  return { what, advice: words.captureFailure.withoutMicrophone(advice) };
}
