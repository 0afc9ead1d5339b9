import { spawn } from 'node:child_process';
import type { EnginesFound } from './findEngines.ts';
import { startScreen, webKitHome } from './webkitSurroundings.ts';

/**
 * What WebKit itself puts on its console while it opens a page: a driven WebKit doesn't tell, and a listener in the
 * page comes too late for the page's start and hears none of the engine's own words.
 * @param untilLoaded  settles when the page has had its time
 */
export async function webKitConsole(
  paths: NonNullable<EnginesFound['webkit']>,
  folder: string,
  url: string,
  untilLoaded: () => Promise<void>,
): Promise<string[]> {
  const screen = await startScreen(paths.screen);
  const browser = spawn(paths.browser, ['--enable-write-console-messages-to-stdout=true', url], {
    stdio: ['ignore', 'ignore', 'pipe'],
    env: { ...process.env, ...webKitHome({ folder }), ...screen.environment },
  });
  const said: string[] = [];
  // Its standard error, whatever the option is called.
  browser.stderr.on('data', (data: Buffer) => said.push(String(data)));
  // Its helpers write on the same line: it is over when the last of them has gone.
  const hasEnded = new Promise((resolve) => browser.once('close', resolve));
  try {
    await untilLoaded();
  } finally {
    browser.kill();
    await hasEnded;
    screen.end();
  }
  return said
    .join('')
    .split('\n')
    .filter((line) => line.includes('CONSOLE'));
}
