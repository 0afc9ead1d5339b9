import type { CaptureSettings, ProcessingFlag } from './soundSource.ts';

/**
 * What to ask of the browser: every processing step off. Plain `false`, because an exact one throws in Safari;
 * a wish that is not met shows in `readSettings`.
 * @param deviceId  a device of the browser's list, or null for the default
 */
export function rawAudioConstraints(deviceId: string | null): MediaTrackConstraints {
  return {
    echoCancellation: false,
    noiseSuppression: false,
    autoGainControl: false,
    // Two channels where the device has them: one of them can be dead or noisy.
    channelCount: { ideal: 2 },
    ...(deviceId === null ? {} : { deviceId: { exact: deviceId } }),
  };
}

/** What the browser says that this track really does, which may differ from what was asked for. */
export function readSettings(track: Pick<MediaStreamTrack, 'getSettings' | 'label'>): CaptureSettings {
  const settings = track.getSettings();
  return {
    deviceLabel: track.label === '' ? null : track.label,
    channelCount: settings.channelCount ?? null,
    echoCancellation: flagOf(settings.echoCancellation),
    noiseSuppression: flagOf(settings.noiseSuppression),
    autoGainControl: flagOf(settings.autoGainControl),
  };
}

/** Newer browsers name the kind of echo cancellation instead of saying `true`. */
function flagOf(value: unknown): ProcessingFlag {
  if (value === false) return 'off';
  return value === undefined || value === null ? 'unknown' : 'on';
}
