/**
 * Bytes of an experiment's JSON without blanks: some 3500 flagged marks with their traces. What would grow beyond is
 * refused, so that its file can always be opened again: `LARGEST_JSON_BYTES` leaves room for the traces of the last marks.
 */
export const LARGEST_RECORD_BYTES = 18_000_000;

/** Far above any experiment with its traces; a larger JSON file isn't one. */
export const LARGEST_JSON_BYTES = 20_000_000;
/** What the largest record gives as a table, its places' names written on every row; 20 000 plain rows are about 2 MB. */
export const LARGEST_TABLE_BYTES = 40_000_000;
export const MOST_TABLE_ROWS = 20_000;
/** More files at once than any school has groups. */
export const MOST_FILES = 2000;
/** All that is read into memory at once. Recordings don't count: they are read piece by piece. */
export const LARGEST_TOTAL_BYTES = 500_000_000;
/** Experiments are five levels deep; a tower of brackets isn't one. */
export const DEEPEST_JSON = 60;
/** Characters of a lesson link: the longest task in any script, and forks by the hundred. Browsers take as much. */
export const LONGEST_LINK = 32_000;
/** What a lesson link unpacks to: far above the longest task and all forks that a link holds. */
export const LARGEST_LESSON_BYTES = 200_000;
/** Characters of an address in one QR code: 101 modules a side, which a phone reads off a screen at arm's length. */
export const LONGEST_CODE = 700;
