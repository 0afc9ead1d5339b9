import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Plugin } from 'vite';

/** The engines that have features of their own; others share one of them. */
type Engine = 'chrome' | 'firefox' | 'safari';
type Versions = Readonly<Record<Engine, number>>;

/** A floor as package.json states it: `safari >= 16.4`. */
const FLOOR = /^(\w+) >= ([\d.]+)$/;
/** What the bundler calls a browser, where it has another name for it. */
const TARGET_NAMES: Readonly<Record<string, string>> = { ios_saf: 'ios' };

/** Methods that came late, with the first version that has them (published compatibility data, from memory). */
const FIRST_VERSIONS: Readonly<Record<string, Versions>> = {
  findLast: { chrome: 97, firefox: 104, safari: 15.4 },
  findLastIndex: { chrome: 97, firefox: 104, safari: 15.4 },
  structuredClone: { chrome: 98, firefox: 94, safari: 15.4 },
  checkVisibility: { chrome: 105, firefox: 106, safari: 17.4 },
  toSorted: { chrome: 110, firefox: 115, safari: 16 },
  toReversed: { chrome: 110, firefox: 115, safari: 16 },
  toSpliced: { chrome: 110, firefox: 115, safari: 16 },
  isWellFormed: { chrome: 111, firefox: 119, safari: 16.4 },
  toWellFormed: { chrome: 111, firefox: 119, safari: 16.4 },
  showPopover: { chrome: 114, firefox: 125, safari: 17 },
  groupBy: { chrome: 117, firefox: 119, safari: 17.4 },
  withResolvers: { chrome: 119, firefox: 121, safari: 17.4 },
  canParse: { chrome: 120, firefox: 115, safari: 17 },
  fromAsync: { chrome: 121, firefox: 115, safari: 16.4 },
  isSubsetOf: { chrome: 122, firefox: 127, safari: 17 },
};

/** The oldest browsers that the site works in, by the names in package.json. */
export function browserFloor(): ReadonlyMap<string, number> {
  const manifest = JSON.parse(readFileSync(resolve(import.meta.dirname, '../package.json'), 'utf8')) as {
    readonly browserslist: readonly string[];
  };
  return new Map(
    manifest.browserslist.map((line) => {
      const [, name, version] = FLOOR.exec(line) ?? [];
      if (name === undefined) throw new RangeError(`browserslist: "${line}" states no oldest version`);
      return [name, Number(version)];
    }),
  );
}

/** The same for the bundler, which writes newer syntax as the oldest of them understands it. */
export function buildTarget(): string[] {
  return [...browserFloor()].map(([name, version]) => `${TARGET_NAMES[name] ?? name}${version}`);
}

/** Methods in a script that the oldest browsers don't have. */
export function newerMethods(code: string, floor: ReadonlyMap<string, number>): readonly string[] {
  return Object.entries(FIRST_VERSIONS)
    .filter(([, first]) =>
      (['chrome', 'firefox', 'safari'] as const).some((engine) => (floor.get(engine) ?? 0) < first[engine]),
    )
    .map(([name]) => name)
    .filter((name) => new RegExp(`(?<![\\w$])${name}\\(`).test(code));
}

/** Fails a build that uses what the oldest browsers don't have. */
export function browserFloorPlugin(): Plugin {
  return {
    name: 'browser-floor',
    apply: 'build',
    generateBundle(_options, bundle) {
      const floor = browserFloor();
      for (const file of Object.values(bundle)) {
        const newer = file.type === 'chunk' ? newerMethods(file.code, floor) : [];
        if (newer.length > 0)
          this.error(`${file.fileName} uses ${newer.join(', ')}: not in ${[...floor].join('; ')}`);
      }
    },
  };
}
