import type { CaptureFailure } from './soundSource.ts';

/** Where the page stands when the microphone is asked for. */
export interface CaptureSurroundings {
  /** False on plain http and in a file opened from disk. */
  readonly isSecureContext: boolean;
  /** True inside another page's frame, such as a learning platform's. */
  readonly isFramed: boolean;
  /** What the page's policy says of the microphone; null where the browser doesn't tell. */
  readonly policyAllows: boolean | null;
}

/** The microphone was working and is gone. */
export const MICROPHONE_LOST: CaptureFailure = { code: 'microphone-lost' };
/** The person or the school took the permission back. */
export const PERMISSION_WITHDRAWN: CaptureFailure = { code: 'permission-withdrawn' };
/** Sound and clock don't agree. */
export const UNEVEN_SOUND: CaptureFailure = { code: 'uneven-sound' };
/** The audio system failed while running. */
export const CAPTURE_BROKEN = brokenCapture('');

/**
 * Names what keeps the page from asking at all; null when it can ask.
 * @param hasMediaDevices  whether `navigator.mediaDevices.getUserMedia` exists
 */
export function failureBeforeAsking(
  surroundings: CaptureSurroundings,
  hasMediaDevices: boolean,
): CaptureFailure | null {
  if (!surroundings.isSecureContext) return { code: 'insecure-context' };
  if (!hasMediaDevices) return { code: 'no-microphone', why: 'none-given' };
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
        return surroundings.isFramed ? { code: 'framed' } : { code: 'refused-by-policy', by: 'policy' };
      }
      if (detail.includes('system')) return { code: 'refused-by-policy', by: 'system' };
      if (detail.includes('policy')) return { code: 'refused-by-policy', by: 'policy' };
      if (detail.includes('dismissed')) return { code: 'refused-by-user', how: 'closed' };
      // A frame without the permission fails just as a refusal does where the browser hides its policy.
      if (surroundings.isFramed && surroundings.policyAllows === null) return { code: 'framed' };
      return { code: 'refused-by-user', how: 'refused' };
    case 'SecurityError':
      return { code: 'refused-by-policy', by: 'policy' };
    case 'NotFoundError':
    case 'DevicesNotFoundError':
      return { code: 'no-microphone', why: 'none-found' };
    case 'OverconstrainedError':
      return { code: 'no-microphone', why: 'not-there' };
    case 'NotReadableError':
    case 'TrackStartError':
    case 'AbortError':
      return { code: 'microphone-busy' };
    default:
      return brokenCapture(error instanceof Error ? error.message : '');
  }
}

function brokenCapture(said: string): CaptureFailure {
  return { code: 'capture-broken', what: 'microphone', said };
}

/** OverconstrainedError is no Error in every browser, so only the name is asked for. */
function nameOf(error: unknown): string {
  if (typeof error !== 'object' || error === null || !('name' in error)) return '';
  return String(error.name);
}
