import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { keyed } from 'lit/directives/keyed.js';
import type { Mark } from '../../marks/mark.ts';
import { markNumber } from '../../notebook/markList.ts';
import type { Session } from '../../session/session.ts';
import { words } from '../../words/inUse.ts';
import type { PageEvent } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { askReading, checkReading } from './checkReading.ts';
import './addMarkElement.ts';
import '../parts/lengthField.ts';

/** The length that is typed next, over the tube and beside its end: of the mark at turn, or of a new one. */
@customElement('bench-length-slot')
export class LengthSlotElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        block-size: var(--target);
      }
      .slot {
        position: relative;
        display: flex;
        align-items: center;
        gap: var(--gap-2);
        inline-size: max-content;
        max-inline-size: 100%;
        border-radius: var(--radius);
      }
      .slot.waits {
        background: var(--tone-wash);
        outline: 2px solid var(--tone);
      }
      .number {
        font-size: var(--words);
        font-weight: 600;
        padding-inline-start: var(--gap-2);
        white-space: nowrap;
      }
      .number.new {
        color: var(--ink-soft);
        font-weight: 400;
      }
      @media (max-width: 480px) {
        .number.new {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  /** Where the tube ends in the picture, px from its left. */
  @property({ type: Number }) atPx = 0;
  /** The field goes on to another mark: that it leaves the page is no hand leaving it. */
  private isGoingOn = false;
  protected readonly watch = new SessionWatch(this, ['notebook']);

  /** Puts the keyboard here. */
  async focusLength(): Promise<void> {
    await this.updateComplete;
    const field = this.renderRoot.querySelector('bench-length-field');
    if (field === null) await this.renderRoot.querySelector('bench-add-mark')?.focusLength();
    else await field.focusEntry();
  }

  private onLength(mark: Mark, event: PageEvent<'length-change'>): void {
    this.session.typeLength(mark.id, event.detail ?? { lengthM: null, otherLengthM: null });
  }

  private async goOn(change: () => void): Promise<void> {
    this.isGoingOn = true;
    change();
    await this.focusLength();
    this.isGoingOn = false;
  }

  private onLeave(event: FocusEvent): void {
    const goesTo = event.relatedTarget;
    const stays = goesTo instanceof Node && this.renderRoot.contains(goesTo);
    if (!stays && !this.isGoingOn) this.session.turn.release();
  }

  override render() {
    const { mark } = this.session.turn;
    return html`<div
      class="slot ${mark === null ? '' : 'waits'}"
      .style=${`left:clamp(0px, ${this.atPx - 40}px, calc(100% - 21rem))`}
      @focusin=${() => this.session.turn.hold()}
      @focusout=${this.onLeave}
    >
      ${keyed(mark?.id, mark === null ? this.newMark() : this.waiting(mark))}
    </div>`;
  }

  private newMark() {
    return html`<span class="number new" aria-hidden="true">${words.marks.newMark}</span
      ><bench-add-mark afloat .session=${this.session}></bench-add-mark>`;
  }

  private waiting(mark: Mark) {
    const { experiment } = this.session;
    const number = markNumber(experiment, mark.id);
    return html`<span class="number" aria-hidden="true">${words.markRow.mark(number)}</span>
      <bench-length-field
        afloat
        label=${words.markRow.length(number)}
        .draft=${fieldDraft(this.session, `length ${mark.id}`)}
        .lengthM=${mark.lengthM}
        .otherLengthM=${mark.otherLengthM}
        .check=${(readingM: number) => checkReading(this.session, readingM)}
        .question=${(readingM: number) => askReading(this.session, readingM)}
        .typedAs=${fieldDraft(this.session, `typed ${mark.id}`)}
        @length-change=${(event: PageEvent<'length-change'>) => this.onLength(mark, event)}
        @length-done=${() => this.goOn(() => this.session.turn.goOn(mark.id))}
      ></bench-length-field>
      <button
        class="quiet"
        aria-label=${words.markRow.deleteNamed(number)}
        @click=${() => this.goOn(() => this.session.deleteMark(mark.id))}
      >
        ✕
      </button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-length-slot': LengthSlotElement;
  }
}
