import type { CaptureHold } from '../../capture/soundSource.ts';

/** What the start of a microphone waits for, once it takes long. */
export const waitsFor = {
  permission:
    'The browser asks whether this page may use the microphone: look near the address and choose “Allow”.',
};

/** What holds up a microphone, and what to do. */
export const hold = {
  muted: 'The microphone is muted, by a switch or by the system. Unmute it: listening goes on by itself.',
  suspended:
    'The browser has paused the sound (a call, a hidden page, sleep). Come back to the page or start again.',
  frozen: 'No sound has come from the microphone for two seconds. If it does not come back, start again.',
} satisfies Readonly<Record<CaptureHold, string>>;

/** The microphone runs and delivers nothing but zeros. */
export const noSound =
  'No sound at all arrives from the microphone. Look for a mute switch or key on it, or choose another one under Check.';

/** Why nothing is heard, or no more, and what to do. */
export const captureFailure = {
  /** What works all the same, after any advice on a microphone. */
  withoutMicrophone: (advice: string) =>
    `${advice} Everything else works without it: type lengths by hand, open a recording, or use the practice column.`,
  'recording-broken': {
    what: 'The recording could not be analysed to its end.',
    advice: 'Open it again; if that doesn’t help, save it as WAV and open that.',
  },
  'listening-broken': {
    what: 'The page could not start listening, or broke off.',
    advice: 'Start again; if that doesn’t help, check the connection and reload the page.',
  },
  'audio-broken': {
    what: 'The browser’s audio stopped working.',
    advice: 'What was found before is still there. Start again; if it happens once more, reload the page.',
  },
  'insecure-context': {
    what: 'The browser gives the microphone only to pages with a secure address.',
    advice: 'Open this page with https:// (or at localhost).',
  },
  framed: {
    what: 'This page is embedded in another page, which keeps the microphone from it.',
    advice: 'Open it in a tab of its own and start again.',
  },
  'permission-withdrawn': {
    what: 'The permission for the microphone was withdrawn.',
    advice:
      'What was found before is still there. Press the icon beside the address, allow the microphone again, and start again.',
  },
  'microphone-busy': {
    what: 'The microphone can’t be opened: another program or tab may be using it.',
    advice: 'Close that (a call, a recorder), then start again.',
  },
  'microphone-lost': {
    what: 'The microphone was unplugged or switched off.',
    advice: 'What was found before is still there. Plug it in and start again.',
  },
  'uneven-sound': {
    what: 'Sound is arriving faster or slower than the browser reports, or the computer is too busy to keep up: times and frequencies would be wrong.',
    advice:
      'What was found before is still there. Close other programs, unplug and plug in the microphone, and start again.',
  },
  closed: {
    what: 'The question about the microphone was closed without an answer.',
    advice: 'Start again and choose “Allow”.',
  },
  refused: {
    what: 'The microphone was refused.',
    advice:
      'Press the icon beside the address, allow the microphone for this page, and start again. If there is nothing to allow, the school’s administrator has switched it off.',
  },
  system: {
    what: 'The computer’s own privacy settings keep the microphone from the browser.',
    advice: 'Allow it there (privacy, microphone), then start again.',
  },
  policy: {
    what: 'A policy of this site or of the school keeps the microphone from pages.',
    advice: 'Ask the administrator to allow it.',
  },
  'none-given': {
    what: 'This browser doesn’t let web pages use a microphone.',
    advice: 'Use a current Chrome, Edge, Firefox or Safari.',
  },
  'none-found': {
    what: 'No microphone was found.',
    advice: 'Plug one in or switch it on, then start again.',
  },
  'not-there': {
    what: 'The chosen microphone is not there any more.',
    advice: 'Choose another one and start again.',
  },
};
