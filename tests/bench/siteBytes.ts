import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** The built site's script as a static host sends it, bytes of gzip. */
export interface SiteBytes {
  /** The page's own script, all that it imports at once, and the first texts in English. */
  readonly firstLoad: number;
  /** The strip's chart, which comes with the first sound. */
  readonly strip: number;
  /** What listens and follows the column, which comes with the first sound, too. */
  readonly listening: number;
  /** The worker that answers what takes time, with the first large experiment. */
  readonly answers: number;
  /** Each language's texts, by its tag: those of the first load, and those of the views opened later. */
  readonly texts: Readonly<Record<string, { readonly first: number; readonly later: number }>>;
  /** The largest of the pieces that come when a view is opened, with its name. */
  readonly largestView: { readonly name: string; readonly bytes: number };
}

/** @param site  folder of the built site @throws Error where that is no built site */
export function siteBytes(site: string): SiteBytes {
  const page = readFileSync(join(site, 'index.html'), 'utf8');
  const first = new Set(
    [...page.matchAll(/(?:src|href)="\.\/assets\/([^"]+\.js)"/g)].map(([, name]) => name),
  );
  if (first.size === 0) throw new Error(`${site} holds no built page: run "npm run build".`);
  let firstLoad = 0;
  let strip = 0;
  let listening = 0;
  let answers = 0;
  const texts: Record<string, { first: number; later: number }> = {};
  let largestView = { name: '', bytes: 0 };
  for (const name of readdirSync(join(site, 'assets')).filter((file) => file.endsWith('.js'))) {
    const bytes = gzipSync(readFileSync(join(site, 'assets', name)), { level: 9 }).length;
    const [, language = '', part = ''] = /^texts-(.+)-(first|later)-.+\.js$/.exec(name) ?? [];
    if (language !== '') {
      const of = (texts[language] ??= { first: 0, later: 0 });
      of[part === 'first' ? 'first' : 'later'] = bytes;
      if (language === 'en' && part === 'first') firstLoad += bytes;
    } else if (first.has(name)) firstLoad += bytes;
    else if (name.startsWith('stripChart')) strip += bytes;
    else if (/^(listening|followingTools)-/.test(name)) listening += bytes;
    else if (name.startsWith('answerWorker')) answers += bytes;
    else if (bytes > largestView.bytes) largestView = { name: name.replace(/-[^-]+\.js$/, ''), bytes };
  }
  return { firstLoad, strip, listening, answers, texts, largestView };
}
