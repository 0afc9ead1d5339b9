import type { Plugin } from 'vite';

/** A stylesheet in a template literal. */
const STYLES = /\bcss`([^`]*)`/g;
const COMMENT = /\/\*[\s\S]*?\*\//g;

/** What stands in a template for a value. */
const EXPRESSION = /(\$\{[^}]*\})/;

/** What a browser reads of a stylesheet: no comments, no blanks but those that part words, no last semicolon. */
export const plainStyles = (source: string): string =>
  source.replace(STYLES, (_whole, styles: string) => {
    const parts = styles.replace(COMMENT, '').split(EXPRESSION);
    return `css\`${parts
      .map((part, index) => (index % 2 === 0 ? plain(part) : part))
      .join('')
      .trim()}\``;
  });

/** A blank before a colon or a comma is left: before a colon it may part a selector from what is inside. */
function plain(styles: string): string {
  return styles
    .replace(/\s+/g, ' ')
    .replace(/ ?([{};]) ?/g, '$1')
    .replace(/([:,]) /g, '$1')
    .replaceAll(';}', '}');
}

/** Leaves out of the built site what only people read of its stylesheets: a minifier doesn't look into template literals. */
export function plainStylesPlugin(): Plugin {
  return {
    name: 'plain-styles',
    apply: 'build',
    enforce: 'pre',
    transform: (code, id) => (/\/src\/ui\/.*\.ts$/.test(id) ? { code: plainStyles(code), map: null } : null),
  };
}
