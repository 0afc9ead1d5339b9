import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { nowWords } from '../../words/page/stage.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** What is measured now: fork, ends of the column, place. New marks belong to it. */
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
          flex-wrap: nowrap;
          gap: var(--gap-2);
        }
        select {
          padding-inline: var(--gap-2);
        }
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
  protected readonly watch = new SessionWatch(this, ['notebook']);

  override render() {
    const { forks, places } = this.session.experiment;
    return html`
      <fieldset>
        <legend class="unseen">${nowWords.legend}</legend>
        <label
          >${nowWords.fork}
          ${choice({
            options: forks.map(({ id, nominalHz }) => ({
              value: id,
              name: nowWords.pitch(nominalHz),
            })),
            now: () => this.session.experiment.present.forkId,
            choose: (forkId) => this.session.setPresent({ forkId }),
          })}</label
        >
        <label
          >${nowWords.column}
          ${choice({
            options: [
              { value: 'closed', name: nowWords.ends.closed },
              { value: 'open', name: nowWords.ends.open },
            ],
            now: () => this.session.experiment.present.ends,
            choose: (ends) => this.session.setPresent({ ends: ends === 'open' ? 'open' : 'closed' }),
          })}</label
        >
        ${places.length < 2 ? nothing : this.placeChoice()}
      </fieldset>
    `;
  }

  private placeChoice() {
    const { experiment } = this.session;
    const labels = placeLabels(experiment);
    return html`<label
      >${nowWords.place}
      ${choice({
        options: experiment.places.map(({ id }) => ({ value: id, name: labels.get(id) ?? '' })),
        now: () => this.session.experiment.present.placeId,
        choose: (placeId) => this.session.setPresent({ placeId }),
      })}</label
    >`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-now': NowElement;
  }
}
