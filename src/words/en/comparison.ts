/** Whether two groups of marks differ. A group comes by its name. */
export const comparison = {
  faster: (one: string, other: string, mps: string, uncertaintyMps: string) =>
    `“${one}” against “${other}”: ${mps} m/s faster, ± ${uncertaintyMps} m/s (95 %). The difference is real.`,
  slower: (one: string, other: string, mps: string, uncertaintyMps: string) =>
    `“${one}” against “${other}”: ${mps} m/s slower, ± ${uncertaintyMps} m/s (95 %). The difference is real.`,
  alike: (one: string, other: string, mps: string, uncertaintyMps: string) =>
    `“${one}” against “${other}”: ${mps} m/s apart, ± ${uncertaintyMps} m/s (95 %). These marks show no real difference.`,
  /** What theory says of the first against the other, and whether the marks agree with it. */
  agrees: {
    faster: (mps: string) => `Theory predicts ${mps} m/s faster for their air. The two agree.`,
    slower: (mps: string) => `Theory predicts ${mps} m/s slower for their air. The two agree.`,
    alike: 'Theory predicts no difference for their air. The two agree.',
  },
  disagrees: {
    faster: (mps: string) => `Theory predicts ${mps} m/s faster for their air. The two don’t agree.`,
    slower: (mps: string) => `Theory predicts ${mps} m/s slower for their air. The two don’t agree.`,
    alike: 'Theory predicts no difference for their air. The two don’t agree.',
  },
  noResult: (group: string, warning: string) => `${group}: ${warning}`,
  /** What a group is called that isn't a place with a name of its own. */
  fork: (hertz: string) => `${hertz} Hz fork`,
  ends: { closed: 'closed column', open: 'open column' },
};
