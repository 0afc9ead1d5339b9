import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { SiteUpdates } from '../../offline/siteUpdates.ts';
import { megabytes } from '../../words/numbers.ts';
import type { Session } from '../../session/session.ts';
import { SOUND_LIMIT_BYTES } from '../../session/hearing/soundKeeping.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { saveExperiment } from '../saveFile.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { storageFaultWords } from '../../words/storageFaults.ts';

/** At the top of every view, and only when there is something to say: work that isn't kept, other tabs, a newer bench. */
@customElement('bench-keeping-bar')
export class KeepingBarElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .line {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap-1) var(--gap-3);
        padding: var(--gap-1) clamp(0.75rem, 2vw, 1.5rem);
        border-block-end: 1px solid var(--line);
        border-inline-start: 6px solid var(--room);
        background: var(--room-wash);
      }
      .line.problem {
        border-inline-start-color: var(--alert);
        background: var(--alert-wash);
      }
      p {
        flex: 1 1 20rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private isBusyElsewhere = false;
  private readonly updates = new SiteUpdates(() => this.requestUpdate());
  protected readonly watch = new SessionWatch(this, ['keeping', 'capture']);

  override connectedCallback(): void {
    super.connectedCallback();
    void this.updates.begin();
  }

  private onSave(): void {
    saveExperiment(this.session.experiment);
  }

  private async onUseOther(): Promise<void> {
    if (await this.session.experiments.mayLeave()) await this.session.keeping.takeOver();
  }

  private async onUpdate(): Promise<void> {
    this.isBusyElsewhere = !(await this.updates.take());
  }

  override render() {
    return html`${this.kept()} ${this.sounding()} ${this.newer()}`;
  }

  private kept() {
    const { keeping } = this.session;
    if (keeping.access === 'elsewhere') {
      return this.line(
        'This experiment is open in another tab. Here it is only shown and follows what is done there.',
        html`<button @click=${() => void keeping.takeOver()}>Work on it here</button>
          <button @click=${() => void this.session.experiments.openCopy()}>Open a copy</button>`,
      );
    }
    if (keeping.access === 'apart') {
      return this.line(
        'Another tab has changed this experiment meanwhile: what you do here isn’t saved.',
        html`<button @click=${() => void this.session.experiments.openCopy()}>Go on with a copy</button>
          <button @click=${() => void this.onUseOther()}>Use what the other tab saved</button>`,
      );
    }
    if (keeping.saveState.kind !== 'refused') return nothing;
    return this.line(
      `Your work is only in this tab: ${storageFaultWords(keeping.saveState.why)} You can go on; save the file before you leave.`,
      html`<button @click=${this.onSave}>Save the file</button>
        <button @click=${() => void keeping.tryAgain()}>Try again</button>`,
    );
  }

  private sounding() {
    const { sound } = this.session;
    if (!sound.isOn) return nothing;
    return html`<div class="line">
      <p>
        <strong role="status">● Sound is being kept</strong> while you listen: ${megabytes(sound.usedBytes)}
        of ${megabytes(SOUND_LIMIT_BYTES)}
      </p>
      <button @click=${() => sound.turnOff()}>Keep no more</button>
    </div>`;
  }

  private newer() {
    if (this.updates.state !== 'update waits') return nothing;
    const words = this.isBusyElsewhere
      ? 'A newer version of this bench is ready. Close its other tabs first: they still use the old one.'
      : 'A newer version of this bench is ready. It waits until you want it; what you measured stays.';
    return html`<div class="line">
      <p role="status">${words}</p>
      <button ?disabled=${this.session.hearing.isListening} @click=${this.onUpdate}>
        Use the newer version
      </button>
    </div>`;
  }

  private line(words: string, buttons: unknown) {
    return html`<div class="line problem">
      <p role="alert">${words}</p>
      ${buttons}
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-keeping-bar': KeepingBarElement;
  }
}
