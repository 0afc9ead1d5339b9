/** A session of plain WebDriver over HTTP: the few commands that the tests need. @see W3C, WebDriver, 2018 */
export class WebDriver {
  private constructor(
    private readonly address: string,
    private readonly sessionId: string,
    readonly browserVersion: string,
  ) {}

  /** Starts the browser. @throws Error with the driver's words where it can't */
  static async start(address: string, capabilities: object): Promise<WebDriver> {
    const session = (await ask(address, 'POST', '/session', {
      capabilities: { alwaysMatch: capabilities },
    })) as { sessionId: string; capabilities: { browserVersion: string } };
    return new WebDriver(address, session.sessionId, session.capabilities.browserVersion);
  }

  /** @throws Error with the driver's words where the command fails */
  command(method: 'GET' | 'POST', path: string, body: object = {}): Promise<unknown> {
    return ask(this.address, method, `/session/${this.sessionId}${path}`, method === 'POST' ? body : null);
  }

  /** Ends the browser. */
  async end(): Promise<void> {
    await ask(this.address, 'DELETE', `/session/${this.sessionId}`, null);
  }
}

async function ask(address: string, method: string, path: string, body: object | null): Promise<unknown> {
  const response = await fetch(`${address}${path}`, {
    method,
    ...(body === null ? {} : { body: JSON.stringify(body) }),
  });
  const { value } = (await response.json()) as { value: unknown };
  if (response.ok) return value;
  const { error, message } = value as { error: string; message: string };
  throw new Error(`WebDriver, ${path}: ${error}: ${message}`);
}
