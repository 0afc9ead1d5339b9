import type { EngineName } from './findEngines.ts';

/** How an engine is to be started. */
export interface StartOptions {
  /** A folder of its own: where the browser saves what the page hands out, and keeps what it needs. */
  readonly folder: string;
  readonly colorScheme?: 'light' | 'dark';
  /** The machine's own microphone, where a made one is the rule; granted without a question either way. */
  readonly isRealMicrophone?: boolean;
  /** Besides what the browser is given anyway. */
  readonly environment?: Readonly<Record<string, string>>;
}

/** Keys that a person presses beside letters. */
export type Key = 'Enter' | 'Tab';

/** One tab of a running browser, with the little that every engine's driver can do in the same way. */
export interface EnginePage {
  readonly engine: EngineName;
  /** As the browser itself says it. */
  readonly version: string;
  /** The browser's process or its parent: what it and its children use is the engine's share of the machine. */
  readonly processId: number;
  goTo(url: string): Promise<void>;
  reload(): Promise<void>;
  /** @param expression  of the page's language; a promise is waited for. @returns its value, as JSON can hold it */
  evaluate<T>(expression: string): Promise<T>;
  /** A real press of the main button, CSS pixels from the view's corner. */
  clickAt(x: number, y: number): Promise<void>;
  /** Real keys, to what has the keyboard. */
  type(text: string): Promise<void>;
  press(key: Key): Promise<void>;
  /** Hands a file to a field. @param expression  gives the field's element */
  chooseFile(expression: string, path: string): Promise<void>;
  /** Size of the view, CSS pixels. */
  setSize(width: number, height: number): Promise<void>;
  /** What is in the view, PNG. */
  screenshot(): Promise<Uint8Array>;
  /** Lines of the console, uncaught errors and refusals of the content policy since the start. */
  consoleLines(): Promise<readonly string[]>;
  close(): Promise<void>;
}

/** Of the view, unless it is set otherwise. */
export const USUAL_SIZE = { width: 1280, height: 800 } as const;
