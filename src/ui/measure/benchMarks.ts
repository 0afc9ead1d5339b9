import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import type { Mark } from '../../marks/mark.ts';
import { markNumber, nextWaitingMark, ownMarks, waitingMarks } from '../../marks/markList.ts';
import { fixed } from '../../report/rounding.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';
import type { BenchMarkRow } from './benchMarkRow.ts';
import './benchMarkRow.ts';
import './benchAddMark.ts';

/** Marks, newest first: those that wait for a length, then the others; the deleted ones below. */
@customElement('bench-marks')
export class BenchMarks extends LitElement {
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

  @property({ attribute: false }) session!: BenchSession;
  @state() private showDeleted = false;
  protected readonly watch = new BenchWatch(this, ['notebook']);

  /** Puts the keyboard into the newest mark that waits for its length. */
  focusWaiting(): void {
    const newest = waitingMarks(this.session.experiment).at(0);
    if (newest !== undefined) this.rowOf(newest.id)?.focusLength();
  }

  private rowOf(id: string): BenchMarkRow | null {
    return this.renderRoot.querySelector<BenchMarkRow>(`bench-mark-row[data-id="${CSS.escape(id)}"]`);
  }

  private onDone(mark: Mark): void {
    const next = nextWaitingMark(this.session.experiment, mark.id);
    if (next === null) this.renderRoot.querySelector('bench-add-mark')?.focusLength();
    else this.rowOf(next.id)?.focusLength();
  }

  override render() {
    const { experiment, outcome, undoName, redoName } = this.session;
    const waiting = waitingMarks(experiment);
    const own = ownMarks(experiment.marks);
    const measured = own.filter((mark) => mark.lengthM !== null).reverse();
    return html`
      <section class="stack" aria-label="Marks">
        <div class="head">
          <h2>Marks</h2>
          <div class="row">
            <button ?disabled=${undoName === null} @click=${() => this.session.undo()}>
              Undo${undoName === null ? '' : ` ${undoName}`}
            </button>
            <button ?disabled=${redoName === null} @click=${() => this.session.redo()}>Redo</button>
          </div>
        </div>
        <bench-add-mark .session=${this.session}></bench-add-mark>
        ${
          waiting.length > 0
            ? html`<p class="lead">
                ${waiting.length} ${waiting.length === 1 ? 'mark waits' : 'marks wait'} for a length. Enter
                goes on to the next.
              </p>`
            : nothing
        }
        <ol>
          ${repeat(
            [...waiting, ...measured],
            (mark) => mark.id,
            (mark) =>
              html`<li>
                <bench-mark-row
                  data-id=${mark.id}
                  .session=${this.session}
                  .mark=${mark}
                  .number=${markNumber(experiment.marks, mark.id)}
                  .outcome=${outcome}
                  @length-done=${() => this.onDone(mark)}
                ></bench-mark-row>
              </li>`,
          )}
        </ol>
        ${
          experiment.marks.length === 0
            ? html`<p class="lead">
                No marks yet. A flagged resonance makes one; so does the key M, or a length typed above.
              </p>`
            : nothing
        }
        ${this.deletedList()}
      </section>
    `;
  }

  private deletedList() {
    const deletedMarks = ownMarks(this.session.experiment.deletedMarks);
    if (deletedMarks.length === 0) return nothing;
    return html`
      <details ?open=${this.showDeleted} @toggle=${this.onToggle}>
        <summary>Deleted marks (${deletedMarks.length})</summary>
        <ul class="stack">
          ${deletedMarks.map(
            (mark) =>
              html`<li class="row">
                <span>${lengthWords(mark)}</span>
                <button
                  aria-label="Bring back the mark ${lengthWords(mark)}"
                  @click=${() => this.session.restoreMark(mark.id)}
                >
                  Bring back
                </button>
              </li>`,
          )}
        </ul>
      </details>
    `;
  }

  private onToggle(event: Event): void {
    this.showDeleted = (event.target as HTMLDetailsElement).open;
  }
}

function lengthWords({ lengthM }: Mark): string {
  return lengthM === null ? 'without length' : `at ${fixed(lengthM * 100, 2)} cm`;
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-marks': BenchMarks;
  }
}
