/** What a recording is to show. */
export const CONDITIONS = [
  'quiet',
  'talk-0',
  'talk-6',
  'talk-15',
  'neighbours',
  'same-pitch',
  'turning',
  'scrape',
  'hum',
  'knocks',
  'faint',
  'clipped',
  'gain-pumping',
  'open-column',
  'fast-slide',
  'slow-slide',
  'pause-and-return',
  'single-pass',
  'lowest-forks',
  'highest-forks',
  'clamped-fork',
  'no-resonance',
  'no-column',
  'talk-alone',
  'approach-on-resonance',
  'approach-off-resonance',
  'strike-only',
  'check-resonant',
  'check-off',
] as const;

export type Condition = (typeof CONDITIONS)[number];

/** Conditions of a slide, those of a check excepted. */
export const SLIDE_CONDITIONS: readonly Condition[] = CONDITIONS.filter((name) => !name.startsWith('check-'));
export const CHECK_CONDITIONS = ['check-resonant', 'check-off'] as const;

/**
 * Conditions that the totals leave out: two forks of one stamp can't be told apart in principle, and a column
 * that stands at resonance under an approaching fork looks like a passage. Each is shown by itself.
 */
export const APART_CONDITIONS: readonly Condition[] = ['same-pitch', 'approach-on-resonance', 'gain-pumping'];

/** A recording to make. What isn't given is drawn. */
export interface Scenario {
  readonly condition: Condition;
  readonly durationS?: number;
  readonly sampleRateHz?: number;
  readonly nominalHz?: number;
  /** Neither noise nor quantisation nor hand wobble nor reverberation: for tests of the physics. */
  readonly clean?: boolean;
}

/** Which recording of a set: sets use seeds of their own, so that what was tuned on one isn't judged on it. */
export const SET_SEEDS = { tune: 1, report: 100001 } as const;
