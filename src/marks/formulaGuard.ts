/** What makes a spreadsheet run a cell: = + - @, their wide forms, a tab or a line end, behind any guards. */
const RUNS = /^'*[=+\-@\t\r\n\uff1d\uff0b\uff0d\uff20]/;
/** A number is only shown, whatever its sign. */
const IS_NUMBER = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i;

/**
 * Text that no spreadsheet runs as a formula: an apostrophe stands before what it would run. Numbers stay as they are.
 * `unguarded` gives the text back exactly.
 * @see OWASP, CSV Injection
 */
export function guarded(text: string): string {
  return RUNS.test(text) && !IS_NUMBER.test(text) ? `'${text}` : text;
}

/** The text before it was guarded. */
export function unguarded(text: string): string {
  return text.startsWith("'") && RUNS.test(text) ? text.slice(1) : text;
}
