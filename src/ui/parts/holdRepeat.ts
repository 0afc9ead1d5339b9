/** A press this long goes on by itself, ms. */
const HOLD_MS = 400;
/** From one step to the next while it does, ms. */
const EVERY_MS = 80;

/** Does a step at once when a button is pressed, and goes on stepping while it is held. */
export class HoldRepeat {
  private timer = 0;

  /** Begins with one step. */
  begin(step: () => void): void {
    this.end();
    step();
    const next = (): void => {
      step();
      this.timer = window.setTimeout(next, EVERY_MS);
    };
    this.timer = window.setTimeout(next, HOLD_MS);
  }

  /** Safe to call at any time. */
  end(): void {
    clearTimeout(this.timer);
  }
}
