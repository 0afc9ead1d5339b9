import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Mark } from '../../marks/mark.ts';
import { isSameSetup, marksOfSetup } from '../../notebook/markList.ts';
import type { Setup } from '../../notebook/markList.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import type { Session } from '../../session/session.ts';
import { words } from '../../words/inUse.ts';
import { stampedForkWords } from '../../words/page/stage.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { choice } from '../parts/choice.ts';
import { send } from '../parts/events.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** What stands for no fork in the list of forks: it leads to where forks are added. */
const ADD = 'add';

/**
 * What is measured now: fork, ends of the column, place. New marks belong to it. Who finds that it was wrong can repair
 * the marks made so far with it, here as well as at each mark.
 * @fires fork-add  to go to where forks are added
 */
@customElement('bench-now')
export class NowElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      fieldset {
        display: flex;
        flex-wrap: wrap;
        gap: var(--gap-2) var(--gap-3);
        align-items: end;
      }
      @media (max-width: 480px) {
        fieldset {
          display: grid;
          grid-template-columns: minmax(6.5rem, 2fr) minmax(0, 5fr);
          gap: var(--gap-2);
        }
        label:nth-of-type(3) {
          grid-column: 1 / -1;
        }
        select {
          padding-left: var(--gap-2);
          inline-size: 100%;
        }
      }
      fieldset + button {
        margin-block-start: var(--gap-1);
      }
      label {
        min-inline-size: 0;
        display: grid;
        font-size: var(--text-small);
        color: var(--ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  /** What was in use until it was changed here. */
  private wasInUse: Setup | null = null;
  protected readonly watch = new SessionWatch(this, ['notebook']);

  private onChoose(to: Partial<Setup>): void {
    const { present } = this.session.experiment;
    this.wasInUse = present;
    this.session.setPresent(to);
  }

  private onFork(forkId: string): void {
    if (forkId === ADD) send(this, 'fork-add');
    else this.onChoose({ forkId });
  }

  private onRepair(marks: readonly Mark[]): void {
    const { forkId, placeId, ends } = this.session.experiment.present;
    this.wasInUse = null;
    this.session.changeSetup(
      marks.map(({ id }) => id),
      { forkId, placeId, ends },
    );
  }

  override render() {
    const { forks, places } = this.session.experiment;
    return html`
      <fieldset>
        <legend class="unseen">${words.now.legend}</legend>
        <label
          >${words.now.fork}
          ${choice({
            options: [
              ...forks.map(({ id, nominalHz }) => ({ value: id, name: stampedForkWords(nominalHz) })),
              { value: ADD, name: words.now.addFork },
            ],
            now: () => this.session.experiment.present.forkId,
            choose: (forkId) => this.onFork(forkId),
          })}</label
        >
        <label
          >${words.now.column}
          ${choice({
            options: [
              { value: 'closed', name: words.endsLong.closed },
              { value: 'open', name: words.endsLong.open },
            ],
            now: () => this.session.experiment.present.ends,
            choose: (ends) => this.onChoose({ ends: ends === 'open' ? 'open' : 'closed' }),
          })}</label
        >
        ${places.length < 2 ? nothing : this.placeChoice()}
      </fieldset>
      ${this.repair()}
    `;
  }

  /** Marks made until the last change here: it may have been a mistake that is put right now. */
  private repair() {
    const { experiment } = this.session;
    const before = this.wasInUse;
    if (before === null || isSameSetup(before, experiment.present)) return nothing;
    const marks = marksOfSetup(experiment, before);
    // Where something was measured with both, both are meant.
    if (marks.length === 0 || marksOfSetup(experiment, experiment.present).length > 0) return nothing;
    return html`<button @click=${() => this.onRepair(marks)}>${words.now.alsoChange(marks.length)}</button>`;
  }

  private placeChoice() {
    const { experiment } = this.session;
    const labels = placeLabels(experiment);
    return html`<label
      >${words.now.place}
      ${choice({
        options: experiment.places.map(({ id }) => ({ value: id, name: labels.get(id) ?? '' })),
        now: () => this.session.experiment.present.placeId,
        choose: (placeId) => this.onChoose({ placeId }),
      })}</label
    >`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-now': NowElement;
  }
}
