import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Tells an element that draws in the page's colours when these change: the page's theme, or the system's own colours. */
export class ThemeWatch implements ReactiveController {
  private readonly themes = new MutationObserver(() => this.react());
  private readonly forced = matchMedia('(forced-colors: active)');
  private readonly onForced = (): void => this.react();

  constructor(
    host: ReactiveControllerHost,
    private readonly react: () => void = () => host.requestUpdate(),
  ) {
    host.addController(this);
  }

  hostConnected(): void {
    this.themes.observe(document.documentElement, { attributeFilter: ['data-theme'] });
    this.forced.addEventListener('change', this.onForced);
  }

  hostDisconnected(): void {
    this.themes.disconnect();
    this.forced.removeEventListener('change', this.onForced);
  }
}
