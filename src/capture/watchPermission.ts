/**
 * Watches the permission for the microphone, where the browser tells of it; where it doesn't, the track's end does.
 * @param onDenied  called when it is taken back
 * @returns what ends the watch
 */
export function watchPermission(onDenied: () => void): () => void {
  let status: PermissionStatus | null = null;
  let over = false;
  const onChange = (): void => {
    if (!over && status?.state === 'denied') onDenied();
  };
  // Older browsers have no such query, or not for the microphone, whatever the types say.
  const asked = (navigator as { permissions?: Permissions }).permissions?.query({ name: 'microphone' });
  asked?.then(
    (got) => {
      if (over) return;
      status = got;
      got.addEventListener('change', onChange);
    },
    () => undefined,
  );
  return () => {
    over = true;
    status?.removeEventListener('change', onChange);
  };
}
