/**
 * Keeps tests to what they bring: a read outside of the project, its packages, the temporary folder and the browser
 * throws, with the path, and is noted, so that nobody's catch hides it. Plain JavaScript, because a Node that a test
 * starts loads it before it can read anything else. What native code reads and what the browser is told to read pass by.
 */
import childProcess from 'node:child_process';
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join, resolve, sep } from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { threadId } from 'node:worker_threads';

/** @typedef {{ readonly programs?: readonly string[], readonly isRunner?: boolean }} GuardOptions */
/** @typedef {(...words: unknown[]) => unknown} AnyFunction */
/** @typedef {Record<string, unknown>} Functions */

// Before anything is wrapped.
const { appendFileSync, readFileSync, realpathSync, rmSync } = fs;
const OWN_FILE = fileURLToPath(import.meta.url);
const CHILD_ENTRY = pathToFileURL(join(dirname(OWN_FILE), 'readGuardOfChild.js')).href;
const PROJECT = dirname(dirname(dirname(OWN_FILE)));
/** Tells a Node that a test starts where to note its faults. */
const NOTES_NAME = 'READ_GUARD_NOTES';

/** All that reads a file, a folder or whether there is one. */
const READS =
  /^(access|exists|stat|lstat|statfs|open|openAsBlob|opendir|readdir|readFile|readlink|realpath|createReadStream|copyFile|cp|watch|watchFile|glob)(Sync)?$/;
const STARTS = ['spawn', 'spawnSync', 'execFile', 'execFileSync', 'exec', 'execSync', 'fork'];

/**
 * What else may be read, by whom and why.
 * @type {readonly { readonly caller: string, readonly path: RegExp, readonly why: string }[]}
 */
const ALSO = [
  {
    caller: `${sep}node_modules${sep}playwright-core${sep}`,
    path: /^(\/etc\/os-release|\/usr\/lib\/os-release|\/proc\/version|\/proc\/sys\/fs\/binfmt_misc\/WSLInterop|\/run\/WSL|\/run\/\.containerenv|\/\.dockerenv|\/proc\/self\/cgroup)$/,
    why: 'which system it drives the browser on',
  },
  {
    caller: `${sep}node_modules${sep}vite${sep}`,
    path: /^(\/etc\/os-release|\/proc\/version|\/proc\/sys\/fs\/binfmt_misc\/WSLInterop|\/run\/WSL|\/run\/\.containerenv|\/\.dockerenv|\/proc\/self\/cgroup)$/,
    why: 'which system it serves pages on',
  },
  {
    caller: `${sep}node_modules${sep}vite${sep}`,
    path: /\/(package\.json|pnpm-workspace\.yaml|lerna\.json|deno\.jsonc?)$/,
    why: 'whether the project is part of a larger one',
  },
  {
    caller: `${sep}node_modules${sep}rolldown${sep}`,
    path: /^(\/usr)?\/bin\/ldd$/,
    why: 'which of its native parts fits the system',
  },
  {
    caller: `${sep}node_modules${sep}typescript${sep}`,
    path: /\/TYPESCRIPT\.JS$/,
    why: 'whether a name in other letters is the same file',
  },
];
/** Node's own code that copies folders, as its stacks name it. */
const NODE_COPIES = /(^|[/:\\])fs[/\\]cp[/\\]/;
/** These files look for browsers and install them: they may ask the system for it. */
const BROWSER_FINDERS = ['browser/findChromium.ts', 'engines/findEngines.ts'].map((path) =>
  join(PROJECT, 'tests', path),
);

/** @type {string[]} Folders with all that is in them. */
const folders = [PROJECT, join(PROJECT, 'node_modules'), tmpdir()].flatMap((folder) => [
  folder,
  realOf(folder),
]);
/** @type {string[]} */
const files = [process.execPath, realOf(process.execPath)];
const notes = process.env[NOTES_NAME] ?? join(tmpdir(), `read-guard-${process.pid}-${threadId}`);

/** @type {GuardOptions | null} */
let options = null;

/**
 * Guards all that this thread reads from now on, and every Node that it starts.
 * @param {GuardOptions} given  programs: paths of the browsers and of what drives them, which may be started; isRunner: in the process that runs
 *   the tests, where packages look around as they like (workspace roots, configuration)
 */
export function guardReads(given) {
  for (const program of given.programs ?? []) files.push(program, realOf(program));
  const isGuarded = options !== null;
  options = { ...given };
  if (isGuarded) return;
  for (const functions of [fs, fs.promises])
    wrapReads(/** @type {Functions} */ (/** @type {unknown} */ (functions)));
  wrapStarts(/** @type {Functions} */ (/** @type {unknown} */ (childProcess)));
  // Names that were imported already follow.
  syncBuiltinESMExports();
}

/** Faults noted since the last call, of this thread and of those that it started, each in words. */
export function takeFaults() {
  try {
    const text = readFileSync(notes, 'utf8');
    rmSync(notes);
    return text.split('\n').filter((line) => line !== '');
  } catch {
    return [];
  }
}

/**
 * Whether a caller may read a path.
 * @param {string} path  absolute
 * @param {() => string} caller  tells the file of the nearest code that isn't Node's own
 */
export function mayRead(path, caller) {
  const isInside = folders.some(
    (folder) => path === folder || path.startsWith(folder.endsWith(sep) ? folder : folder + sep),
  );
  if (isInside || files.includes(path)) return true;
  const file = caller();
  // Node looks whether a folder is copied into itself, up to the root.
  const isAbove = folders.some((folder) => folder.startsWith(path.endsWith(sep) ? path : path + sep));
  if (isAbove && NODE_COPIES.test(file)) return true;
  return (
    BROWSER_FINDERS.includes(file) ||
    isRunners(file) ||
    ALSO.some((one) => file.includes(one.caller) && one.path.test(path))
  );
}

/** @param {Functions} functions */
function wrapReads(functions) {
  for (const name of Object.keys(functions)) {
    const before = functions[name];
    if (typeof before !== 'function' || !READS.test(name)) continue;
    // realpath.native and the like stay where they are.
    functions[name] = Object.assign(
      /** @this {unknown} @param {unknown[]} words */
      function guarded(...words) {
        const path = pathOf(words[0]);
        if (path !== null && !mayRead(path, callerOf)) refuse(`${name} of ${path} (by ${callerOf()})`);
        return /** @type {AnyFunction} */ (before).apply(this, words);
      },
      before,
    );
  }
}

/** @param {Functions} functions */
function wrapStarts(functions) {
  for (const name of STARTS) {
    const before = /** @type {AnyFunction} */ (functions[name]);
    functions[name] =
      /** @this {unknown} @param {unknown[]} words */
      function guarded(...words) {
        const command = String(words[0]);
        const isPlain = !['exec', 'execSync', 'fork'].includes(name);
        const caller = callerOf();
        if (isPlain && [process.execPath, realOf(process.execPath)].includes(command)) {
          return before.apply(this, guardedNode(words));
        }
        if (
          !BROWSER_FINDERS.includes(caller) &&
          !(isPlain && files.includes(command)) &&
          !isRunners(caller)
        ) {
          refuse(`${name} of the command ${command} (by ${caller})`);
        }
        return before.apply(this, words);
      };
  }
}

/** @param {string} caller */
function isRunners(caller) {
  return options?.isRunner === true && caller.includes(`${sep}node_modules${sep}`);
}

/**
 * The words that start a Node which is guarded from its first moment on.
 * @param {unknown[]} words
 */
function guardedNode(words) {
  const [command, given, ...rest] = words;
  const own = Array.isArray(given) ? /** @type {unknown[]} */ (given) : [];
  const others = Array.isArray(given) || given === undefined ? rest : [given, ...rest];
  const known = typeof others[0] === 'object' && others[0] !== null ? others.shift() : {};
  const settings = /** @type {{ env?: NodeJS.ProcessEnv }} */ (known);
  const env = { ...(settings.env ?? process.env), [NOTES_NAME]: notes };
  return [command, ['--import', CHILD_ENTRY, ...own], { ...settings, env }, ...others];
}

/** @param {string} what */
function refuse(what) {
  const fault = `A test may read the project, its packages, the temporary folder and the browser, not this: ${what}`;
  appendFileSync(notes, `${fault}\n`);
  throw new Error(fault);
}

/**
 * @param {unknown} given  what a function of node:fs takes as a path
 * @returns {string | null} null: no path, such as an open file's number
 */
function pathOf(given) {
  if (typeof given === 'string') return resolve(given);
  if (given instanceof URL) return resolve(fileURLToPath(given));
  if (given instanceof Uint8Array) return resolve(new TextDecoder().decode(given));
  return null;
}

/** File of the nearest code that is neither Node's nor this. */
function callerOf() {
  const lines = (new Error().stack ?? '').split('\n').slice(1);
  for (const line of lines) {
    const found = /\(?((?:file:\/\/)?(?:\/|[A-Za-z]:[\\/])[^)]*?):\d+:\d+\)?$/.exec(line)?.[1];
    if (found === undefined) continue;
    const path = found.startsWith('file:') ? fileURLToPath(found) : resolve(found);
    if (path !== OWN_FILE) return path;
  }
  return 'unknown';
}

/** @param {string} path */
function realOf(path) {
  try {
    return realpathSync(path);
  } catch {
    return path;
  }
}
