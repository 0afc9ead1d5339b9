import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CaptureFailure } from '../../capture/soundSource.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { send } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { captureFailureWords } from '../../words/capture.ts';
import { inFull } from '../../words/faultWords.ts';
import { words } from '../../words/inUse.ts';
import { captureStyles } from './captureStyles.ts';

/**
 * Why nothing is heard: a failure or a pause, each with the one thing to do. It stands where the level would, so that
 * nothing moves when it comes.
 * @fires listen-start  to rebuild capture
 */
@customElement('bench-capture-state')
export class CaptureStateElement extends PartElement {
  static override styles = [sharedStyles, captureStyles];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['capture']);

  private onAgain(): void {
    send(this, 'listen-start');
  }

  override render() {
    const { capture } = this.session.hearing;
    if (capture.kind === 'failed') return this.failed(capture.failure);
    if (capture.kind === 'interrupted') return this.paused(words.hold[capture.hold]);
    return nothing;
  }

  private failed(failure: CaptureFailure) {
    return html`<section class="stack bad" aria-label=${words.capture.ended}>
      <p><strong>${words.capture.notListening}</strong> ${inFull(captureFailureWords(failure))}</p>
      <p class="row">
        <button class="primary" @click=${this.onAgain}>${words.capture.again}</button>
        ${
          failure.code === 'framed'
            ? html`<a class="button" href=${location.href} target="_blank" rel="noopener"
                >${words.capture.ownTab}</a
              >`
            : nothing
        }
        <a href="#microphone">${words.capture.help}</a>
      </p>
    </section>`;
  }

  private paused(message: string) {
    return html`<section class="stack" aria-label=${words.capture.held}>
      <p><strong>${words.capture.paused}</strong> ${message}</p>
      <p class="row"><button @click=${this.onAgain}>${words.capture.again}</button></p>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-capture-state': CaptureStateElement;
  }
}
