import type { Resonance } from './listeningTypes.ts';

/** What was flagged, without the maybe that has become sure. @param maybeS  of its peak; null: none has */
export const withoutMaybe = (
  flagged: readonly Resonance[],
  maybeS: number | null | undefined,
): readonly Resonance[] => flagged.filter(({ timeS, certainty }) => certainty === 'sure' || timeS !== maybeS);
