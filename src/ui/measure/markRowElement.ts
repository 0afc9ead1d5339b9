import { css, html, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import type { Mark } from '../../marks/mark.ts';
import type { MarkIndex } from '../../marks/markIndex.ts';
import { isUnsure } from '../../marks/unsureMark.ts';
import { joinable, likelyRepeated } from '../../notebook/markList.ts';
import { words } from '../../words/inUse.ts';
import { markWords, unsureWords } from '../../words/marks.ts';
import { ageWords } from '../../words/times.ts';
import type { Outcome } from '../../session/experiment/outcome.ts';
import type { Session } from '../../session/session.ts';
import { send } from '../parts/events.ts';
import type { PageEvent } from '../parts/events.ts';
import type { LengthField } from '../parts/lengthField.ts';
import { solvedMark, untestedBy } from '../stage/columnScene.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { passOf } from './passOf.ts';
import '../parts/lengthField.ts';
import { askReading, checkReading } from './checkReading.ts';

/**
 * One mark: its length, order, evidence and residual; once it is chosen, what can be done with it.
 * @fires mark-choose  detail: its id, or null to let it go
 * @fires lengths-show  to go to the length that is typed over the tube
 */
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
      .unsure {
        border-inline-start: 4px solid var(--caution);
        background: var(--caution-wash);
        padding-inline: var(--gap-2);
      }
      bench-mark-tools {
        grid-column: 2 / -1;
      }
      @container (max-width: 24rem) {
        .mark {
          grid-template-columns: 1.5rem 1fr auto;
        }
        .words {
          grid-column: 2 / -1;
          grid-row: 2;
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
  /** The clock, ms since 1970. */
  @property({ type: Number }) nowMs = 0;
  /** What can be done with it is shown. */
  @property({ type: Boolean }) isChosen = false;
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

  /** Puts the keyboard on what chooses the mark. */
  async focusChoose(): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector<HTMLElement>('[aria-expanded]')?.focus();
  }

  private readonly checkReading = (readingM: number): string | null => checkReading(this.session, readingM);

  private readonly askReading = (readingM: number): string | null => askReading(this.session, readingM);

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

  private onChoose(): void {
    send(this, 'mark-choose', this.isChosen ? null : this.mark.id);
  }

  /** What changes a mark comes with the first one that is chosen. */
  override willUpdate(): void {
    if (this.isChosen) void import('./markToolsElement.ts');
  }

  override render() {
    const { mark } = this;
    const said = markWords(this.session.experiment, mark, solvedMark(this.outcome, mark));
    const untested = untestedBy(this.outcome, mark);
    const residual =
      said.residual === null || untested === 0 ? said.residual : words.markRow.untested(untested);
    const state = mark.excluded ? 'left-out' : mark.lengthM === null ? 'waiting' : 'measured';
    return html`
      <div class="mark ${state}" role="group" aria-label=${words.markRow.mark(this.number)}>
        <span class="number" aria-hidden="true">${this.number}${isUnsure(mark) ? '?' : ''}</span>
        ${this.length()}
        <div class="words">
          <p>
            <strong
              >${said.order ?? (mark.lengthM === null ? words.markRow.waits : words.markRow.notSolved)}</strong
            >
            ${residual === null ? nothing : html` · ${residual}`}
            ${mark.excluded ? html` · <strong>${words.markRow.leftOut}</strong>` : nothing}
          </p>
          <p class="soft">${unbroken([said.apparatus, ...this.heard(mark), said.evidence].join(' · '))}</p>
          ${isUnsure(mark) ? html`<p class="unsure">${unsureWords(mark)}</p>` : nothing}
          ${said.doubt === null ? nothing : html`<p class="fault">${said.doubt}</p>`}
          ${said.bracket === null ? nothing : html`<p class="soft">${said.bracket}</p>`} ${this.sameAs()}
          ${this.repeats()}
          ${said.cause === null ? nothing : html`<p class="fault">${words.markRow.outlier(said.cause)}</p>`}
        </div>
        <button
          aria-expanded=${this.isChosen ? 'true' : 'false'}
          aria-label=${words.markRow.chooseNamed(this.number)}
          @click=${this.onChoose}
        >
          ${words.markRow.choose}
        </button>
        ${
          this.isChosen
            ? html`<bench-mark-tools
                .session=${this.session}
                .mark=${mark}
                .number=${this.number}
                .highestOrder=${this.highestOrder}
              ></bench-mark-tools>`
            : nothing
        }
      </div>
    `;
  }

  /** When, in which ringing of the fork and which pass of it: what tells two marks apart. */
  private heard({ createdAt, evidence }: Mark): readonly string[] {
    const pass = evidence === null ? null : passOf(this.session.hearing.trace, evidence.timeS);
    return [
      ...(pass === null ? [] : [words.markRow.pass(pass.strike, pass.pass)]),
      ageWords(createdAt, this.nowMs),
    ];
  }

  private length() {
    const { mark } = this;
    if (this.isAtTurn)
      return html`<button class="quiet" @click=${() => send(this, 'lengths-show')}>
        ${words.markRow.overTube}
      </button>`;
    return html`<bench-length-field
      label=${words.markRow.length(this.number)}
      .draft=${fieldDraft(this.session, `length ${mark.id}`)}
      .lengthM=${mark.lengthM}
      .otherLengthM=${mark.otherLengthM}
      .check=${this.checkReading}
      .question=${this.askReading}
      .typedAs=${fieldDraft(this.session, `typed ${mark.id}`)}
      @length-change=${this.onLength}
    ></bench-length-field>`;
  }

  /** Passes of this resonance that were flagged again; each can be made a mark of its own. */
  private repeats() {
    return this.index.repeatsOf(this.mark).map(
      (repeat) =>
        html`<p class="soft again">
          ${words.markRow.again([...this.heard(repeat), markWords(this.session.experiment, repeat, null).evidence].join(' · '))}
          <button
            aria-label=${words.markRow.separateNamed(this.number)}
            @click=${() => this.onSeparate(repeat)}
          >
            ${words.markRow.separate}
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
            label: words.markRow.sameAsNamed(this.number),
            options: [
              { value: '', name: words.markRow.sameAsOther },
              ...others.map((other) => ({
                value: other.id,
                name: words.markRow.same(this.index.numberOf(other.id)),
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
      aria-label=${words.markRow.sameNamed(this.number, number)}
      @click=${() => this.onSame(other)}
    >
      ${words.markRow.same(number)}
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
