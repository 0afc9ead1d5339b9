import type { EnginePage, StartOptions } from './engine.ts';
import type { EngineName, EnginesFound } from './findEngines.ts';
import { startByPuppeteer } from './puppeteerEngine.ts';
import { startWebKit } from './webkitEngine.ts';

/** A tab of a browser that is started for it. Call `close` in any case. */
export function startEngine(
  name: EngineName,
  found: EnginesFound,
  options: StartOptions,
): Promise<EnginePage> {
  if (name === 'webkit') return startWebKit(here(name, found.webkit), options);
  return startByPuppeteer(name, here(name, found[name]).browser, options);
}

function here<T>(name: EngineName, paths: T | null): T {
  if (paths === null) throw new Error(`There is no ${name} on this machine.`);
  return paths;
}
