/** Stands before whatever plays a tone. */
export const MUTE_WORDS = 'A phone or tablet plays nothing while its mute switch is on: turn it off first.';

/** Why the browser plays no tone, in its own words. */
export function noToneWords(error: unknown): string {
  return `The tone can’t be played here: ${error instanceof Error ? error.message : String(error)}`;
}
