import type { Resonance } from '../../session/hearing/listeningTypes.ts';

/** A flag as it stands on the strip. */
export interface StripFlag {
  readonly timeS: number;
  /** The number of its mark; empty where it is none. */
  readonly label: string;
  /** It only may be a resonance, and is no mark. */
  readonly isHollow: boolean;
}

/**
 * How flags stand on the strip, in the same order.
 * @param labelAt  the number of the mark of a flag, by the time of its peak; empty where there is none
 */
export function stripFlags(
  resonances: readonly Pick<Resonance, 'timeS' | 'certainty'>[],
  labelAt: (timeS: number) => string,
): readonly StripFlag[] {
  return resonances.map(({ timeS, certainty }) => {
    const label = labelAt(timeS);
    return { timeS, label, isHollow: certainty === 'maybe' && label === '' };
  });
}
