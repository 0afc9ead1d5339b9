import { chromium } from 'playwright-core';
import type { Browser, BrowserContext, Page } from 'playwright-core';

export interface OpenBrowserOptions {
  /** Of a full Chromium, as `inject('chromiumPath')` gives it. */
  readonly chromiumPath: string;
  /** Plays once as the microphone, in real time, from each start of listening on. */
  readonly microphoneWav?: string;
  /**
   * `granted` (the usual case): a microphone is there and nobody is asked; without `microphoneWav` it beeps.
   * `refused`: a microphone is there and the question is answered with no. `absent`: there is none.
   */
  readonly microphone?: 'granted' | 'refused' | 'absent';
  /** Further arguments for Chromium. */
  readonly args?: readonly string[];
}

export interface OpenPageOptions extends OpenBrowserOptions {
  /** As `inject('pageUrl')` gives it; a path may be added. */
  readonly url: string;
  /** A running browser to open the page in, as a new person would; it stays open and keeps its own microphone. */
  readonly browser?: Browser;
  readonly viewport?: { readonly width: number; readonly height: number };
  /** The browser's language (BCP 47). */
  readonly locale?: string;
  readonly colorScheme?: 'light' | 'dark';
  readonly reducedMotion?: 'reduce' | 'no-preference';
  /** Runs in the page before its own scripts: the place to break what the browser offers. */
  readonly beforeScripts?: string;
  /** `block` where a test holds requests back: the worker would answer them itself, from its own store. */
  readonly serviceWorkers?: 'allow' | 'block';
}

export interface OpenedPage {
  readonly page: Page;
  readonly context: BrowserContext;
  readonly browser: Browser;
  /** Uncaught errors and `console.error` so far, for a test to find empty. */
  readonly faults: string[];
  close(): Promise<void>;
}

const QUIET_ARGUMENTS = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

/** There is no switch for this, and a developer's machine has a microphone. */
const NO_MICROPHONE = `
  navigator.mediaDevices.enumerateDevices = () => Promise.resolve([]);
  navigator.mediaDevices.getUserMedia = () =>
    Promise.reject(new DOMException('Requested device not found', 'NotFoundError'));
`;

/** Starts a Chromium with this microphone. */
export function openBrowser(options: OpenBrowserOptions): Promise<Browser> {
  const microphone = microphoneArguments(options.microphone ?? 'granted', options.microphoneWav);
  return chromium.launch({
    executablePath: options.chromiumPath,
    args: [...QUIET_ARGUMENTS, ...microphone, ...(options.args ?? [])],
  });
}

/**
 * Opens a page with storage of its own, in a Chromium of its own unless one is given: a file can become the
 * microphone only at a browser's start. Call `close` in any case.
 */
export async function openPage(options: OpenPageOptions): Promise<OpenedPage> {
  const browser = options.browser ?? (await openBrowser(options));
  const close = async (): Promise<void> => {
    if (options.browser === undefined) await browser.close();
    else await context?.close();
  };
  let context: BrowserContext | undefined;
  try {
    context = await browser.newContext({
      viewport: options.viewport ?? { width: 1280, height: 800 },
      locale: options.locale ?? 'en-US',
      colorScheme: options.colorScheme ?? 'light',
      reducedMotion: options.reducedMotion ?? 'no-preference',
      acceptDownloads: true,
      serviceWorkers: options.serviceWorkers ?? 'allow',
      permissions: (options.microphone ?? 'granted') === 'granted' ? ['microphone'] : [],
    });
    if (options.microphone === 'absent') await context.addInitScript(NO_MICROPHONE);
    if (options.beforeScripts !== undefined) await context.addInitScript(options.beforeScripts);
    const page = await context.newPage();
    const faults: string[] = [];
    page.on('pageerror', (error) => faults.push(String(error)));
    page.on('console', (message) => {
      if (message.type() === 'error') faults.push(message.text());
    });
    await page.goto(options.url);
    await untilAlive(page);
    return { page, context, browser, faults, close };
  } catch (error) {
    await close();
    throw error;
  }
}

/** Until the page, if it is the bench, has its texts and takes what a hand does: nobody pastes into a blank page. */
async function untilAlive(page: Page): Promise<void> {
  await page.evaluate(async () => {
    if (document.querySelector('bench-app') !== null) await customElements.whenDefined('bench-app');
  });
}

function microphoneArguments(microphone: OpenPageOptions['microphone'], wav: string | undefined): string[] {
  if (microphone === 'absent') return [];
  const fakeDevice = ['--use-fake-device-for-media-stream'];
  // Without repetition: the file ends in silence and must not begin again.
  if (wav !== undefined) fakeDevice.push(`--use-file-for-fake-audio-capture=${wav}%noloop`);
  return microphone === 'refused'
    ? [...fakeDevice, '--deny-permission-prompts']
    : [...fakeDevice, '--use-fake-ui-for-media-stream'];
}
