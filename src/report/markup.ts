import { wellFormed } from '../limits/texts.ts';

/** Text of HTML or SVG whose every outside word is escaped. Only `markup` and `trusted` make it. */
export class Markup {
  constructor(readonly text: string) {}
}

type Part = Markup | string | number | null | readonly (Markup | string | number | null)[];

/** HTML from a template: what is put in is escaped, unless it is markup itself; null puts in nothing. */
export function markup(strings: TemplateStringsArray, ...parts: readonly Part[]): Markup {
  const written = strings.map((text, index) => (index === 0 ? text : write(parts[index - 1] ?? null) + text));
  return new Markup(written.join(''));
}

/** Markup that this program made whole, such as a picture. Never for text from outside. */
export function trusted(text: string): Markup {
  return new Markup(text);
}

/** What XML can't hold in any form: controls, and what Unicode keeps for itself. */
// eslint-disable-next-line no-control-regex
const NOT_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

/** Text for HTML and SVG, between tags and inside quoted attributes; what no picture can hold becomes U+FFFD. */
export function escapeMarkup(text: string): string {
  return wellFormed(text)
    .replace(NOT_XML, '\ufffd')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}

function write(part: Part): string {
  if (part === null) return '';
  if (part instanceof Markup) return part.text;
  if (typeof part === 'string' || typeof part === 'number') return escapeMarkup(String(part));
  return part.map(write).join('');
}
