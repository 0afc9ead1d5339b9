import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { CaptureSettings } from '../../capture/soundSource.ts';
import type { WithheldFlag } from '../../session/hearing/withheldFlag.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { trustWords } from '../../words/captureTrust.ts';
import { words } from '../../words/inUse.ts';
import { flagWords, keepMaybeWords, maybeWords, withheldFlagWords } from '../../words/page/capture.ts';
import { captureStyles } from './captureStyles.ts';

/** So many flags that may be resonances are offered at once; older ones come back as these are kept. */
const MOST_OFFERED = 4;

/** While the microphone runs: whether its level may be rewritten, what the browser says of it, and what to do. */
@customElement('bench-trust')
export class TrustElement extends PartElement {
  static override styles = [
    sharedStyles,
    captureStyles,
    css`
      ul {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-1) var(--gap-4);
        list-style: none;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  private shown = '';
  protected readonly watch = new SessionWatch(this, ['capture', 'notebook', 'live'], () => this.onChange());

  /** The level changes twenty times a second, this hardly ever. */
  private onChange(): void {
    const { capture, trust, withheld, maybes } = this.session.hearing;
    const next = JSON.stringify([capture, trust, [...withheld, ...maybes].map(({ mark }) => mark.id)]);
    if (next !== this.shown) this.requestUpdate();
    this.shown = next;
  }

  override render() {
    const { trust, withheld, maybes, capture } = this.session.hearing;
    const settings = capture.kind === 'running' && trust.kind !== 'trusted' ? capture.settings : null;
    const keepList = this.keepList(maybes);
    if (settings === null && withheld.length === 0) return keepList;
    const isDoubtful = trust.kind === 'doubtful' || withheld.length > 0;
    return html`${keepList}
      <section class="stack ${isDoubtful ? 'bad' : ''}" aria-label=${words.trustPart.name}>
        ${settings === null ? nothing : this.judgement(settings)} ${this.letInList(withheld)}
      </section>`;
  }

  private judgement(settings: CaptureSettings) {
    const { trust, gainCheck } = this.session.hearing;
    const heading = trust.kind === 'doubtful' ? words.trustPart.doubtful : words.trustPart.unproven;
    return html`
      <p><strong>${heading}</strong> ${trustWords(trust)}</p>
      <ul>
        ${flagWords(settings).map(({ name, state }) => html`<li>${name}: <strong>${state}</strong></li>`)}
      </ul>
      <p class="row">
        ${
          trust.gainCheckHelps && gainCheck === null
            ? html`<a class="button" href="#check">${words.trustPart.toCheck}</a>`
            : nothing
        }
        <a href="#microphone">${words.capture.help}</a>
      </p>
    `;
  }

  /** Flags that may be resonances, the newest first, each to be kept. */
  private keepList(maybes: readonly WithheldFlag[]) {
    if (maybes.length === 0) return nothing;
    const newest = maybes.slice(-MOST_OFFERED).reverse();
    return html`<section class="stack">
      <p>${words.trustPart.maybes}</p>
      <ul>
        ${newest.map((flag, index) => {
          return html`<li class="row">
            <span>${maybeWords(flag.resonance)}</span>
            <button
              aria-label=${keepMaybeWords(flag.resonance)}
              aria-keyshortcuts=${index === 0 ? 'K' : nothing}
              @click=${() => this.session.hearing.letIn([flag])}
            >
              ${words.trustPart.keep}
            </button>
          </li>`;
        })}
      </ul>
    </section>`;
  }

  /** Flags that were withheld, to be marked one by one or all. */
  private letInList(withheld: readonly WithheldFlag[]) {
    if (withheld.length === 0) return nothing;
    return html`
      <p>${words.trustPart.withheld(withheld.length)}</p>
      <ul>
        ${withheld.map((flag) => {
          const named = withheldFlagWords(flag.resonance);
          return html`<li class="row">
            <span>${named}</span>
            <button
              aria-label=${words.trustPart.letInNamed(named)}
              @click=${() => this.session.hearing.letIn([flag])}
            >
              ${words.trustPart.letIn}
            </button>
          </li>`;
        })}
      </ul>
      ${
        withheld.length > 1
          ? html`<p>
              <button @click=${() => this.session.hearing.letIn(withheld)}>
                ${words.trustPart.letAllIn}
              </button>
            </p>`
          : nothing
      }
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-trust': TrustElement;
  }
}
