import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { SiteUpdates } from '../../offline/siteUpdates.ts';
import type { Session } from '../../session/session.ts';
import { SOUND_LIMIT_BYTES } from '../../session/hearing/soundKeeping.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { saveExperiment } from '../saveFile.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { isClearedTab } from './clearedTab.ts';
import { words } from '../../words/inUse.ts';
import { savingSoundWords } from '../../words/records.ts';
import { storageFaultWords } from '../../words/storageFaults.ts';
import { laterTexts } from '../languageChoice.ts';

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
    if (isClearedTab()) void laterTexts().then(() => import('./homeScreenElement.ts'));
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
    return html`${this.kept()} ${this.sounding()} ${this.newer()}
      <bench-home-screen .session=${this.session}></bench-home-screen>`;
  }

  private kept() {
    const { keeping } = this.session;
    if (keeping.access === 'elsewhere') {
      return this.line(
        words.keepingBar.elsewhere,
        html`<button @click=${() => void keeping.takeOver()}>${words.keepingBar.workHere}</button>
          <button @click=${() => void this.session.experiments.openCopy()}>
            ${words.keepingBar.openCopy}
          </button>`,
      );
    }
    if (keeping.access === 'apart') {
      return this.line(
        words.keepingBar.apart,
        html`<button @click=${() => void this.session.experiments.openCopy()}>
            ${words.keepingBar.goOn}
          </button>
          <button @click=${() => void this.onUseOther()}>${words.keepingBar.useOther}</button>`,
      );
    }
    if (keeping.saveState.kind !== 'refused') return nothing;
    return this.line(
      words.keepingBar.refused(storageFaultWords(keeping.saveState.why)),
      html`<button @click=${this.onSave}>${words.keepingBar.save}</button>
        <button @click=${() => void keeping.tryAgain()}>${words.keepingBar.tryAgain}</button>`,
    );
  }

  private sounding() {
    const { sound } = this.session;
    if (!sound.isOn) return nothing;
    const { before, part, after } = savingSoundWords(sound.usedBytes, SOUND_LIMIT_BYTES);
    return html`<div class="line">
      <p>${before}<strong role="status">${part}</strong>${after}</p>
      <button @click=${() => sound.turnOff()}>${words.keepingBar.stopSaving}</button>
    </div>`;
  }

  private newer() {
    if (this.updates.state !== 'update waits') return nothing;
    const newer = this.isBusyElsewhere ? words.keepingBar.newerBusy : words.keepingBar.newer;
    return html`<div class="line">
      <p role="status">${newer}</p>
      <button ?disabled=${this.session.hearing.isListening} @click=${this.onUpdate}>
        ${words.keepingBar.useNewer}
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
