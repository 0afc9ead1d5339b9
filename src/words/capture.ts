import type { CaptureFailure } from '../capture/soundSource.ts';
import type { FaultWords } from './faultWords.ts';
import { unheardPitchWords } from './listening.ts';
import { recordingFaultWords } from './recordingFaults.ts';

/** The microphone runs and delivers nothing but zeros. */
export const NO_SOUND_WORDS =
  'No sound at all arrives from the microphone. Look for a mute switch or key on it, or choose another one under Check.';

const KEPT = 'What was found before is kept.';
const OTHERWISE =
  'Everything else works without it: type lengths by hand, open a recording, or use the practice column.';

/** Why nothing is heard, or no more, and what to do. */
export function captureFailureWords(failure: CaptureFailure): FaultWords {
  switch (failure.code) {
    case 'pitch-unheard':
      return unheardPitchWords(failure.why);
    case 'not-audio':
    case 'empty-recording':
    case 'recording-too-long':
      return recordingFaultWords(failure.why);
    case 'capture-broken':
      if (failure.what === 'recording')
        return { what: `The recording could not be worked through: ${failure.said}`, advice: '' };
      if (failure.what === 'listening') return { what: failure.said, advice: '' };
      return withoutMicrophone(
        'Listening broke down inside the browser.',
        `${KEPT} Start again; if it happens once more, reload the page.${failure.said === '' ? '' : ` (The browser says: ${failure.said})`}`,
      );
    case 'insecure-context':
      return withoutMicrophone(
        'The browser gives the microphone only to pages with a secure address.',
        'Open this page with https:// (or at localhost).',
      );
    case 'framed':
      return withoutMicrophone(
        'This page stands inside another one that keeps the microphone from it.',
        'Open it in a tab of its own and start again.',
      );
    case 'permission-withdrawn':
      return withoutMicrophone(
        'The permission for the microphone was withdrawn.',
        `${KEPT} Press the icon beside the address, allow the microphone again, and start again.`,
      );
    case 'microphone-busy':
      return withoutMicrophone(
        'The microphone can’t be opened: another program or tab may be using it.',
        'Close that (a call, a recorder), then start again.',
      );
    case 'microphone-lost':
      return withoutMicrophone(
        'The microphone was unplugged or switched off.',
        `${KEPT} Plug it in and start again.`,
      );
    case 'uneven-sound':
      return withoutMicrophone(
        'Sound comes at another rate than the browser says, or the computer is too busy to keep up: times and pitches would be wrong.',
        `${KEPT} Close other programs, unplug and plug in the microphone, and start again.`,
      );
    case 'refused-by-user':
      return failure.how === 'closed'
        ? withoutMicrophone(
            'The question about the microphone was closed without an answer.',
            'Start again and choose “Allow”.',
          )
        : withoutMicrophone(
            'The microphone was refused.',
            'Press the icon beside the address, allow the microphone for this page, and start again. If there is nothing to allow, the school’s administrator has switched it off.',
          );
    case 'refused-by-policy':
      return failure.by === 'system'
        ? withoutMicrophone(
            'The computer’s own privacy settings keep the microphone from the browser.',
            'Allow it there (privacy, microphone), then start again.',
          )
        : withoutMicrophone(
            'A policy of this site or of the school keeps the microphone from pages.',
            'Ask the administrator to allow it.',
          );
    case 'no-microphone':
      return noMicrophoneWords(failure.why);
  }
}

function noMicrophoneWords(why: Extract<CaptureFailure, { code: 'no-microphone' }>['why']): FaultWords {
  switch (why) {
    case 'none-given':
      return withoutMicrophone(
        'This browser gives pages no microphone.',
        'Use a current Chrome, Edge, Firefox or Safari.',
      );
    case 'none-found':
      return withoutMicrophone('No microphone was found.', 'Plug one in or switch it on, then start again.');
    case 'not-there':
      return withoutMicrophone(
        'The chosen microphone is not there any more.',
        'Choose another one and start again.',
      );
  }
}

/** There is always a way on without a microphone. */
function withoutMicrophone(what: string, advice: string): FaultWords {
  return { what, advice: `${advice} ${OTHERWISE}` };
}
