/**
 * Keeps the screen on while nobody touches the keys, where the browser can; its failure is harmless.
 * @returns what lets the screen go dark again
 */
export function keepScreenOn(): () => void {
  let over = false;
  let lock: WakeLockSentinel | null = null;
  const request = async (): Promise<void> => {
    // Older browsers have no wake lock, whatever the types say.
    if (over || document.visibilityState !== 'visible' || !('wakeLock' in navigator)) return;
    try {
      const got = await navigator.wakeLock.request('screen');
      // A caller who has let go meanwhile gets no lock.
      if (isOver()) await got.release();
      else lock = got;
    } catch {
      // A low battery or a policy: the screen may go dark, the sound goes on.
    }
  };
  const isOver = (): boolean => over;
  // The browser takes the lock away from a hidden page and does not give it back.
  const onVisibility = (): void => void request();
  document.addEventListener('visibilitychange', onVisibility);
  void request();
  return () => {
    over = true;
    document.removeEventListener('visibilitychange', onVisibility);
    lock?.release().catch(() => undefined);
    lock = null;
  };
}
