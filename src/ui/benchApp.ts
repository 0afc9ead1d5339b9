import { LitElement, html, nothing } from 'lit';
import { customElement, query, state } from 'lit/decorators.js';
import { BenchPractice } from '../session/benchPractice.ts';
import { MicrophoneSource } from '../capture/microphoneSource.ts';
import { PracticeSource } from '../capture/practiceSource.ts';
import { RecordingSource } from '../capture/recordingSource.ts';
import type { BenchSession } from '../session/benchSession.ts';
import { appStyles } from './appStyles.ts';
import { BenchWatch } from './benchWatch.ts';
import { createSession } from './createSession.ts';
import { keyCommand } from './keyCommand.ts';
import type { KeyCommand } from './keyCommand.ts';
import { sharedStyles } from './sharedStyles.ts';
import type { SourceKind } from './stage/benchSource.ts';
import { chooseTheme, themeChoice } from './themeChoice.ts';
import type { ThemeChoice } from './themeChoice.ts';
import { VIEWS, viewOf } from './views.ts';
import type { ViewId } from './views.ts';
import './apparatus/benchApparatus.ts';
import './measure/benchMarks.ts';
import './measure/benchResult.ts';
import './parts/benchKeys.ts';
import './parts/benchNotice.ts';
import './records/benchFiles.ts';
import './stage/benchColumn.ts';
import './stage/benchNow.ts';
import './stage/benchPracticeDesk.ts';
import './stage/benchReadout.ts';
import './stage/benchSource.ts';
import './stage/benchStrip.ts';

/** A flash long enough to be seen from the corner of the eye, far slower than 3 Hz. */
const FLASH_MS = 1200;

/** The whole page: the experiment on top, the views below. */
@customElement('bench-app')
export class BenchApp extends LitElement {
  static override styles = [sharedStyles, appStyles];

  readonly session: BenchSession = createSession();
  @state() private kind: SourceKind = 'practice';
  @state() private view: ViewId = viewOf(location.hash);
  @state() private isFlashing = false;
  /** Where the column is drawn when the tube is real: the last length read, or where the handle was put. */
  @state() private drawnLengthM = 0.3;
  @query('bench-source') private source!: HTMLElementTagNameMap['bench-source'];
  @query('bench-marks') private marks!: HTMLElementTagNameMap['bench-marks'] | null;
  @query('bench-keys') private keys!: HTMLElementTagNameMap['bench-keys'];
  @query('bench-practice-desk') private desk!: HTMLElementTagNameMap['bench-practice-desk'] | null;
  private practice = new BenchPractice(this.session.experiment, practiceSeed());
  private flagsSeen = 0;
  private readonly onHash = (): void => void (this.view = viewOf(location.hash));
  private readonly onKey = (event: KeyboardEvent): void => this.takeKey(event);
  protected readonly watch = new BenchWatch(this, ['notebook', 'capture', 'live'], () => this.onSession());

  override connectedCallback(): void {
    super.connectedCallback();
    addEventListener('hashchange', this.onHash);
    addEventListener('keydown', this.onKey);
    void this.session.restore();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    removeEventListener('hashchange', this.onHash);
    removeEventListener('keydown', this.onKey);
    this.session.stopListening();
  }

  private onSession(): void {
    this.practice.follow(this.session.experiment);
    const flags = this.session.trace.resonances.length;
    if (flags > this.flagsSeen) this.flash();
    this.flagsSeen = flags;
    this.requestUpdate();
  }

  private flash(): void {
    this.isFlashing = true;
    navigator.vibrate?.(120);
    setTimeout(() => (this.isFlashing = false), FLASH_MS);
  }

  private onSource(event: CustomEvent<SourceKind>): void {
    this.kind = event.detail;
  }

  private onListen(): void {
    void this.session.startListening(
      this.kind === 'microphone' ? new MicrophoneSource() : new PracticeSource(this.practice.column),
    );
  }

  private onRecording(event: CustomEvent<File>): void {
    void this.session.startListening(new RecordingSource(event.detail));
  }

  private onSlide(event: CustomEvent<number>): void {
    if (this.kind === 'practice') this.practice.slideTo(event.detail);
    else this.drawnLengthM = event.detail;
    this.requestUpdate();
  }

  private takeKey(event: KeyboardEvent): void {
    const command = keyCommand(event, event.composedPath()[0]);
    if (command === null) return;
    event.preventDefault();
    this.run(command);
  }

  private run(command: KeyCommand): void {
    const commands: Record<KeyCommand, () => void> = {
      listen: () => this.source.toggle(),
      mark: () => this.session.addMarkByHand(null),
      lengths: () => this.toLengths(),
      strike: () => this.desk?.strike(),
      fork: () => this.desk?.toggleFork(),
      undo: () => this.session.undo(),
      redo: () => this.session.redo(),
      keys: () => this.keys.show(),
    };
    commands[command]();
  }

  private toLengths(): void {
    location.hash = '#measure';
    this.view = 'measure';
    void this.updateComplete.then(() => this.marks?.focusWaiting());
  }

  private onTheme(event: Event): void {
    chooseTheme((event.target as HTMLSelectElement).value as ThemeChoice, document.documentElement);
    this.renderRoot.querySelector('bench-strip')?.recolour();
  }

  override render() {
    const isPractice = this.kind === 'practice';
    return html`
      ${this.header()}
      <main class=${this.isFlashing ? 'flash' : ''}>
        <div class="controls">
          <bench-source
            .session=${this.session}
            .kind=${this.kind}
            @source-change=${this.onSource}
            @listen-start=${this.onListen}
            @recording-open=${this.onRecording}
          ></bench-source>
          <bench-now .session=${this.session}></bench-now>
        </div>
        <bench-notice .session=${this.session}></bench-notice>
        <div class="readings">
          <bench-readout .session=${this.session}></bench-readout>
          <bench-result .session=${this.session}></bench-result>
        </div>
        <bench-column
          .session=${this.session}
          .lengthM=${isPractice ? this.practice.column.lengthM : this.drawnLengthM}
          .forkAtMouth=${isPractice ? this.practice.column.forkIsAtMouth : true}
          @slide=${this.onSlide}
        ></bench-column>
        ${
          isPractice
            ? html`<bench-practice-desk
                .session=${this.session}
                .practice=${this.practice}
              ></bench-practice-desk>`
            : nothing
        }
        ${this.viewContent()}
      </main>
      <bench-keys></bench-keys>
    `;
  }

  private header() {
    return html`<header>
      <h1>Air Column Bench</h1>
      <nav aria-label="Views">
        ${VIEWS.map(
          (view) =>
            html`<a href="#${view.id}" aria-current=${view.id === this.view ? 'page' : 'false'}
              >${view.name}</a
            >`,
        )}
      </nav>
      <span class="saved" role="status">${this.savedWords()}</span>
      <button @click=${() => this.run('keys')}>Keys</button>
      <label class="unseen" for="theme">Light or dark</label>
      <select id="theme" @change=${this.onTheme}>
        ${(['system', 'light', 'dark'] as const).map(
          (choice) => html`<option value=${choice} ?selected=${choice === themeChoice()}>${choice}</option>`,
        )}
      </select>
    </header>`;
  }

  private savedWords(): string {
    const { saveState } = this.session;
    if (saveState.kind === 'refused') return 'Not saved on this device!';
    return saveState.kind === 'saving' ? 'Saving…' : 'Saved here';
  }

  private viewContent() {
    switch (this.view) {
      case 'apparatus':
        return html`<bench-apparatus .session=${this.session}></bench-apparatus>`;
      case 'records':
        return html`<bench-files .session=${this.session}></bench-files>`;
      case 'measure':
        return html`<div class="measure">
          <bench-marks .session=${this.session}></bench-marks>
          <bench-strip .session=${this.session}></bench-strip>
        </div>`;
    }
  }
}

/** Another fork and another room for each visit. */
function practiceSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-app': BenchApp;
  }
}
