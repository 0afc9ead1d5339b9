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

/** Text for HTML and SVG, between tags and inside quoted attributes. */
export function escapeMarkup(text: string): string {
  return text
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
