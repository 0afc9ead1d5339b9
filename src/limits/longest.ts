/** Longest texts, in UTF-16 units, and lists, in items. */
export const LONGEST = {
  id: 200,
  /** ISO 8601 with whatever a program adds. */
  time: 50,
  title: 500,
  /** Of a place or a group. */
  name: 500,
  /** A page of text; a lesson link holds it in any script. */
  task: 2000,
  /** The digest of a lesson's code, and its language. */
  lessonKey: 40,
  markNote: 10_000,
  /** Of an experiment: sweeps and what was left out of old records are written there, too. */
  note: 100_000,
  reason: 2000,
  device: 500,
  /** Points of a kept trace: five minutes at 20 a second, far more than the bench keeps. */
  trace: 6000,
  /** Marks, deleted marks, forks, places: far more than a class makes, and few enough for a page. */
  list: 5000,
} as const;
