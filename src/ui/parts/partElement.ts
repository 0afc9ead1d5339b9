import { LitElement, html, render } from 'lit';
import { words } from '../../words/inUse.ts';
import { laterTexts } from '../languageChoice.ts';
import { send } from './events.ts';

/**
 * What every element of the page is: where one throws while it is drawn or while it follows the session, it says so in
 * its own place, and the rest of the page goes on. Whatever draws it the next time, or “Try again”, brings it back.
 * @fires step-undo  to undo the last step, from a part that has failed
 * @fires experiment-save  to save the experiment as a file, from a part that has failed
 */
export abstract class PartElement extends LitElement {
  /** Why the part shows a fault in place of itself; null while it works. */
  private failure: { readonly error: unknown } | null = null;

  /** What it is to a person; null until that was asked for. */
  private partName: string | null = null;

  get hasFailed(): boolean {
    return this.failure !== null;
  }

  protected override performUpdate(): void {
    try {
      super.performUpdate();
      this.failure = null;
    } catch (error) {
      this.fail(error);
    }
  }

  /**
   * Shows the fault in place of the element.
   * @param error  whatever was thrown
   * @param again  what failed, to be tried again before the element is drawn anew
   */
  fail(error: unknown, again: () => void = () => undefined): void {
    // A part that fails with every block of sound is reported once.
    if (this.failure === null || String(this.failure.error) !== String(error)) {
      console.error(`<${this.localName}> has failed:`, error);
    }
    this.failure = { error };
    this.showFailure(again);
    if (this.partName === null) void this.findName(again);
  }

  /** The names come when they are needed; the message doesn't wait for them. */
  private async findName(again: () => void): Promise<void> {
    const [{ partName }] = await Promise.all([import('../../words/page/partNames.ts'), laterTexts()]);
    this.partName = partName(this.localName);
    if (this.hasFailed) this.showFailure(again);
  }

  private showFailure(again: () => void): void {
    const onAgain = (): void => {
      again();
      this.requestUpdate();
    };
    const panel = html`<div class="failed" role="alert">
      <p><strong>${words.failed.heading(this.partName)}</strong> ${words.failed.detail}</p>
      <div class="row">
        <button @click=${onAgain}>${words.failed.again}</button>
        <button @click=${() => send(this, 'step-undo')}>${words.failed.undo}</button>
        <button @click=${() => send(this, 'experiment-save')}>${words.failed.save}</button>
      </div>
    </div>`;
    render(panel, this.renderRoot, this.renderOptions);
  }
}
