import { LitElement, css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { fixed } from '../../words/numbers.ts';
import { placeLabels } from '../../report/marksCsv.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';

/** What is measured now: fork, ends of the column, place. New marks belong to it. */
@customElement('bench-now')
export class BenchNow extends LitElement {
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

  @property({ attribute: false }) session!: BenchSession;
  protected readonly watch = new BenchWatch(this, ['notebook']);

  private onFork(event: Event): void {
    this.session.setPresent({ forkId: (event.target as HTMLSelectElement).value });
  }

  private onEnds(event: Event): void {
    const isOpen = (event.target as HTMLSelectElement).value === 'open';
    this.session.setPresent({ ends: isOpen ? 'open' : 'closed' });
  }

  private onPlace(event: Event): void {
    this.session.setPresent({ placeId: (event.target as HTMLSelectElement).value });
  }

  override render() {
    const { experiment } = this.session;
    const { present } = experiment;
    return html`
      <fieldset>
        <legend class="unseen">Measured now</legend>
        <label
          >Fork
          <select @change=${this.onFork}>
            ${experiment.forks.map(
              (fork) =>
                html`<option value=${fork.id} ?selected=${fork.id === present.forkId}>
                  ${fixed(fork.nominalHz, fork.nominalHz % 1 === 0 ? 0 : 1)} Hz
                </option>`,
            )}
          </select></label
        >
        <label
          >Column
          <select @change=${this.onEnds}>
            <option value="closed" ?selected=${present.ends === 'closed'}>closed at one end</option>
            <option value="open" ?selected=${present.ends === 'open'}>open at both ends</option>
          </select></label
        >
        ${experiment.places.length < 2 ? nothing : this.placeChoice()}
      </fieldset>
    `;
  }

  private placeChoice() {
    const { experiment } = this.session;
    const labels = placeLabels(experiment);
    return html`<label
      >Place
      <select @change=${this.onPlace}>
        ${experiment.places.map(
          (place) =>
            html`<option value=${place.id} ?selected=${place.id === experiment.present.placeId}>
              ${labels.get(place.id) ?? ''}
            </option>`,
        )}
      </select></label
    >`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-now': BenchNow;
  }
}
