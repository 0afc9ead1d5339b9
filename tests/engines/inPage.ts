import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** What every page is given to find things in it and to write down its console. */
export const IN_PAGE = readFileSync(join(import.meta.dirname, 'benchHand.js'), 'utf8');

/** The same expression where `benchHand` is there. */
export function expressionInPage(expression: string): string {
  return `(() => { ${IN_PAGE}\nreturn (${expression}); })()`;
}
