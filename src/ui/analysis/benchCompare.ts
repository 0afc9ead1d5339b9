import { LitElement, css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { hidesTheory, statementWithoutTheory } from '../../report/hideTheory.ts';
import { placeLabel } from '../../report/marksCsv.ts';
import { plotPicture } from '../../report/plots/picture.ts';
import { placeSpeeds, temperaturePlot } from '../../report/plots/temperaturePlot.ts';
import { resultLines } from '../../report/resultLines.ts';
import { comparedGroups, comparePairs } from '../../session/benchCompare.ts';
import type { CompareBy } from '../../session/benchCompare.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/benchPicture.ts';
import './benchEnds.ts';
import './benchTurnRound.ts';

const WAYS = [
  { by: 'place', name: 'places (and their temperatures)' },
  { by: 'fork', name: 'forks' },
  { by: 'ends', name: 'closed against open' },
] as const;

/** How a second one to compare comes about. */
const ANOTHER: Readonly<Record<CompareBy, string>> = {
  place: 'Add a place under Apparatus, choose it above the column and mark a resonance there.',
  fork: 'Add a fork under Apparatus, choose it above the column and mark a resonance with it.',
  ends: 'Choose the other kind of column above the picture and mark a resonance in it.',
};

/** Is a difference real? Places, temperatures, forks, column types; what they have in common cancels. */
@customElement('bench-compare')
export class BenchCompare extends LitElement {
  static override styles = [
    sharedStyles,
    css`
      .cards {
        --card: 26rem;
      }
      li {
        margin-inline-start: 1.25rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: BenchSession;
  @state() private by: CompareBy = 'place';
  protected readonly watch = new BenchWatch(this, ['notebook']);

  private onBy(event: Event): void {
    const way = WAYS.find((one) => one.by === (event.target as HTMLSelectElement).value);
    if (way !== undefined) this.by = way.by;
  }

  override render() {
    const isHidden = hidesTheory(this.session.experiment);
    return html`<div class="cards">
      <section class="sheet stack" aria-label="Compare">
        <h2>Is the difference real?</h2>
        <p class="lead">
          Errors that two results share (the same rule, the same fork) cancel; the rest decides.
        </p>
        <label
          >Compare
          <select @change=${this.onBy}>
            ${WAYS.map((way) => html`<option value=${way.by} ?selected=${way.by === this.by}>${way.name}</option>`)}
          </select></label
        >
        ${this.findings()}
      </section>
      ${isHidden ? html`<p class="sheet">Theory is hidden in this lesson.</p>` : this.temperatures()}
      ${
        isHidden
          ? nothing
          : html`<bench-turn-round class="sheet" .session=${this.session}></bench-turn-round>
              <bench-ends class="sheet" .session=${this.session}></bench-ends>`
      }
    </div>`;
  }

  private temperatures() {
    return html`<section class="sheet stack" aria-label="Speed against temperature">
      <h2>Speed against temperature</h2>
      <p class="lead">One point a place; theory is the band from dry to saturated air.</p>
      ${this.table()}
      <bench-picture
        name="temperature"
        .picture=${plotPicture(
          temperaturePlot(placeSpeeds(this.session.experiment, this.session.outcome.places)),
        )}
      ></bench-picture>
    </section>`;
  }

  private findings() {
    const isHidden = hidesTheory(this.session.experiment);
    const groups = comparedGroups(this.session.experiment, this.by);
    if (groups.length < 2) {
      const one = groups.at(0);
      return html`<p>
        ${
          one === undefined
            ? 'There is no mark with a length yet: measure under Measure first.'
            : `There is only “${one.name}” to compare yet. ${ANOTHER[this.by]}`
        }
      </p>`;
    }
    return html`<ul class="stack">
      ${comparePairs(groups).map((finding) =>
        finding.differenceMps === null
          ? finding.warnings.map((warning) => html`<li>${warning.message}</li>`)
          : html`<li>${isHidden ? statementWithoutTheory(finding) : finding.statement}</li>`,
      )}
    </ul>`;
  }

  private table() {
    const { experiment, outcome } = this.session;
    if (outcome.places.length === 0) return nothing;
    return html`<div class="scroll">
      <table>
        <thead>
          <tr>
            <th scope="col">Place</th>
            <th scope="col" class="number">Speed</th>
            <th scope="col">Compared with theory</th>
          </tr>
        </thead>
        <tbody>
          ${outcome.places.map(({ placeId, solution }) => {
            const lines = resultLines(solution);
            return html`<tr>
              <th scope="row">${placeLabel(experiment, placeId)}</th>
              <td class="number">
                ${lines.speed === null ? '—' : `${lines.speed.value} ± ${lines.speed.uncertainty} m/s`}
              </td>
              <td>
                ${lines.facts.find((fact) => fact.name === 'Difference')?.value ?? 'temperature not noted'}
              </td>
            </tr>`;
          })}
        </tbody>
      </table>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-compare': BenchCompare;
  }
}
