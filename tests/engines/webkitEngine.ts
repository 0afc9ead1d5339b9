import { spawn } from 'node:child_process';
import type { ChildProcess } from 'node:child_process';
import { createServer } from 'node:net';
import type { AddressInfo } from 'node:net';
import { setTimeout as pause } from 'node:timers/promises';
import { USUAL_SIZE } from './engine.ts';
import type { EnginePage, Key, StartOptions } from './engine.ts';
import type { EnginesFound } from './findEngines.ts';
import { expressionInPage } from './inPage.ts';
import { startScreen, webKitHome } from './webkitSurroundings.ts';
import { WebDriver } from './webDriver.ts';

/** Tries to reach the driver, or for a window to take its size, 100 ms each. */
const TRIES = 100;
const KEYS: Readonly<Record<Key, string>> = { Enter: '\uE007', Tab: '\uE004' };
/** Name of an element's reference. @see W3C, WebDriver, 2018, section 11 */
const ELEMENT = 'element-6066-11e4-a52e-4f735466cecf';

/** Starts WebKit's own small browser on a screen that is nowhere to be seen. */
export async function startWebKit(
  paths: NonNullable<EnginesFound['webkit']>,
  options: StartOptions,
): Promise<EnginePage> {
  const screen = await startScreen(paths.screen);
  let driver: ChildProcess | null = null;
  const end = (): void => {
    driver?.kill();
    screen.end();
  };
  try {
    const port = await freePort();
    driver = spawn(paths.driver, [`--port=${port}`], {
      stdio: 'ignore',
      env: { ...process.env, ...webKitHome(options), ...screen.environment, ...options.environment },
    });
    const address = `http://127.0.0.1:${port}`;
    await untilReady(address);
    const session = await WebDriver.start(address, {
      browserName: 'MiniBrowser',
      'webkitgtk:browserOptions': { binary: paths.browser, args: ['--automation'] },
    });
    const page = await WebKitPage.on(session, driver.pid ?? NaN, end);
    await page.setSize(USUAL_SIZE.width, USUAL_SIZE.height);
    return page;
  } catch (error) {
    end();
    throw error;
  }
}

class WebKitPage implements EnginePage {
  readonly engine = 'webkit';
  private readonly lines: string[] = [];
  /** Height of the window's own bar above the view. */
  private barPx = 0;

  private constructor(
    private readonly session: WebDriver,
    readonly processId: number,
    private readonly end: () => void,
  ) {}

  static async on(session: WebDriver, processId: number, end: () => void): Promise<WebKitPage> {
    const page = new WebKitPage(session, processId, end);
    // While the window still has the size that it began with.
    page.barPx = await page.evaluate<number>('outerHeight - innerHeight');
    return page;
  }

  get version(): string {
    return `WebKitGTK ${this.session.browserVersion}`;
  }

  async goTo(url: string): Promise<void> {
    await this.keepLines();
    await this.session.command('POST', '/url', { url });
    await this.evaluate('null');
  }

  async reload(): Promise<void> {
    await this.keepLines();
    await this.session.command('POST', '/refresh');
    await this.evaluate('null');
  }

  async evaluate<T>(expression: string): Promise<T> {
    const script = `return ${expressionInPage(expression)}`;
    return (await this.session.command('POST', '/execute/sync', { script, args: [] })) as T;
  }

  async clickAt(x: number, y: number): Promise<void> {
    const actions = [
      { type: 'pointerMove', x, y, duration: 0, origin: 'viewport' },
      { type: 'pointerDown', button: 0 },
      { type: 'pointerUp', button: 0 },
    ];
    await this.act({ type: 'pointer', id: 'hand', parameters: { pointerType: 'mouse' }, actions });
  }

  type(text: string): Promise<void> {
    return this.strike([...text]);
  }

  press(key: Key): Promise<void> {
    return this.strike([KEYS[key]]);
  }

  async chooseFile(expression: string, path: string): Promise<void> {
    const found = await this.evaluate<Record<typeof ELEMENT, string>>(expression);
    await this.session.command('POST', `/element/${found[ELEMENT]}/value`, { text: path });
  }

  async setSize(width: number, height: number): Promise<void> {
    await this.session.command('POST', '/window/rect', { x: 0, y: 0, width, height: height + this.barPx });
    for (let tries = 0; tries < TRIES; tries += 1) {
      const isSo = await this.evaluate<boolean>(`innerWidth === ${width} && innerHeight === ${height}`);
      if (isSo) return;
      await pause(100);
    }
    throw new Error(`WebKit’s window never became ${width} × ${height}.`);
  }

  async screenshot(): Promise<Uint8Array> {
    return Buffer.from((await this.session.command('GET', '/screenshot')) as string, 'base64');
  }

  async consoleLines(): Promise<readonly string[]> {
    await this.keepLines();
    return this.lines;
  }

  async close(): Promise<void> {
    try {
      await this.session.end();
    } finally {
      this.end();
    }
  }

  private strike(keys: readonly string[]): Promise<void> {
    const actions = keys.flatMap((value) => [
      { type: 'keyDown', value },
      { type: 'keyUp', value },
    ]);
    return this.act({ type: 'key', id: 'keys', actions });
  }

  private async act(source: object): Promise<void> {
    await this.session.command('POST', '/actions', { actions: [source] });
  }

  /** What the page itself wrote down goes with it. */
  private async keepLines(): Promise<void> {
    this.lines.push(...(await this.evaluate<string[]>('benchHand.lines.splice(0)')));
  }
}

function freePort(): Promise<number> {
  return new Promise((resolve) => {
    const server = createServer();
    server.listen(0, '127.0.0.1', () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => resolve(port));
    });
  });
}

async function untilReady(address: string): Promise<void> {
  for (let tries = 0; tries < TRIES; tries += 1) {
    const isThere = await fetch(`${address}/status`).then(
      (response) => response.ok,
      () => false,
    );
    if (isThere) return;
    await pause(100);
  }
  throw new Error('WebKit’s driver did not start within 10 s.');
}
