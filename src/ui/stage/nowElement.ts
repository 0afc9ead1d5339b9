import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { fixed } from '../../words/numbers.ts';
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
      label {
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
        <legend class="unseen">Measured now</legend>
        <label
          >Fork
          ${choice({
            options: forks.map(({ id, nominalHz }) => ({
              value: id,
              name: `${fixed(nominalHz, nominalHz % 1 === 0 ? 0 : 1)} Hz`,
            })),
            now: () => this.session.experiment.present.forkId,
            choose: (forkId) => this.session.setPresent({ forkId }),
          })}</label
        >
        <label
          >Column
          ${choice({
            options: [
              { value: 'closed', name: 'closed at one end' },
              { value: 'open', name: 'open at both ends' },
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
      >Place
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
