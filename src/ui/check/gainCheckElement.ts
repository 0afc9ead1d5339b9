import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { listMicrophones, watchMicrophones } from '../../capture/listMicrophones.ts';
import type { Microphone } from '../../capture/listMicrophones.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { flagWords } from '../../words/page/capture.ts';
import { gainAnswerWords, keptGainWords, namelessMicrophone } from '../../words/page/gainCheck.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { verdictStyles } from './verdictStyles.ts';

/** Does something rewrite the level? Which microphone, what the browser says of it, and a check by ear. */
@customElement('bench-gain-check')
export class GainCheckElement extends PartElement {
  static override styles = [
    sharedStyles,
    verdictStyles,
    css`
      ol {
        padding-inline-start: 1.5rem;
      }
      a {
        color: inherit;
      }
      select {
        inline-size: 100%;
      }
      dl {
        display: grid;
        grid-template-columns: auto 1fr;
        gap: var(--gap-1) var(--gap-4);
      }
      dt {
        color: var(--ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private microphones: readonly Microphone[] = [];
  private endWatch: (() => void) | null = null;
  protected readonly watch = new SessionWatch(this, ['capture', 'notebook'], () => this.onSession());

  override connectedCallback(): void {
    super.connectedCallback();
    this.endWatch = watchMicrophones(() => void this.list());
    void this.list();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.endWatch?.();
  }

  private onSession(): void {
    // Names come with the permission.
    if (this.session.hearing.capture.kind === 'running' && this.microphones.length === 0) void this.list();
    this.requestUpdate();
  }

  private async list(): Promise<void> {
    this.microphones = await listMicrophones();
  }

  override render() {
    const { experiment } = this.session;
    const { gainCheck, capture } = this.session.hearing;
    const settings = capture.kind === 'running' ? capture.settings : null;
    const kept = experiment.gainCheck;
    return html`<section class="stack" aria-label=${laterWords.gainCheck.name}>
      <h2>${laterWords.gainCheck.heading}</h2>
      <p class="lead">${laterWords.gainCheck.lead}</p>
      ${this.choice()}
      ${
        settings === null
          ? nothing
          : html`<dl aria-label=${laterWords.gainCheck.browserSays}>
              ${flagWords(settings).map(
                ({ name, state: flag }) =>
                  html`<dt>${name}</dt>
                    <dd>${flag}</dd>`,
              )}
            </dl>`
      }
      <ol class="small">
        ${laterWords.gainCheck.steps.map((step) => html`<li>${step}</li>`)}
      </ol>
      ${gainCheck === null ? nothing : this.answer()}
      <p class="row">
        ${
          gainCheck === null
            ? html`<button
                class="primary"
                ?disabled=${settings === null}
                @click=${() => this.session.hearing.beginGainCheck()}
              >
                ${laterWords.gainCheck.begin}
              </button>`
            : html`<button @click=${() => this.session.hearing.beginGainCheck()}>
                  ${laterWords.gainCheck.again}</button
                ><button @click=${() => this.session.hearing.endGainCheck()}>
                  ${laterWords.gainCheck.end}
                </button>`
        }
        ${settings === null ? html`<span class="small">${laterWords.gainCheck.listenFirst}</span>` : nothing}
      </p>
      ${kept === undefined ? nothing : html`<p class="small">${keptGainWords(kept)}</p>`}
      <p class="small">
        <a href="#microphone">${laterWords.gainCheck.help}</a>
      </p>
    </section>`;
  }

  private answer() {
    const { gainCheck } = this.session.hearing;
    if (gainCheck === null) return nothing;
    const words = gainAnswerWords(gainCheck.answer);
    return html`<div role="status" class="stack">
      <p class="verdict"><span aria-hidden="true">${words.sign}</span> ${words.verdict}</p>
      <p>${words.detail}</p>
    </div>`;
  }

  private choice() {
    if (this.microphones.length < 2) return nothing;
    const named = this.microphones.map(({ deviceId, name }, index) => ({
      value: deviceId,
      name: name ?? namelessMicrophone(index + 1),
    }));
    return html`<label
      >${laterWords.gainCheck.microphone}
      ${choice({
        options: [{ value: '', name: laterWords.gainCheck.systemsChoice }, ...named],
        now: () => this.session.hearing.microphoneId ?? '',
        choose: (id) => this.session.hearing.chooseMicrophone(id === '' ? null : id),
      })}</label
    >`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-gain-check': GainCheckElement;
  }
}
