import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { columnFault } from '../../notebook/columnFault.ts';
import { columnFaultWords } from '../../words/columnFaults.ts';
import { readingTakenWords } from '../../words/readingTaken.ts';
import { laterWords } from '../../words/inUse.ts';
import { STOPPERS } from '../../notebook/experiment.ts';
import type { Experiment, Rule, Stopper, Tube } from '../../notebook/experiment.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { QUANTITIES } from '../readQuantity.ts';
import { choice } from '../parts/choice.ts';
import type { PageEvent } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { fieldStyles } from './fieldStyles.ts';
import '../parts/numberField.ts';
import './forksElement.ts';
import './mouthElement.ts';
import './placesElement.ts';

/** Forks, tube, rule and places. Everything can be changed at any time; the result follows. */
@customElement('bench-apparatus')
export class ApparatusElement extends PartElement {
  static override styles = [
    sharedStyles,
    fieldStyles,
    css`
      .cards {
        --card: 20rem;
      }
      /* Much is said of it. */
      .wide {
        grid-column: 1 / -1;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['notebook']);

  /** Puts the keyboard on the choice that adds a fork. */
  async focusForks(): Promise<void> {
    await this.updateComplete;
    await this.renderRoot.querySelector('bench-forks')?.focusAdd();
  }

  private setTube(change: Partial<Tube>): void {
    this.session.change('change tube', (experiment) => ({
      ...experiment,
      tube: { ...experiment.tube, ...change },
    }));
  }

  private setRule(change: Partial<Rule>): void {
    this.session.change('change rule', (experiment) => ({
      ...experiment,
      rule: { ...experiment.rule, ...change },
    }));
  }

  private onDiameter(event: PageEvent<'quantity-change'>): void {
    this.setTube({ diameterM: event.detail / 1000 });
  }

  private onNoDiameter(): void {
    this.setTube({ diameterM: null });
  }

  private onOtherDiameter(event: PageEvent<'quantity-change'>): void {
    this.setTube({ otherDiameterM: event.detail / 1000 });
  }

  private onNoOtherDiameter(): void {
    this.setTube({ otherDiameterM: null });
  }

  /** A tube that slides in another has a second width, where both ends are open. */
  private otherDiameter({ tube, present, marks }: Experiment) {
    const isOpen = present.ends === 'open' || marks.some(({ ends }) => ends === 'open');
    if (!isOpen && tube.otherDiameterM === null) return nothing;
    return html`<bench-number-field
      label=${laterWords.tube.otherDiameter}
      hint=${laterWords.tube.otherDiameterHint}
      optional
      .kind=${QUANTITIES.diameterMm}
      .draft=${fieldDraft(this.session, 'other diameter')}
      .value=${tube.otherDiameterM === null ? null : tube.otherDiameterM * 1000}
      @quantity-change=${this.onOtherDiameter}
      @quantity-clear=${this.onNoOtherDiameter}
    ></bench-number-field>`;
  }

  private onTravel(event: PageEvent<'quantity-change'>): void {
    this.setTube({ travelM: event.detail / 100 });
  }

  private onReading(event: PageEvent<'quantity-change'>): void {
    this.setRule({ readingStandardUncertaintyM: event.detail / 1000 });
  }

  private onNoReading(): void {
    this.setRule({ readingStandardUncertaintyM: null });
  }

  private readonly checkZero = (value: number): string | null => {
    const { experiment } = this.session;
    const moved = { ...experiment, rule: { ...experiment.rule, zeroOffsetM: value / 100 } };
    const fault = columnFault(moved);
    return fault === null ? null : columnFaultWords(fault);
  };

  private onZero(event: PageEvent<'quantity-change'>): void {
    this.setRule({ zeroOffsetM: event.detail / 100 });
  }

  override render() {
    const { tube, rule } = this.session.experiment;
    return html`
      <div class="cards">
        <bench-forks class="sheet" .session=${this.session}></bench-forks>
        <section class="sheet stack" aria-label=${laterWords.tube.heading}>
          <h2>${laterWords.tube.heading}</h2>
          <div class="fields">
            <bench-number-field
              label=${laterWords.tube.diameter}
              hint=${laterWords.tube.diameterHint}
              optional
              .kind=${QUANTITIES.diameterMm}
              .draft=${fieldDraft(this.session, 'diameter')}
              .value=${tube.diameterM === null ? null : tube.diameterM * 1000}
              @quantity-change=${this.onDiameter}
              @quantity-clear=${this.onNoDiameter}
            ></bench-number-field>
            ${this.otherDiameter(this.session.experiment)}
            <bench-number-field
              label=${laterWords.tube.travel}
              hint=${laterWords.tube.travelHint}
              .kind=${QUANTITIES.travelCm}
              .draft=${fieldDraft(this.session, 'travel')}
              .value=${tube.travelM * 100}
              @quantity-change=${this.onTravel}
            ></bench-number-field>
            <label>
              ${laterWords.tube.stopper}
              ${choice({
                options: STOPPERS.map((value) => ({ value, name: laterWords.tube.stoppers[value] })),
                now: () => this.session.experiment.tube.stopper,
                choose: (stopper) => this.setTube({ stopper: stopper as Stopper }),
              })}
            </label>
            <bench-number-field
              label=${laterWords.tube.zero}
              hint=${laterWords.tube.zeroHint}
              .kind=${QUANTITIES.zeroOffsetCm}
              .draft=${fieldDraft(this.session, 'zero offset')}
              .value=${rule.zeroOffsetM * 100}
              .check=${this.checkZero}
              @quantity-change=${this.onZero}
            ></bench-number-field>
            <bench-number-field
              class="wide"
              label=${laterWords.tube.reading}
              hint=${laterWords.tube.readingHint(readingTakenWords())}
              optional
              .kind=${QUANTITIES.readingMm}
              .draft=${fieldDraft(this.session, 'reading')}
              .value=${rule.readingStandardUncertaintyM === null ? null : rule.readingStandardUncertaintyM * 1000}
              @quantity-change=${this.onReading}
              @quantity-clear=${this.onNoReading}
            ></bench-number-field>
          </div>
          <bench-mouth .session=${this.session}></bench-mouth>
          <p class="caution">${laterWords.tube.caution}</p>
        </section>
        <bench-places class="sheet" .session=${this.session}></bench-places>
      </div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-apparatus': ApparatusElement;
  }
}
