import { html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { storageFault } from '../../notebook/storageFault.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { AskElement } from '../parts/askElement.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { askToPersist, eraseAll, storedFacts } from './eraseAll.ts';
import type { StoredFacts } from './eraseAll.ts';
import { isClearedTab } from './clearedTab.ts';
import '../parts/askElement.ts';
import { laterWords } from '../../words/inUse.ts';
import { storageFaultWords } from '../../words/storageFaults.ts';

/** The one place that says what is stored on this device, and erases it all. */
@customElement('bench-stored')
export class StoredElement extends PartElement {
  static override styles = sharedStyles;

  @property({ attribute: false }) session!: Session;
  @state() private facts: StoredFacts = { usedBytes: null, isPersistent: null };
  @query('bench-ask') private asking!: AskElement;
  protected readonly watch = new SessionWatch(this, ['keeping']);

  override connectedCallback(): void {
    super.connectedCallback();
    void this.look();
  }

  private async look(): Promise<void> {
    this.facts = await storedFacts();
  }

  private async onPersist(): Promise<void> {
    const isKept = await askToPersist();
    this.session.tell(
      isKept ? 'info' : 'problem',
      isKept ? laterWords.stored.kept : laterWords.stored.notKept,
    );
    await this.look();
  }

  private async onErase(): Promise<void> {
    const isWanted = await this.asking.ask(laterWords.stored.askErase);
    if (!isWanted) return;
    this.session.hearing.stop();
    try {
      await this.session.keeping.stop();
      await eraseAll();
      location.replace(location.pathname);
    } catch (error) {
      this.session.tell('problem', laterWords.stored.notErased(storageFaultWords(storageFault(error))));
    }
  }

  override render() {
    const { usedBytes, isPersistent } = this.facts;
    return html`<section class="stack" aria-label=${laterWords.stored.heading}>
      <h2>${laterWords.stored.heading}</h2>
      <p class="lead">${laterWords.stored.lead}</p>
      ${usedBytes === null ? nothing : html`<p>${laterWords.stored.inAll(usedBytes)}</p>`}
      ${
        isPersistent === null
          ? nothing
          : isPersistent
            ? html`<p class="small">${laterWords.stored.promised}</p>`
            : html`<p class="small">${laterWords.stored.notPromised}</p>
                <p><button class="quiet" @click=${this.onPersist}>${laterWords.stored.askToKeep}</button></p>`
      }
      ${isClearedTab() ? html`<p class="caution">${laterWords.homeScreen.advice}</p>` : nothing}
      ${this.older()}
      <p><button @click=${this.onErase}>${laterWords.stored.erase}</button></p>
      <bench-ask></bench-ask>
    </section>`;
  }

  /** From before several copies of the bench on one host had a notebook each. */
  private older() {
    const { olderOf } = this.session.keeping;
    if (olderOf === null) return nothing;
    const { path } = olderOf;
    if (path === null) return html`<p class="small">${laterWords.stored.older}</p>`;
    const { before, part, after } = laterWords.stored.olderAt(path);
    return html`<p class="small">
      ${before}<a href=${path} target="_blank" rel="noopener">${part}</a>${after}
    </p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-stored': StoredElement;
  }
}
