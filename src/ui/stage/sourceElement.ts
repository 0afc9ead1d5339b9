import { css, html, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { words } from '../../words/inUse.ts';
import { soundWords } from '../../words/page/stage.ts';
import { send } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import type { SourceKind } from './sourceKind.ts';

/** Endings for sound and for films with sound: asked for films, a phone would offer its camera. */
const RECORDING_FILES = 'audio/*,.wav,.m4a,.mp3,.ogg,.webm,.flac,.aac,.mp4,.mov';

const SOURCES: readonly SourceKind[] = ['practice', 'microphone', 'recording'];

/**
 * Where the sound comes from, and the button that begins to listen.
 * @fires source-change  detail: the kind chosen
 * @fires listen-start  to begin with the chosen source
 * @fires recording-open  detail: the file
 */
@customElement('bench-source')
export class SourceElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .line {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-2) var(--gap-4);
        align-items: center;
      }
      .choices {
        display: flex;
        border: 1px solid var(--edge);
        border-radius: var(--radius);
        background: var(--sheet);
        flex-wrap: wrap;
      }
      .choices label {
        display: flex;
        align-items: center;
        gap: var(--gap-2);
        padding: 0 var(--gap-3);
        min-block-size: var(--target);
        cursor: pointer;
      }
      @media (max-width: 480px) {
        .choices label {
          gap: var(--gap-1);
          padding: 0 0.375rem;
          font-size: var(--text-small);
        }
      }
      /* Nobody changes the source in the middle of a run: a small screen needs the room. */
      @media (max-width: 760px) {
        .running fieldset {
          display: none;
        }
        .running .listen {
          min-inline-size: 5.5rem;
        }
        .settings {
          display: none;
        }
      }
      /* In two lines beside the source rather than in one below it: nothing moves when listening begins. */
      .settings {
        flex: 1 1 9rem;
      }
      .listen {
        min-inline-size: 9rem;
        font-size: var(--text-large);
        min-height: 3rem;
      }
      .listen.on {
        background: var(--sheet);
        color: var(--ink);
        border: 3px solid var(--tone);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property() kind: SourceKind = 'practice';
  @query('input[type=file]') private file!: HTMLInputElement;
  protected readonly watch = new SessionWatch(this, ['capture']);

  /** What the key L does as well. */
  toggle(): void {
    if (this.session.hearing.isListening) this.session.hearing.stop();
    else if (this.kind === 'recording') this.file.click();
    else send(this, 'listen-start');
  }

  /** To where listening begins. */
  focusListening(): void {
    this.renderRoot.querySelector<HTMLElement>('.listen')?.focus();
  }

  private onKind(kind: SourceKind): void {
    this.session.hearing.stop();
    send(this, 'source-change', kind);
  }

  private onFile(): void {
    const file = this.file.files?.[0];
    if (file === undefined) return;
    send(this, 'recording-open', file);
    // The same file may be chosen again.
    this.file.value = '';
  }

  override render() {
    const isOn = this.session.hearing.isListening;
    const name = isOn
      ? words.source.stop
      : this.kind === 'recording'
        ? words.source.open
        : words.source.listen;
    return html`
      <div class="line ${isOn ? 'running' : ''}">
        <button class="listen ${isOn ? 'on' : 'primary'}" @click=${this.toggle}>${name}</button>
        <fieldset>
          <legend class="unseen">${words.source.legend}</legend>
          <div class="choices">
            ${SOURCES.map(
              (kind) =>
                html`<label
                  ><input
                    type="radio"
                    name="source"
                    .checked=${live(kind === this.kind)}
                    @change=${() => this.onKind(kind)}
                  />${words.source.names[kind]}</label
                >`,
            )}
          </div>
        </fieldset>
        <input
          type="file"
          accept=${RECORDING_FILES}
          aria-label=${words.source.file}
          class="unseen"
          tabindex="-1"
          @change=${this.onFile}
        />
        ${this.progress()} ${this.settings()}
      </div>
    `;
  }

  private progress() {
    const { progress } = this.session.hearing;
    if (progress === null) return nothing;
    return html`<label class="small row"
      >${words.source.progress} <progress max="1" .value=${progress}></progress
    ></label>`;
  }

  private settings() {
    const { capture } = this.session.hearing;
    if (capture.kind !== 'running' || capture.settings === null) return nothing;
    return html`<span class="small settings">${soundWords(capture.settings, capture.sampleRateHz)}</span>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-source': SourceElement;
  }
}
