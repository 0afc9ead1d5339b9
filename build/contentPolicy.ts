/**
 * What the built page may do: run its own scripts, show its own styles and pictures it made itself, and nothing
 * else. No request may leave the origin, no string becomes script or markup (Lit's templates go through Lit's own
 * policy; `bench` and `bench-answers` each name one address: that of the service worker and of the worker that answers).
 * The manifest goes by `default-src`: not every browser knows its own directive, and such a one complains of it.
 * @see Content Security Policy Level 3 and Trusted Types, W3C
 */
const RULES: Readonly<Record<string, string>> = {
  'default-src': "'self'",
  'script-src': "'self'",
  'style-src': "'self'",
  'img-src': "'self' data: blob:",
  'media-src': "'self' blob:",
  'connect-src': "'self'",
  'worker-src': "'self'",
  'font-src': "'none'",
  'frame-src': "'none'",
  'object-src': "'none'",
  'base-uri': "'none'",
  'form-action': "'none'",
  'require-trusted-types-for': "'script'",
  'trusted-types': 'lit-html bench bench-answers',
};

/** The policy as a page states it in a `meta` element, or a host in a header. */
export const CONTENT_POLICY = Object.entries(RULES)
  .map(([name, value]) => `${name} ${value}`)
  .join('; ');
