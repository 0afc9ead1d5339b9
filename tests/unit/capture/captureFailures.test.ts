import { describe, expect, it } from 'vitest';
import { failureBeforeAsking, failureOfError } from '../../../src/capture/captureFailures.ts';
import type { CaptureSurroundings } from '../../../src/capture/captureFailures.ts';
import { captureFailureWords } from '../../../src/words/capture.ts';
import { inFull } from '../../../src/words/faultWords.ts';
import { rawAudioConstraints, readSettings } from '../../../src/capture/captureSettings.ts';

const USUAL: CaptureSurroundings = { isSecureContext: true, isFramed: false, policyAllows: null };

describe('failureBeforeAsking', () => {
  it('lets a page ask that can', () => {
    expect(failureBeforeAsking(USUAL, true)).toBeNull();
  });

  it('names plain http before the missing devices that it causes', () => {
    const plain = { ...USUAL, isSecureContext: false };
    expect(failureBeforeAsking(plain, false)).toMatchObject({ code: 'insecure-context' });
  });

  it('names a browser without microphones', () => {
    expect(failureBeforeAsking(USUAL, false)).toMatchObject({ code: 'no-microphone' });
  });
});

describe('failureOfError', () => {
  // Names of errors: W3C Media Capture and Streams, getUserMedia. Texts: Chromium's, common practice, no source.
  it.each([
    ['NotAllowedError', 'Permission denied', {}, 'refused-by-user', /icon beside the address/],
    ['NotAllowedError', 'Permission dismissed', {}, 'refused-by-user', /closed without an answer/],
    ['NotAllowedError', 'Permission denied by system', {}, 'refused-by-policy', /privacy settings/],
    ['NotAllowedError', 'Permission denied', { policyAllows: false }, 'refused-by-policy', /administrator/],
    ['NotAllowedError', 'x', { policyAllows: false, isFramed: true }, 'framed', /tab of its own/],
    ['NotAllowedError', 'x', { isFramed: true }, 'framed', /tab of its own/],
    ['NotAllowedError', 'x', { policyAllows: true, isFramed: true }, 'refused-by-user', /refused/],
    ['SecurityError', '', {}, 'refused-by-policy', /policy/],
    ['NotFoundError', '', {}, 'no-microphone', /Plug one in/],
    ['OverconstrainedError', '', {}, 'no-microphone', /not there any more/],
    ['NotReadableError', '', {}, 'microphone-busy', /another program/],
    ['AbortError', '', {}, 'microphone-busy', /another program/],
    ['TypeError', 'odd thing', {}, 'capture-broken', /audio stopped working/],
  ] as const)('%s (%s, %o) is %s', (name, message, surroundings, code, help) => {
    const failure = failureOfError(new DOMException(message, name), { ...USUAL, ...surroundings });
    expect(failure.code).toBe(code);
    const said = inFull(captureFailureWords(failure));
    expect(said).toMatch(help);
    // There is always a way on without a microphone.
    expect(said).toMatch(/type lengths by hand/);
    // A browser's own words help nobody at a tube.
    if (message.length > 1) expect(said).not.toContain(message);
  });

  it.each([undefined, null, 'text', 3, {}])('answers %s as well', (error) => {
    expect(failureOfError(error, USUAL).code).toBe('capture-broken');
  });
});

describe('settings', () => {
  it('asks for every step off, plainly', () => {
    expect(rawAudioConstraints(null)).toMatchObject({
      echoCancellation: false,
      noiseSuppression: false,
      autoGainControl: false,
    });
    expect(rawAudioConstraints('abc')).toMatchObject({ deviceId: { exact: 'abc' } });
  });

  it.each([
    [false, 'off'],
    [true, 'on'],
    ['remote-only', 'on'],
    [undefined, 'unknown'],
  ])('reads echo cancellation %s as %s', (value, flag) => {
    const settings = { channelCount: 1, echoCancellation: value } as MediaTrackSettings;
    expect(readSettings({ label: '', getSettings: () => settings })).toEqual({
      deviceLabel: null,
      channelCount: 1,
      echoCancellation: flag,
      noiseSuppression: 'unknown',
      autoGainControl: 'unknown',
    });
  });
});
