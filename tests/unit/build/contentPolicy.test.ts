import { describe, expect, it } from 'vitest';
import { CONTENT_POLICY } from '../../../build/contentPolicy.ts';

const rules = new Map(
  CONTENT_POLICY.split('; ').map((rule) => {
    const [name, ...sources] = rule.split(' ');
    return [name, sources];
  }),
);

/** What a page may fetch: the fetch directives of Content Security Policy Level 3 (W3C), section 6.1, from memory. */
const FETCHED = [
  'child-src',
  'connect-src',
  'font-src',
  'frame-src',
  'img-src',
  'manifest-src',
  'media-src',
  'object-src',
  'script-src',
  'style-src',
  'worker-src',
] as const;

describe('the content policy', () => {
  const of = (name: string): readonly string[] => rules.get(name) ?? rules.get('default-src') ?? ['*'];

  it('lets nothing be fetched from elsewhere, and no frame, plug-in or font at all', () => {
    const allowed = new Set(FETCHED.flatMap(of));
    expect([...allowed].sort()).toEqual(["'none'", "'self'", 'blob:', 'data:']);
    expect(['font-src', 'frame-src', 'object-src'].flatMap(of)).toEqual(["'none'", "'none'", "'none'"]);
    expect(of('script-src')).toEqual(["'self'"]);
    expect(of('style-src')).toEqual(["'self'"]);
  });

  it('lets the manifest be read without the directive that not every browser knows', () => {
    expect(rules.has('manifest-src')).toBe(false);
    expect(of('manifest-src')).toEqual(["'self'"]);
  });
});
