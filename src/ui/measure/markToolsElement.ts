import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { LocatedBy, Mark } from '../../marks/mark.ts';
import { marksOfSetup } from '../../notebook/markList.ts';
import type { Setup } from '../../notebook/markList.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import type { Session } from '../../session/session.ts';
import { words } from '../../words/inUse.ts';
import { stampedForkWords } from '../../words/page/stage.ts';
import { choice } from '../parts/choice.ts';
import { send } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { offeredOrders } from './offeredOrders.ts';

/**
 * What can be done with the mark that was chosen: repair what it was made with, set its order, leave it out, delete it.
 * @fires mark-delete  to delete it
 */
@customElement('bench-mark-tools')
export class MarkToolsElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .row {
        gap: var(--gap-1) var(--gap-2);
      }
      button {
        padding-inline: var(--gap-2);
      }
      select {
        padding-left: var(--gap-2);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property({ attribute: false }) mark!: Mark;
  /** Of the mark in the notebook. */
  @property({ type: Number }) number = 0;
  /** The highest order that any mark of the experiment has, set or solved. */
  @property({ type: Number }) highestOrder = 0;
  /** What was repaired on this mark last, and may be wrong on others, too. */
  @state() private repaired: { readonly from: Setup; readonly to: Partial<Setup> } | null = null;

  /** The mark as the notebook has it: `mark` is handed down only with the next picture. */
  private markNow(): Mark {
    return this.session.experiment.marks.find(({ id }) => id === this.mark.id) ?? this.mark;
  }

  private onSetup(to: Partial<Setup>): void {
    const { id, forkId, placeId, ends } = this.markNow();
    this.session.changeSetup([id], to);
    this.repaired = { from: { forkId, placeId, ends }, to };
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

  override render() {
    const { number, mark } = this;
    return html`<div class="row">
      ${this.setups()}
      ${choice({
        label: words.markRow.order(number),
        options: [
          { value: '', name: words.markRow.autoOrder },
          ...offeredOrders(this.highestOrder).map((order) => ({
            value: String(order),
            name: words.markRow.ordinal(order),
          })),
        ],
        now: () => String(this.markNow().order ?? ''),
        choose: (order) => this.onOrder(order),
      })}
      ${choice({
        label: words.markRow.locatedBy(number),
        options: [
          { value: 'centre', name: words.markRow.atCentre },
          { value: 'loudest', name: words.markRow.atLoudest },
        ],
        now: () => this.markNow().locatedBy ?? 'loudest',
        choose: (locatedBy) => this.onLocatedBy(locatedBy === 'centre' ? 'centre' : 'loudest'),
      })}
      <button
        aria-pressed=${mark.excluded ? 'true' : 'false'}
        aria-label=${words.markRow.leaveOutNamed(number)}
        @click=${this.onExclude}
      >
        ${words.markRow.leaveOut}
      </button>
      <button aria-label=${words.markRow.deleteNamed(number)} @click=${() => send(this, 'mark-delete')}>
        ${words.markRow.delete}
      </button>
      ${this.others()}
    </div>`;
  }

  private setups() {
    const { number } = this;
    const { experiment } = this.session;
    const { forks, places } = experiment;
    const labels = placeLabels(experiment);
    return html`${choice({
      label: words.markRow.fork(number),
      options: forks.map(({ id, nominalHz }) => ({ value: id, name: stampedForkWords(nominalHz) })),
      now: () => this.markNow().forkId,
      choose: (forkId) => this.onSetup({ forkId }),
    })}
    ${choice({
      label: words.markRow.column(number),
      options: (['closed', 'open'] as const).map((ends) => ({ value: ends, name: words.endsLong[ends] })),
      now: () => this.markNow().ends,
      choose: (ends) => this.onSetup({ ends: ends === 'open' ? 'open' : 'closed' }),
    })}
    ${
      places.length < 2
        ? nothing
        : choice({
            label: words.markRow.place(number),
            options: places.map(({ id }) => ({ value: id, name: labels.get(id) ?? '' })),
            now: () => this.markNow().placeId,
            choose: (placeId) => this.onSetup({ placeId }),
          })
    }`;
  }

  /** A fork or column chosen by mistake is wrong on all marks that were made with it. */
  private others() {
    const { repaired } = this;
    if (repaired === null) return nothing;
    const others = marksOfSetup(this.session.experiment, repaired.from);
    if (others.length === 0) return nothing;
    const onAll = (): void => {
      this.session.changeSetup(
        others.map(({ id }) => id),
        repaired.to,
      );
      this.repaired = null;
    };
    return html`<button class="primary" @click=${onAll}>${words.markRow.alsoChange(others.length)}</button>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-mark-tools': MarkToolsElement;
  }
}
