/** Far above any experiment with its traces; a larger JSON file isn't one. */
export const LARGEST_JSON_BYTES = 20_000_000;
/** 20 000 rows of marks are about 2 MB. */
export const LARGEST_TABLE_BYTES = 10_000_000;
/** More files at once than any school has groups. */
export const MOST_FILES = 2000;
/** All that is read into memory at once. Recordings don't count: they are read piece by piece. */
export const LARGEST_TOTAL_BYTES = 500_000_000;
/** Experiments are five levels deep; a tower of brackets isn't one. */
export const DEEPEST_JSON = 60;
