import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { LONGEST } from '../../limits/longest.ts';
import type { Session } from '../../session/session.ts';
import { words } from '../../words/inUse.ts';
import { send } from '../parts/events.ts';
import { TypedEntry, fieldDraft } from '../parts/typedEntry.ts';
import type { FieldDraft } from '../parts/typedEntry.ts';
import { PartElement } from '../parts/partElement.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';

/**
 * Asks a lesson's group what it calls itself, once: files, report and the class know it by that name. Nothing waits for
 * the answer, and it can be put off.
 * @fires group-answered  when it goes while it has the focus
 */
@customElement('bench-group-name')
export class GroupNameElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      form {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: var(--gap-2);
      }
      label {
        display: flex;
        align-items: center;
        gap: var(--gap-2);
        flex: 0 1 auto;
        min-inline-size: 0;
      }
      input {
        inline-size: 11rem;
        min-inline-size: 5rem;
      }
      /* One row on a phone, too: the column is what the screen is for. */
      @media (max-width: 480px) {
        form {
          flex-wrap: nowrap;
        }
        label {
          flex: 1 1 0;
        }
        input {
          flex: 1 1 0;
        }
        button {
          flex: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  /** The experiment for which it was put off. */
  @state() private laterId: string | null = null;
  private readonly entry: TypedEntry = new TypedEntry(this);
  protected readonly watch = new SessionWatch(this, ['notebook']);

  get draft(): FieldDraft {
    return fieldDraft(this.session, 'group asked');
  }

  /** Before the question goes, so that its focus goes where the work goes on. */
  override willUpdate(): void {
    this.entry.follow();
    const hasFocus = (this.shadowRoot?.activeElement ?? null) !== null;
    if (hasFocus && !this.isAsked) send(this, 'group-answered');
  }

  private get isAsked(): boolean {
    const { id, group, lesson } = this.session.experiment;
    return lesson !== undefined && group.trim() === '' && this.laterId !== id;
  }

  private onSubmit(event: Event): void {
    event.preventDefault();
    this.take();
  }

  /** The field was left: what stands in it counts as it does in every other field. */
  private take(): void {
    const group = (this.entry.typed ?? '').trim();
    if (group === '' || !this.session.change('name group', (experiment) => ({ ...experiment, group })))
      return;
    this.entry.done();
    this.session.tell('info', words.groupName.taken(group));
  }

  private onLater(): void {
    this.entry.done();
    this.laterId = this.session.experiment.id;
  }

  override render() {
    if (!this.isAsked) return nothing;
    return html`<form @submit=${this.onSubmit}>
      <label
        >${words.groupName.ask}
        <input
          autocomplete="off"
          maxlength=${LONGEST.name}
          .value=${this.entry.typed ?? ''}
          @input=${(event: Event) => this.entry.type((event.target as HTMLInputElement).value)}
          @change=${() => this.take()}
      /></label>
      <button>${words.groupName.take}</button>
      <button type="button" class="quiet" @click=${this.onLater}>${words.groupName.later}</button>
    </form>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-group-name': GroupNameElement;
  }
}
