/*
 * How much of a very large experiment is printed. The tables under Records always hold all; where something is left
 * out, the report says so.
 */

/** Rows of marks: some fifteen pages. */
export const MOST_MARKS_PRINTED = 500;
/** Places with their own plots, working and budget: two pages each. */
export const MOST_PLACES_WORKED = 12;
/** Places, forks or warnings that get a line. */
export const MOST_LINES_PRINTED = 40;
