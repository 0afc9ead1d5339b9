import type { Plugin } from 'vite';

/** A stylesheet in a template literal. */
const STYLES = /\bcss`([^`]*)`/g;
const COMMENT = /\/\*[\s\S]*?\*\//g;

/** What a browser reads of a stylesheet: without comments, and with one blank where there are many. */
export const plainStyles = (source: string): string =>
  source.replace(
    STYLES,
    (_whole, styles: string) => `css\`${styles.replace(COMMENT, '').replace(/\s+/g, ' ')}\``,
  );

/** Leaves out of the built site what only people read of its stylesheets: a minifier doesn't look into template literals. */
export function plainStylesPlugin(): Plugin {
  return {
    name: 'plain-styles',
    apply: 'build',
    enforce: 'pre',
    transform: (code, id) => (/\/src\/ui\/.*\.ts$/.test(id) ? { code: plainStyles(code), map: null } : null),
  };
}
