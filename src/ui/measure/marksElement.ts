import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Mark } from '../../marks/mark.ts';
import { markIndex, nextWaitingMark, ownMarks, waitingMarks } from '../../notebook/markList.ts';
import type { Session } from '../../session/session.ts';
import { deletedMarkWords } from '../../words/marks.ts';
import { stepWords } from '../../words/steps.ts';
import { words } from '../../words/inUse.ts';
import { laterTexts } from '../languageChoice.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { send } from '../parts/events.ts';
import type { PageEvent } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { pageOf, pageStart } from '../parts/pageOf.ts';
import { sharedStyles } from '../sharedStyles.ts';
import type { MarkRowElement } from './markRowElement.ts';
import { highestOrderOf } from './offeredOrders.ts';
import './markRowElement.ts';
import './addMarkElement.ts';

/** Marks on a page: with many more rows each key would take a moment. */
const PAGE = 50;
/** So often the marks grow older. */
const AGE_STEP_MS = 10_000;

/**
 * Marks, newest first: those that wait for a length, then the others; the deleted ones below.
 * @fires lengths-show  to go to the length that is typed over the tube
 */
@customElement('bench-marks')
export class MarksElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      ol {
        list-style: none;
        display: grid;
        gap: var(--gap-2);
      }
      .head {
        display: flex;
        flex-wrap: wrap;
        justify-content: space-between;
        align-items: center;
        gap: var(--gap-2);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private showDeleted = false;
  /** Where the marks that are shown begin in the list of all. */
  @state() private from = 0;
  @state() private deletedFrom = 0;
  /** The mark of which is shown what can be done with it. */
  @state() private chosen: string | null = null;
  @state() private nowMs = Date.now();
  private clock = 0;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  override connectedCallback(): void {
    super.connectedCallback();
    this.clock = window.setInterval(() => (this.nowMs = Date.now()), AGE_STEP_MS);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    clearInterval(this.clock);
  }

  /** Puts the keyboard into a mark's length; it is turned to where it isn't shown. */
  private async focusRow(id: string): Promise<void> {
    const listed = this.listed();
    const at = listed.findIndex((mark) => mark.id === id);
    if (at >= 0) this.from = pageStart(listed.length, at, PAGE);
    await this.updateComplete;
    await this.rowOf(id)?.focusLength();
  }

  /** All marks in the order in which they are shown. */
  private listed(): readonly Mark[] {
    const { experiment } = this.session;
    const waiting = waitingMarks(experiment);
    const waits = new Set(waiting);
    const others = ownMarks(experiment.marks).filter((mark) => !waits.has(mark));
    return [...waiting, ...others.reverse()];
  }

  private onChoose(event: PageEvent<'mark-choose'>): void {
    this.chosen = event.detail;
  }

  /** A deleted mark takes the keyboard's place along: the next one has it then, else the list's heading. */
  private async onDelete(id: string): Promise<void> {
    const listed = this.listed();
    const at = listed.findIndex((mark) => mark.id === id);
    this.session.deleteMark(id);
    const next = listed[at + 1] ?? listed[at - 1];
    await this.updateComplete;
    if (next !== undefined) await this.rowOf(next.id)?.focusChoose();
    else this.renderRoot.querySelector('h2')?.focus();
  }

  private onPage(event: PageEvent<'page-change'>): void {
    this.from = event.detail;
  }

  private rowOf(id: string): MarkRowElement | null {
    return this.renderRoot.querySelector<MarkRowElement>(`bench-mark-row[data-id="${CSS.escape(id)}"]`);
  }

  private onDone(mark: Mark): void {
    const next = nextWaitingMark(this.session.experiment, mark.id);
    if (next === null || next.id === this.session.turn.mark?.id) send(this, 'lengths-show');
    else void this.focusRow(next.id);
  }

  /** What goes through a long list comes with the first one. */
  override willUpdate(): void {
    const { marks, deletedMarks } = this.session.experiment;
    if (Math.max(marks.length, deletedMarks.length) > PAGE)
      void laterTexts().then(() => import('../parts/pagesElement.ts'));
  }

  override render() {
    const { experiment, outcomeIfAny: outcome, undoName, redoName } = this.session;
    const waiting = waitingMarks(experiment);
    const listed = this.listed();
    const index = markIndex(experiment);
    const atTurn = this.session.turn.mark?.id;
    const highestOrder = highestOrderOf(experiment.marks, outcome);
    return html`
      <section class="stack" aria-label=${words.marks.heading}>
        <div class="head">
          <h2 tabindex="-1">${words.marks.heading}</h2>
          <div class="row">
            <button ?disabled=${undoName === null} @click=${() => this.session.undo()}>
              ${words.marks.undo(undoName === null ? null : stepWords(undoName))}
            </button>
            <button ?disabled=${redoName === null} @click=${() => this.session.redo()}>
              ${words.marks.redo}
            </button>
          </div>
        </div>
        ${
          this.session.turn.mark === null
            ? nothing
            : html`<bench-add-mark .session=${this.session}></bench-add-mark>`
        }
        ${waiting.length > 0 ? html`<p class="lead">${words.marks.waiting(waiting.length)}</p>` : nothing}
        <ol>
          ${repeat(
            pageOf(listed, this.from, PAGE),
            (mark) => mark.id,
            (mark) =>
              html`<li>
                <bench-mark-row
                  data-id=${mark.id}
                  .session=${this.session}
                  .mark=${mark}
                  .index=${index}
                  .outcome=${outcome}
                  .highestOrder=${highestOrder}
                  .nowMs=${this.nowMs}
                  ?isChosen=${mark.id === this.chosen}
                  ?isAtTurn=${mark.id === atTurn}
                  @mark-choose=${this.onChoose}
                  @mark-delete=${() => this.onDelete(mark.id)}
                  @length-done=${() => this.onDone(mark)}
                ></bench-mark-row>
              </li>`,
          )}
        </ol>
        <bench-pages
          list="marks"
          .total=${listed.length}
          .from=${this.from}
          .size=${PAGE}
          @page-change=${this.onPage}
        ></bench-pages>
        ${experiment.marks.length === 0 ? html`<p class="lead">${words.marks.none}</p>` : nothing}
        ${this.deletedList()}
      </section>
    `;
  }

  private deletedList() {
    const deletedMarks = ownMarks(this.session.experiment.deletedMarks);
    if (deletedMarks.length === 0) return nothing;
    return html`
      <details ?open=${this.showDeleted} @toggle=${this.onToggle}>
        <summary>${words.marks.deleted(deletedMarks.length)}</summary>
        <ul class="stack">
          ${pageOf(deletedMarks, this.deletedFrom, PAGE).map((mark) => this.deletedRow(mark))}
        </ul>
        <bench-pages
          list="deletedMarks"
          .total=${deletedMarks.length}
          .from=${this.deletedFrom}
          .size=${PAGE}
          @page-change=${(event: PageEvent<'page-change'>) => (this.deletedFrom = event.detail)}
        ></bench-pages>
      </details>
    `;
  }

  private deletedRow(mark: Mark) {
    const said = deletedMarkWords(mark);
    return html`<li class="row">
      <span>${said.mark}</span>
      <button aria-label=${said.bringBack} @click=${() => this.session.restoreMark(mark.id)}>
        ${words.marks.bringBack}
      </button>
    </li>`;
  }

  private onToggle(event: Event): void {
    this.showDeleted = (event.target as HTMLDetailsElement).open;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-marks': MarksElement;
  }
}
