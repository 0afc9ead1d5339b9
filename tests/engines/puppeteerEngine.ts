import puppeteer from 'puppeteer-core';
import type { Browser, ElementHandle, LaunchOptions, Page } from 'puppeteer-core';
import { USUAL_SIZE } from './engine.ts';
import type { EnginePage, Key, StartOptions } from './engine.ts';
import { expressionInPage, IN_PAGE } from './inPage.ts';

/** Starts Chromium, which is spoken to in its own protocol, or Firefox, in WebDriver BiDi. */
export async function startByPuppeteer(
  engine: 'chromium' | 'firefox',
  browserPath: string,
  options: StartOptions,
): Promise<EnginePage> {
  const browser = await puppeteer.launch({
    ...(engine === 'chromium' ? chromiumOptions(options) : firefoxOptions(options)),
    executablePath: browserPath,
    env: { ...process.env, ...options.environment },
    defaultViewport: USUAL_SIZE,
  });
  try {
    // Firefox gives its first tab no focus, and then no change events.
    const page = await browser.newPage();
    return await PuppeteerPage.on(engine, browser, page, options);
  } catch (error) {
    await browser.close();
    throw error;
  }
}

function chromiumOptions(options: StartOptions): LaunchOptions {
  return {
    browser: 'chrome',
    args: [
      '--no-sandbox',
      '--disable-gpu',
      '--disable-background-networking',
      '--disable-component-update',
      '--disable-sync',
      '--no-first-run',
      '--use-fake-ui-for-media-stream',
      ...(options.isRealMicrophone === true ? [] : ['--use-fake-device-for-media-stream']),
    ],
    downloadBehavior: { policy: 'allow', downloadPath: options.folder },
  };
}

function firefoxOptions(options: StartOptions): LaunchOptions {
  return {
    browser: 'firefox',
    protocol: 'webDriverBiDi',
    extraPrefsFirefox: {
      'browser.download.folderList': 2,
      'browser.download.dir': options.folder,
      'browser.download.alwaysOpenPanel': false,
      'media.navigator.permission.disabled': true,
      'media.navigator.streams.fake': options.isRealMicrophone !== true,
      'layout.css.prefers-color-scheme.content-override': options.colorScheme === 'dark' ? 0 : 1,
    },
  };
}

class PuppeteerPage implements EnginePage {
  private readonly lines: string[] = [];

  private constructor(
    readonly engine: 'chromium' | 'firefox',
    readonly version: string,
    private readonly browser: Browser,
    private readonly page: Page,
  ) {
    page.on('console', (message) => this.lines.push(`${message.type()}: ${message.text()}`));
    page.on('pageerror', (error) => this.lines.push(`uncaught: ${String(error)}`));
  }

  static async on(
    engine: 'chromium' | 'firefox',
    browser: Browser,
    page: Page,
    options: StartOptions,
  ): Promise<PuppeteerPage> {
    if (engine === 'chromium') {
      await page.emulateMediaFeatures([
        { name: 'prefers-color-scheme', value: options.colorScheme ?? 'light' },
      ]);
    }
    await page.evaluateOnNewDocument(IN_PAGE);
    return new PuppeteerPage(engine, await browser.version(), browser, page);
  }

  get processId(): number {
    return this.browser.process()?.pid ?? NaN;
  }

  async goTo(url: string): Promise<void> {
    await this.keepLines();
    await this.page.goto(url);
    await this.page.bringToFront();
  }

  async reload(): Promise<void> {
    await this.keepLines();
    await this.page.reload();
    await this.page.bringToFront();
  }

  async evaluate<T>(expression: string): Promise<T> {
    return (await this.page.evaluate(expressionInPage(expression))) as T;
  }

  clickAt(x: number, y: number): Promise<void> {
    return this.page.mouse.click(x, y);
  }

  type(text: string): Promise<void> {
    return this.page.keyboard.type(text);
  }

  press(key: Key): Promise<void> {
    return this.page.keyboard.press(key);
  }

  async chooseFile(expression: string, path: string): Promise<void> {
    const handle = await this.page.evaluateHandle(expressionInPage(expression));
    await (handle as ElementHandle<HTMLInputElement>).uploadFile(path);
    await handle.dispose();
  }

  setSize(width: number, height: number): Promise<void> {
    return this.page.setViewport({ width, height });
  }

  screenshot(): Promise<Uint8Array> {
    return this.page.screenshot();
  }

  async consoleLines(): Promise<readonly string[]> {
    await this.keepLines();
    return this.lines;
  }

  close(): Promise<void> {
    return this.browser.close();
  }

  /** What the page itself wrote down goes with it. */
  private async keepLines(): Promise<void> {
    this.lines.push(...(await this.evaluate<string[]>('benchHand.lines.splice(0)')));
  }
}
