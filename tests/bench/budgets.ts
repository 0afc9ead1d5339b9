/**
 * What the bench may cost. Bytes are exact, so they stand close above what is measured: whoever needs more says so
 * here. Ratios are measured side by side in one run and have room for a busy machine.
 */
export const BUDGETS = {
  /** Script until the page can be used, English first texts included, bytes of gzip. */
  firstLoadBytes: 125_500,
  /** A language's texts, each part by itself: it loads alone. */
  textsBytes: 25_000,
  stripBytes: 49_800,
  /** What listens, with the first sound; the classifiers' weights are a fifth of it. */
  listeningBytes: 43_700,
  /** Solver and comparison once more, for the worker: not before an experiment is large. */
  answersBytes: 23_500,
  /** The largest is what reads QR codes, when the camera is asked for. */
  viewBytes: 13_700,
  /** Live path's time over that of Meyda's rms and power spectrum every 1024 samples. */
  liveOverMeyda: 1,
  /** Live path's processor time a second of sound, ms: 400 × real time. */
  liveMsPerS: 2.5,
  /** What the garbage collector takes of the live path's time, and its longest pause, ms. */
  collectorShare: 0.03,
  collectorPauseMs: 5,
  /** Peak memory of `analyse` for half an hour of sound over that for ten minutes: it must not grow with the length. */
  memory30Over10: 1.06,
  /** Fork frequency's rms error over the Cramér–Rao bound, 0 to 40 dB. */
  frequencyTimesBound: 1.5,
  /** Time of 1000 marks over that of 100: the solver's work grows with the marks. */
  solver1000Over100: 12,
} as const;

export type Budget = keyof typeof BUDGETS;
