import type { ReactiveController, ReactiveControllerHost } from 'lit';

/**
 * Follows how wide an element's inside is. It tells with the next frame: what is drawn anew at once changes the
 * element's height while the browser still hands sizes out, which every browser reports as a fault.
 */
export class WidthWatch implements ReactiveController {
  private frame = 0;
  private readonly sizes = new ResizeObserver(([entry]) => {
    if (entry === undefined) return;
    cancelAnimationFrame(this.frame);
    this.frame = requestAnimationFrame(() => this.onWidth(entry.contentRect.width));
  });

  /** @param onWidth  takes the width, CSS pixels */
  constructor(
    private readonly host: ReactiveControllerHost & Element,
    private readonly onWidth: (widthPx: number) => void,
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    this.sizes.observe(this.host);
  }

  hostDisconnected(): void {
    this.sizes.disconnect();
    cancelAnimationFrame(this.frame);
  }
}
