/** One change that the tests should notice. */
export interface Edit {
  readonly file: string;
  /** Stands in the file exactly once. */
  readonly text: string;
  readonly replacement: string;
  /** What would then be wrong. */
  readonly why: string;
  /** Why no test needs to notice it; absent: one must. */
  readonly survives?: string;
}

/** An edit of a file in `src`. */
export const edit = (file: string, text: string, replacement: string, why: string): Edit => ({
  file: `src/${file}`,
  text,
  replacement,
  why,
});
