import type { CaptureFailure, CaptureFailureCode } from './soundSource.ts';

/** Where the page stands when the microphone is asked for. */
export interface CaptureSurroundings {
  /** False on plain http and in a file opened from disk. */
  readonly isSecureContext: boolean;
  /** True inside another page's frame, such as a learning platform's. */
  readonly isFramed: boolean;
  /** What the page's policy says of the microphone; null where the browser doesn't tell. */
  readonly policyAllows: boolean | null;
}

const OTHERWISE =
  'Everything else works without it: type lengths by hand, open a recording, or use the practice column.';

const MESSAGES = {
  insecure:
    'The browser gives the microphone only to pages with a secure address. Open this page with https:// (or at localhost).',
  noMediaDevices: 'This browser gives pages no microphone. Use a current Chrome, Edge, Firefox or Safari.',
  refused:
    'The microphone was refused. Press the icon beside the address, allow the microphone for this page, and start again. If there is nothing to allow, the school’s administrator has switched it off.',
  dismissed:
    'The question about the microphone was closed without an answer. Start again and choose “Allow”.',
  framed:
    'This page stands inside another one that keeps the microphone from it. Open it in a tab of its own and start again.',
  policy:
    'A policy of this site or of the school keeps the microphone from pages. Ask the administrator to allow it.',
  system:
    'The computer’s own privacy settings keep the microphone from the browser. Allow it there (privacy, microphone), then start again.',
  none: 'No microphone was found. Plug one in or switch it on, then start again.',
  noneLikeThat: 'The chosen microphone is not there any more. Choose another one and start again.',
  busy: 'The microphone can’t be opened: another program or tab may be using it. Close that (a call, a recorder), then start again.',
  withdrawn:
    'The permission for the microphone was withdrawn. What was found before is kept. Press the icon beside the address, allow the microphone again, and start again.',
  uneven:
    'Sound comes at another rate than the browser says, or the computer is too busy to keep up: times and pitches would be wrong. What was found before is kept. Close other programs, unplug and plug in the microphone, and start again.',
  lost: 'The microphone was unplugged or switched off. What was found before is kept. Plug it in and start again.',
  broken:
    'Listening broke down inside the browser. What was found before is kept. Start again; if it happens once more, reload the page.',
} as const;

/** The microphone was working and is gone. */
export const MICROPHONE_LOST = failure('microphone-lost', MESSAGES.lost);
/** The person or the school took the permission back. */
export const PERMISSION_WITHDRAWN = failure('permission-withdrawn', MESSAGES.withdrawn);
/** Sound and clock don't agree. */
export const UNEVEN_SOUND = failure('uneven-sound', MESSAGES.uneven);
/** The audio system failed while running. */
export const CAPTURE_BROKEN = failure('capture-broken', MESSAGES.broken);

/**
 * Names what keeps the page from asking at all; null when it can ask.
 * @param hasMediaDevices  whether `navigator.mediaDevices.getUserMedia` exists
 */
export function failureBeforeAsking(
  surroundings: CaptureSurroundings,
  hasMediaDevices: boolean,
): CaptureFailure | null {
  if (!surroundings.isSecureContext) return failure('insecure-context', MESSAGES.insecure);
  if (!hasMediaDevices) return failure('no-microphone', MESSAGES.noMediaDevices);
  return null;
}

/**
 * Names why the browser gave no microphone.
 * @param error  what `getUserMedia` or the audio system rejected with
 * @see W3C Media Capture and Streams, section 10.2 (getUserMedia's errors)
 */
export function failureOfError(error: unknown, surroundings: CaptureSurroundings): CaptureFailure {
  const name = nameOf(error);
  const detail = error instanceof Error ? error.message.toLowerCase() : '';
  switch (name) {
    case 'NotAllowedError':
    case 'PermissionDeniedError':
      if (surroundings.policyAllows === false) {
        return surroundings.isFramed
          ? failure('framed', MESSAGES.framed)
          : failure('refused-by-policy', MESSAGES.policy);
      }
      if (detail.includes('system')) return failure('refused-by-policy', MESSAGES.system);
      if (detail.includes('policy')) return failure('refused-by-policy', MESSAGES.policy);
      if (detail.includes('dismissed')) return failure('refused-by-user', MESSAGES.dismissed);
      // A frame without the permission fails just as a refusal does where the browser hides its policy.
      if (surroundings.isFramed && surroundings.policyAllows === null) {
        return failure('framed', MESSAGES.framed);
      }
      return failure('refused-by-user', MESSAGES.refused);
    case 'SecurityError':
      return failure('refused-by-policy', MESSAGES.policy);
    case 'NotFoundError':
    case 'DevicesNotFoundError':
      return failure('no-microphone', MESSAGES.none);
    case 'OverconstrainedError':
      return failure('no-microphone', MESSAGES.noneLikeThat);
    case 'NotReadableError':
    case 'TrackStartError':
    case 'AbortError':
      return failure('microphone-busy', MESSAGES.busy);
    default: {
      const said =
        error instanceof Error && error.message !== '' ? ` (The browser says: ${error.message})` : '';
      return failure('capture-broken', MESSAGES.broken + said);
    }
  }
}

function failure(code: CaptureFailureCode, message: string): CaptureFailure {
  return { code, message: `${message} ${OTHERWISE}` };
}

/** OverconstrainedError is no Error in every browser, so only the name is asked for. */
function nameOf(error: unknown): string {
  if (typeof error !== 'object' || error === null || !('name' in error)) return '';
  return String(error.name);
}
