/** The text with U+FFFD for each half of a surrogate pair that stands alone: no file and no address can hold one. */
export function wellFormed(text: string): string {
  return text.replace(/\p{Surrogate}/gu, '\ufffd');
}

/** The beginning of a text, at most `longest` UTF-16 units and no half of a character at its end. */
export function beginningOf(text: string, longest: number): string {
  if (text.length <= longest) return text;
  return text.slice(0, longest).replace(/[\ud800-\udbff]$/, '');
}
