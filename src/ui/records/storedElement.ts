import { html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { storageFault } from '../../notebook/storageFault.ts';
import { megabytes } from '../../words/numbers.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { AskElement } from '../parts/askElement.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { askToPersist, eraseAll, storedFacts } from './eraseAll.ts';
import type { StoredFacts } from './eraseAll.ts';
import '../parts/askElement.ts';
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
      isKept
        ? 'The browser keeps the notebook until you erase it.'
        : 'The browser made no promise: save files of what matters. Installing the bench may change its mind.',
    );
    await this.look();
  }

  private async onErase(): Promise<void> {
    const isWanted = await this.asking.ask({
      heading: 'Erase everything that is stored here?',
      message:
        'All experiments, deleted ones too, and all kept sound are erased from this browser and can’t come back. Save files first of what you still need.',
      no: 'Keep everything',
      yes: 'Erase everything',
    });
    if (!isWanted) return;
    this.session.hearing.stop();
    try {
      await this.session.keeping.stop();
      await eraseAll();
      location.replace(location.pathname);
    } catch (error) {
      this.session.tell(
        'problem',
        `Not everything could be erased: ${storageFaultWords(storageFault(error))}`,
      );
    }
  }

  override render() {
    const { usedBytes, isPersistent } = this.facts;
    return html`<section class="stack" aria-label="Stored on this device">
      <h2>Stored on this device</h2>
      <p class="lead">
        Experiments with their marks, level traces, notes and steps for undo; sound only where you asked to
        keep it; light or dark; what is typed and not taken yet; and a copy of this site, so that it works
        without a network. All of it stays in this browser: nothing is sent anywhere.
      </p>
      ${usedBytes === null ? nothing : html`<p>${megabytes(usedBytes)} in all, as the browser counts.</p>`}
      ${
        isPersistent === null
          ? nothing
          : isPersistent
            ? html`<p class="small">The browser has promised to keep it until you erase it.</p>`
            : html`<p class="small">
                  The browser may clear it when space runs short or the bench isn’t used for long.
                </p>
                <p><button class="quiet" @click=${this.onPersist}>Ask it to keep it</button></p>`
      }
      ${this.older()}
      <p><button @click=${this.onErase}>Erase everything…</button></p>
      <bench-ask></bench-ask>
    </section>`;
  }

  /** From before several copies of the bench on one host had a notebook each. */
  private older() {
    const { olderOf } = this.session.keeping;
    if (olderOf === null) return nothing;
    const { path } = olderOf;
    return html`<p class="small">
      This browser holds an older notebook of another copy of this bench on this host:
      ${path === null ? 'open that copy to see it.' : html`<a href=${path} target="_blank" rel="noopener">open ${path}</a>`}
    </p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-stored': StoredElement;
  }
}
