/**
 * Lets the page (or any event loop) do what waits, and goes on right after. A message, not a timer: a hidden
 * page's timers are slowed to one a second.
 */
export function yieldToPage(): Promise<void> {
  return new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      port2.close();
      resolve();
    };
    port2.postMessage(null);
  });
}
