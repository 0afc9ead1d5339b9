// @vitest-environment node
import { readFileSync, readdirSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const UI = resolve(import.meta.dirname, '../../../src/ui');

/** Every link in the templates of the page, as written. */
const links = readdirSync(UI, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .flatMap((path) => readFileSync(join(UI, path), 'utf8').match(/<a\s[^>]*>/g) ?? []);

describe('links of the page', () => {
  it('that lead out of the bench open beside it', () => {
    const outward = links.filter((link) => !/href="#/.test(link));
    expect(links.length).toBeGreaterThan(8);
    expect(outward.length).toBeGreaterThan(2);
    expect(outward.filter((link) => !/target="_blank"/.test(link) || !/rel="noopener"/.test(link))).toEqual(
      [],
    );
  });

  it('within the bench stay in its tab', () => {
    expect(links.filter((link) => /href="#/.test(link) && /target=/.test(link))).toEqual([]);
  });
});
