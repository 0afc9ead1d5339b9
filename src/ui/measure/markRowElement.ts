import { css, html, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import type { LocatedBy, Mark } from '../../marks/mark.ts';
import type { MarkIndex } from '../../marks/markIndex.ts';
import { joinable, likelyRepeated } from '../../notebook/markList.ts';
import { markWords } from '../../words/marks.ts';
import { markRowWords } from '../../words/page/measure.ts';
import type { Outcome } from '../../session/experiment/outcome.ts';
import type { Session } from '../../session/session.ts';
import { send } from '../parts/events.ts';
import type { PageEvent } from '../parts/events.ts';
import type { LengthField } from '../parts/lengthField.ts';
import { solvedMark } from '../stage/columnScene.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { offeredOrders } from './offeredOrders.ts';
import '../parts/lengthField.ts';
import { checkReading } from './checkReading.ts';

/** One mark: its length, order, evidence and residual, and what can be done with it. */
@customElement('bench-mark-row')
export class MarkRowElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      :host {
        container-type: inline-size;
      }
      .mark {
        display: grid;
        grid-template-columns: 1.5rem auto minmax(9rem, 1fr) auto;
        gap: var(--gap-1) var(--gap-3);
        align-items: center;
        border-inline-start: 5px solid var(--line);
        background: var(--sheet);
        padding: var(--gap-2) var(--gap-3);
        border-radius: var(--radius);
      }
      .waiting {
        border-inline-start: 5px dashed var(--tone);
      }
      .measured {
        border-inline-start-color: var(--tone);
      }
      .left-out {
        border-inline-start-color: var(--line);
        color: var(--ink-soft);
      }
      .number {
        font-weight: 600;
        text-align: end;
      }
      .words {
        font-size: var(--text-small);
      }
      .words .soft {
        color: var(--ink-soft);
      }
      .unbroken {
        white-space: nowrap;
      }
      .again {
        display: flex;
        gap: var(--gap-2);
        align-items: center;
      }
      .again button {
        min-height: 1.75rem;
        padding-inline: var(--gap-2);
      }
      .tools {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-1);
      }
      .tools button,
      .tools select {
        padding-inline: var(--gap-2);
      }
      .tools button {
        font-size: var(--text-small);
      }
      @container (max-width: 40rem) {
        .mark {
          grid-template-columns: 1.5rem auto minmax(9rem, 1fr);
        }
        .tools {
          grid-column: 2 / -1;
        }
      }
      @container (max-width: 24rem) {
        .mark {
          grid-template-columns: 1.5rem 1fr;
        }
        .words,
        .tools {
          grid-column: 2;
        }
        .tools {
          flex-wrap: wrap;
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property({ attribute: false }) mark!: Mark;
  @property({ attribute: false }) outcome!: Outcome;
  /** Of all marks of the notebook. */
  @property({ attribute: false }) index!: MarkIndex;
  /** The highest order that any mark of the experiment has, set or solved. */
  @property({ type: Number }) highestOrder = 0;
  /** Its length is typed over the tube. */
  @property({ type: Boolean }) isAtTurn = false;
  @query('bench-length-field') private field!: LengthField;

  /** Its number in the notebook, from 1. */
  private get number(): number {
    return this.index.numberOf(this.mark.id);
  }

  /** Puts the keyboard into the length, as soon as it is there: a row may just have been turned to. */
  async focusLength(): Promise<void> {
    await this.updateComplete;
    await this.field.focusEntry();
  }

  private readonly checkReading = (readingM: number): string | null => checkReading(this.session, readingM);

  private onLength(event: PageEvent<'length-change'>): void {
    const reading = event.detail ?? { lengthM: null, otherLengthM: null };
    this.session.typeLength(this.mark.id, reading);
  }

  private onSame(mark: Mark): void {
    this.session.editMark(this.mark.id, { repeatOf: mark.id }, 'join marks');
  }

  private onSameId(id: string): void {
    const other = this.index.find(id);
    if (other !== null) this.onSame(other);
  }

  private onSeparate(repeat: Mark): void {
    this.session.editMark(repeat.id, { repeatOf: null }, 'separate marks');
  }

  private onOrder(value: string): void {
    this.session.editMark(this.mark.id, { order: value === '' ? null : Number(value) }, 'set order');
  }

  private onLocatedBy(locatedBy: LocatedBy): void {
    this.session.editMark(this.mark.id, { locatedBy }, 'set place');
  }

  private onExclude(): void {
    const { id, excluded } = this.mark;
    this.session.editMark(id, { excluded: !excluded }, excluded ? 'include mark' : 'exclude mark');
  }

  /** The mark as the notebook has it: `mark` is handed down only with the next picture. */
  private markNow(): Mark | undefined {
    return this.session.experiment.marks.find(({ id }) => id === this.mark.id);
  }

  override render() {
    const { mark } = this;
    const words = markWords(this.session.experiment, mark, solvedMark(this.outcome, mark));
    const state = mark.excluded ? 'left-out' : mark.lengthM === null ? 'waiting' : 'measured';
    return html`
      <div class="mark ${state}" role="group" aria-label=${markRowWords.mark(this.number)}>
        <span class="number" aria-hidden="true">${this.number}</span>
        ${this.length()}
        <div class="words">
          <p>
            <strong
              >${words.order ?? (mark.lengthM === null ? markRowWords.waits : markRowWords.notSolved)}</strong
            >
            ${words.residual === null ? nothing : html` · ${words.residual}`}
            ${mark.excluded ? html` · <strong>${markRowWords.leftOut}</strong>` : nothing}
          </p>
          <p class="soft">${unbroken(`${words.apparatus} · ${words.evidence}`)}</p>
          ${words.doubt === null ? nothing : html`<p class="fault">${words.doubt}</p>`}
          ${words.bracket === null ? nothing : html`<p class="soft">${words.bracket}</p>`} ${this.sameAs()}
          ${this.repeats()}
          ${words.cause === null ? nothing : html`<p class="fault">${markRowWords.outlier(words.cause)}</p>`}
        </div>
        <div class="tools">
          ${choice({
            label: markRowWords.order(this.number),
            options: [
              { value: '', name: markRowWords.autoOrder },
              ...offeredOrders(this.highestOrder).map((order) => ({
                value: String(order),
                name: markRowWords.ordinal(order),
              })),
            ],
            now: () => String(this.markNow()?.order ?? ''),
            choose: (order) => this.onOrder(order),
          })}
          ${choice({
            label: markRowWords.locatedBy(this.number),
            options: [
              { value: 'centre', name: markRowWords.atCentre },
              { value: 'loudest', name: markRowWords.atLoudest },
            ],
            now: () => this.markNow()?.locatedBy ?? 'loudest',
            choose: (locatedBy) => this.onLocatedBy(locatedBy === 'centre' ? 'centre' : 'loudest'),
          })}
          <button
            aria-pressed=${mark.excluded ? 'true' : 'false'}
            aria-label=${markRowWords.leaveOutNamed(this.number)}
            @click=${this.onExclude}
          >
            ${markRowWords.leaveOut}
          </button>
          <button
            aria-label=${markRowWords.deleteNamed(this.number)}
            @click=${() => this.session.deleteMark(mark.id)}
          >
            ${markRowWords.delete}
          </button>
        </div>
      </div>
    `;
  }

  private length() {
    const { mark } = this;
    if (this.isAtTurn)
      return html`<button class="quiet" @click=${() => send(this, 'lengths-show')}>
        ${markRowWords.overTube}
      </button>`;
    return html`<bench-length-field
      label=${markRowWords.length(this.number)}
      .draft=${fieldDraft(this.session, `length ${mark.id}`)}
      .lengthM=${mark.lengthM}
      .otherLengthM=${mark.otherLengthM}
      .check=${this.checkReading}
      @length-change=${this.onLength}
    ></bench-length-field>`;
  }

  /** Passes of this resonance that were flagged again; each can be made a mark of its own. */
  private repeats() {
    return this.index.repeatsOf(this.mark).map(
      (repeat) =>
        html`<p class="soft again">
          ${markRowWords.again(markWords(this.session.experiment, repeat, null).evidence)}
          <button
            aria-label=${markRowWords.separateNamed(this.number)}
            @click=${() => this.onSeparate(repeat)}
          >
            ${markRowWords.separate}
          </button>
        </p>`,
    );
  }

  /** Joins a waiting mark: with the one before it by a button, with any other by a choice. */
  private sameAs() {
    if (this.mark.lengthM !== null) return nothing;
    const likely = likelyRepeated(this.session.experiment.marks, this.mark, this.index);
    const others = joinable(this.index, this.mark).filter(({ id }) => id !== likely?.id);
    return html`${likely === null ? nothing : this.sameButton(likely)}
    ${
      others.length === 0
        ? nothing
        : choice({
            label: markRowWords.sameAsNamed(this.number),
            options: [
              { value: '', name: markRowWords.sameAsOther },
              ...others.map((other) => ({
                value: other.id,
                name: markRowWords.same(this.index.numberOf(other.id)),
              })),
            ],
            now: () => '',
            choose: (id) => this.onSameId(id),
          })
    }`;
  }

  private sameButton(other: Mark) {
    const number = this.index.numberOf(other.id);
    return html`<button
      aria-label=${markRowWords.sameNamed(this.number, number)}
      @click=${() => this.onSame(other)}
    >
      ${markRowWords.same(number)}
    </button>`;
  }
}

/** Lines break between the parts only: a number stays with its unit. */
function unbroken(words: string) {
  return words
    .split(' · ')
    .map((part, index) => html`${index === 0 ? '' : ' · '}<span class="unbroken">${part}</span>`);
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-mark-row': MarkRowElement;
  }
}
