import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { FILLINGS } from '../../air/gases.ts';
import type { Filling } from '../../air/gases.ts';
import { LONGEST } from '../../limits/longest.ts';
import { newPlace } from '../../notebook/newExperiment.ts';
import type { Place } from '../../notebook/experiment.ts';
import type { Session } from '../../session/session.ts';
import { laterWords, words } from '../../words/inUse.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { choice } from '../parts/choice.ts';
import type { PageEvent } from '../parts/events.ts';
import { pageOf, pageStart } from '../parts/pagesElement.ts';
import { QUANTITIES } from '../readQuantity.ts';
import { PartElement } from '../parts/partElement.ts';
import { fieldDraft } from '../parts/typedEntry.ts';
import { TypedTexts } from '../parts/typedTexts.ts';
import type { TypedText } from '../parts/typedTexts.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { fieldStyles } from './fieldStyles.ts';
import '../parts/numberField.ts';

/** Places on a page. */
const PAGE = 25;

/** Places where is measured, each with its air. Theory is compared at the air's temperature and humidity. */
@customElement('bench-places')
export class PlacesElement extends PartElement {
  static override styles = [
    sharedStyles,
    fieldStyles,
    css`
      li {
        list-style: none;
        border-block-end: 1px solid var(--line);
        padding-block-end: var(--gap-3);
      }
      .name {
        display: flex;
        gap: var(--gap-2);
        align-items: end;
      }
      .name label {
        flex: 1;
        display: grid;
        font-size: var(--text-small);
      }
      .name input {
        font-size: var(--text);
        inline-size: 100%;
      }
      .fields {
        --field: 8rem;
        gap: var(--gap-2);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  /** Where the places that are shown begin. */
  @state() private from = 0;
  private readonly texts = new TypedTexts(this, ({ places }) => places.map(({ id }) => nameOf(id)));
  protected readonly watch = new SessionWatch(this, ['notebook']);

  private setPlace(id: string, change: Partial<Place>): void {
    this.session.change('change place', (experiment) => ({
      ...experiment,
      places: experiment.places.map((place) => (place.id === id ? { ...place, ...change } : place)),
    }));
  }

  private onAdd(): void {
    const id = this.session.newId();
    this.session.change('add place', (experiment) => ({
      ...experiment,
      places: [...experiment.places, newPlace(id, laterWords.places.place(experiment.places.length + 1))],
      present: { ...experiment.present, placeId: id },
    }));
    this.from = this.session.experiment.places.length - 1;
  }

  private onRemove(place: Place): void {
    this.session.change('remove place', (experiment) => {
      const places = experiment.places.filter((other) => other.id !== place.id);
      const first = places.at(0);
      if (first === undefined) return experiment;
      const placeId = experiment.present.placeId === place.id ? first.id : experiment.present.placeId;
      return { ...experiment, places, present: { ...experiment.present, placeId } };
    });
  }

  override render() {
    const { places, marks, deletedMarks } = this.session.experiment;
    const used = new Set([...marks, ...deletedMarks].map((mark) => mark.placeId));
    const begin = pageStart(places.length, this.from, PAGE);
    return html`
      <section class="stack" aria-label=${laterWords.places.heading}>
        <h2>${laterWords.places.heading}</h2>
        <p class="lead">${laterWords.places.lead}</p>
        <ul class="stack">
          ${pageOf(places, begin, PAGE).map((place, onPage) =>
            this.placeFields(place, begin + onPage + 1, used.has(place.id)),
          )}
        </ul>
        <bench-pages
          list="places"
          .total=${places.length}
          .from=${begin}
          .size=${PAGE}
          @page-change=${(event: PageEvent<'page-change'>) => (this.from = event.detail)}
        ></bench-pages>
        <p><button @click=${this.onAdd}>${laterWords.places.add}</button></p>
      </section>
    `;
  }

  private fillingOf(id: string): Filling {
    return this.session.experiment.places.find((place) => place.id === id)?.filling ?? 'air';
  }

  private placeFields(place: Place, number: number, isUsed: boolean) {
    const { experiment } = this.session;
    return html`<li>
      <div class="stack" role="group" aria-label=${laterWords.places.place(number)}>
        <div class="name">
          <label
            >${laterWords.places.name}
            <input
              .value=${place.name}
              maxlength=${LONGEST.name}
              @input=${(event: Event) => this.texts.onInput(event, nameOf(place.id))}
              @change=${(event: Event) => this.texts.onLeave(event, nameOf(place.id))}
          /></label>
          <button
            aria-label=${laterWords.places.removeNamed(number)}
            ?disabled=${isUsed || experiment.places.length === 1}
            @click=${() => this.onRemove(place)}
          >
            ${laterWords.places.remove}
          </button>
        </div>
        <div class="fields">
          <bench-number-field
            label=${laterWords.places.temperature}
            optional
            .kind=${QUANTITIES.temperatureC}
            .draft=${fieldDraft(this.session, `place ${place.id} temperature`)}
            .value=${place.temperatureC}
            @quantity-change=${(event: PageEvent<'quantity-change'>) =>
              this.setPlace(place.id, { temperatureC: event.detail })}
            @quantity-clear=${() => this.setPlace(place.id, { temperatureC: null })}
          ></bench-number-field>
          <bench-number-field
            label=${laterWords.places.temperatureUncertainty}
            hint=${laterWords.places.temperatureUncertaintyHint}
            .kind=${QUANTITIES.temperatureUncertaintyC}
            .draft=${fieldDraft(this.session, `place ${place.id} uncertainty`)}
            .value=${place.temperatureStandardUncertaintyC}
            @quantity-change=${(event: PageEvent<'quantity-change'>) =>
              this.setPlace(place.id, { temperatureStandardUncertaintyC: event.detail })}
          ></bench-number-field>
          <label>
            ${laterWords.places.filling}
            ${choice({
              options: FILLINGS.map((value) => ({ value, name: words.fillingNames[value] })),
              now: () => this.fillingOf(place.id),
              choose: (filling) => this.setPlace(place.id, { filling: filling as Filling }),
            })}
          </label>
          <bench-number-field
            label=${laterWords.places.humidity}
            optional
            .kind=${QUANTITIES.humidityPct}
            .draft=${fieldDraft(this.session, `place ${place.id} humidity`)}
            .value=${place.humidityPct}
            @quantity-change=${(event: PageEvent<'quantity-change'>) =>
              this.setPlace(place.id, { humidityPct: event.detail })}
            @quantity-clear=${() => this.setPlace(place.id, { humidityPct: null })}
          ></bench-number-field>
          <bench-number-field
            label=${laterWords.places.pressure}
            optional
            .kind=${QUANTITIES.pressureHpa}
            .draft=${fieldDraft(this.session, `place ${place.id} pressure`)}
            .value=${place.pressurePa === null ? null : place.pressurePa / 100}
            @quantity-change=${(event: PageEvent<'quantity-change'>) =>
              this.setPlace(place.id, { pressurePa: event.detail * 100 })}
            @quantity-clear=${() => this.setPlace(place.id, { pressurePa: null })}
          ></bench-number-field>
          <bench-number-field
            label=${laterWords.places.co2}
            optional
            .kind=${QUANTITIES.co2Ppm}
            .draft=${fieldDraft(this.session, `place ${place.id} co2`)}
            .value=${place.co2MoleFraction === null ? null : place.co2MoleFraction * 1e6}
            @quantity-change=${(event: CustomEvent<number | null>) =>
              this.setPlace(place.id, { co2MoleFraction: event.detail === null ? null : event.detail / 1e6 })}
          ></bench-number-field>
        </div>
      </div>
    </li>`;
  }
}

function nameOf(id: string): TypedText {
  return {
    field: `place ${id} name`,
    step: 'change place',
    read: ({ places }) => places.find((place) => place.id === id)?.name,
    write: (experiment, name) => ({
      ...experiment,
      places: experiment.places.map((place) => (place.id === id ? { ...place, name } : place)),
    }),
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-places': PlacesElement;
  }
}
