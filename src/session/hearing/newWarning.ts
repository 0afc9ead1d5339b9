import type { ListeningWarning } from './listeningTypes.ts';

/** @param timeS  when it was noticed, on the source's time axis; null for what holds of the whole */
export function newWarning(
  code: ListeningWarning['code'],
  message: string,
  timeS: number | null = null,
): ListeningWarning {
  return { code, message, timeS };
}
