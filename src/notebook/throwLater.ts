/** Hands an error to whatever takes what nobody has caught, and lets the caller go on. */
export function throwLater(error: unknown): void {
  void Promise.resolve().then(() => {
    throw error;
  });
}
