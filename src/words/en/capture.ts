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
