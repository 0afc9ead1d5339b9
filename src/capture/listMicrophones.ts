/** A microphone of the browser's list. */
export interface Microphone {
  readonly deviceId: string;
  /** As the browser gives it; null where it gives none. */
  readonly name: string | null;
}

/**
 * The microphones to choose from; empty where the browser names none before one was allowed.
 * @param mediaDevices  undefined where the browser offers none
 */
export async function listMicrophones(
  mediaDevices: MediaDevices | undefined = (navigator as { mediaDevices?: MediaDevices }).mediaDevices,
): Promise<readonly Microphone[]> {
  const devices = (await mediaDevices?.enumerateDevices().catch(() => [])) ?? [];
  return devices
    .filter(({ kind, deviceId }) => kind === 'audioinput' && deviceId !== '')
    .map(({ deviceId, label }) => ({ deviceId, name: label === '' ? null : label }));
}

/** Calls back when a device comes or goes; what it returns ends that. */
export function watchMicrophones(onChange: () => void): () => void {
  const mediaDevices = (navigator as { mediaDevices?: MediaDevices }).mediaDevices;
  mediaDevices?.addEventListener('devicechange', onChange);
  return () => mediaDevices?.removeEventListener('devicechange', onChange);
}
