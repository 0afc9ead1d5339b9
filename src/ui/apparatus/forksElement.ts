import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { stampStandardUncertaintyHz } from '../../marks/usualUncertainties.ts';
import { newFork } from '../../notebook/newExperiment.ts';
import type { Fork } from '../../notebook/experiment.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { PageEvent } from '../parts/events.ts';
import { pageOf, pageStart } from '../parts/pagesElement.ts';
import { QUANTITIES } from '../readQuantity.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/numberField.ts';

/** The usual physics set (common practice, no source). */
const USUAL_SET_HZ = [256, 288, 320, 341.3, 384, 426.6, 480, 512, 1024];

/** Forks on a page. */
const PAGE = 25;

/** The forks at hand, with how well each pitch is known. */
@customElement('bench-forks')
export class ForksElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      li {
        display: grid;
        grid-template-columns: 1fr 1fr auto;
        gap: var(--gap-2);
        align-items: end;
        list-style: none;
      }
      .measured {
        grid-column: 1 / -1;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  /** Where the forks that are shown begin. */
  @state() private from = 0;
  protected readonly watch = new SessionWatch(this, ['notebook']);

  /** Puts the keyboard on the choice that adds a fork. */
  async focusAdd(): Promise<void> {
    await this.updateComplete;
    this.renderRoot.querySelector('select')?.focus();
  }

  private setFork(id: string, change: Partial<Fork>): void {
    this.session.change('change fork', (experiment) => ({
      ...experiment,
      forks: experiment.forks.map((fork) => (fork.id === id ? { ...fork, ...change } : fork)),
    }));
  }

  private onPitch(fork: Fork, nominalHz: number): void {
    const wasDefault = fork.standardUncertaintyHz === stampStandardUncertaintyHz(fork.nominalHz);
    this.setFork(fork.id, {
      nominalHz,
      measuredHz: null,
      measuredStandardUncertaintyHz: null,
      ...(wasDefault ? { standardUncertaintyHz: stampStandardUncertaintyHz(nominalHz) } : {}),
    });
  }

  private onAdd(chosen: string): void {
    const nominalHz = Number(chosen);
    if (!(nominalHz > 0)) return;
    const id = this.session.newId();
    this.session.change('add fork', (experiment) => ({
      ...experiment,
      forks: [...experiment.forks, newFork(id, nominalHz)],
      present: { ...experiment.present, forkId: id },
    }));
    this.from = this.session.experiment.forks.length - 1;
  }

  private onRemove(fork: Fork): void {
    this.session.change('remove fork', (experiment) => {
      const forks = experiment.forks.filter((other) => other.id !== fork.id);
      const first = forks.at(0);
      if (first === undefined) return experiment;
      const forkId = experiment.present.forkId === fork.id ? first.id : experiment.present.forkId;
      return { ...experiment, forks, present: { ...experiment.present, forkId } };
    });
  }

  override render() {
    const { experiment } = this.session;
    const { forks } = experiment;
    const used = new Set([...experiment.marks, ...experiment.deletedMarks].map((mark) => mark.forkId));
    const begin = pageStart(forks.length, this.from, PAGE);
    return html`
      <section class="stack" aria-label=${laterWords.forks.heading}>
        <h2>${laterWords.forks.heading}</h2>
        <p class="lead">${laterWords.forks.lead}</p>
        <ul class="stack">
          ${pageOf(forks, begin, PAGE).map((fork, onPage) => {
            const number = begin + onPage + 1;
            const isUsed = used.has(fork.id);
            return html`<li>
              <bench-number-field
                label=${laterWords.forks.pitch(number)}
                .kind=${QUANTITIES.forkHz}
                .draft=${fieldDraft(this.session, `fork ${fork.id} pitch`)}
                .value=${fork.nominalHz}
                @quantity-change=${(event: PageEvent<'quantity-change'>) => this.onPitch(fork, event.detail)}
              ></bench-number-field>
              <bench-number-field
                label=${laterWords.forks.uncertainty(number)}
                .kind=${QUANTITIES.uncertaintyHz}
                .draft=${fieldDraft(this.session, `fork ${fork.id} uncertainty`)}
                .value=${fork.standardUncertaintyHz}
                @quantity-change=${(event: PageEvent<'quantity-change'>) =>
                  this.setFork(fork.id, { standardUncertaintyHz: event.detail })}
              ></bench-number-field>
              <button
                aria-label=${laterWords.forks.removeNamed(number)}
                ?disabled=${isUsed || forks.length === 1}
                @click=${() => this.onRemove(fork)}
              >
                ${laterWords.forks.remove}
              </button>
              ${this.measuredLine(fork)}
            </li>`;
          })}
        </ul>
        <bench-pages
          list="forks"
          .total=${forks.length}
          .from=${begin}
          .size=${PAGE}
          @page-change=${(event: PageEvent<'page-change'>) => (this.from = event.detail)}
        ></bench-pages>
        <label
          >${laterWords.forks.add}
          ${choice({
            options: [
              { value: '', name: laterWords.forks.choose },
              ...USUAL_SET_HZ.map((pitch) => ({
                value: String(pitch),
                name: laterWords.forks.offered(pitch),
              })),
            ],
            // It adds, and is ready for the next.
            now: () => '',
            choose: (pitch) => this.onAdd(pitch),
          })}</label
        >
        <p class="small">${laterWords.forks.others}</p>
        <p class="caution">${laterWords.forks.caution}</p>
      </section>
    `;
  }

  private measuredLine(fork: Fork) {
    if (fork.measuredHz === null) return html`<p class="small measured">${laterWords.forks.notMeasured}</p>`;
    return html`<p class="small measured row">
      <span>${laterWords.forks.measured(fork.measuredHz, fork.measuredStandardUncertaintyHz ?? 0)}</span>
      <button
        @click=${() => this.setFork(fork.id, { measuredHz: null, measuredStandardUncertaintyHz: null })}
      >
        ${laterWords.forks.useStamp}
      </button>
    </p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-forks': ForksElement;
  }
}
