import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { comparisonWithoutTheory, hidesTheory } from '../../report/hideTheory.ts';
import { placeLabels } from '../../notebook/placeLabels.ts';
import { plotPicture } from '../../report/plots/picture.ts';
import { placeSpeeds, temperaturePlot } from '../../report/plots/temperaturePlot.ts';
import { compareGroups, PAIRS_AT_A_TIME } from '../../session/experiment/comparedGroups.ts';
import type { CompareFindings } from '../../session/experiment/comparedGroups.ts';
import type { Session } from '../../session/session.ts';
import type { GroupBy } from '../../session/experiment/countedGroups.ts';
import { comparisonWords, groupNames, noComparisonWords } from '../../words/comparison.ts';
import type { NameGroup } from '../../words/comparison.ts';
import { markNames } from '../../words/markNames.ts';
import { resultLines } from '../../words/result.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { pageOf } from '../parts/pagesElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import '../parts/pictureElement.ts';
import './endsElement.ts';
import './turnRoundElement.ts';

const WAYS = [
  { by: 'place', name: 'places (and their temperatures)' },
  { by: 'fork', name: 'forks' },
  { by: 'ends', name: 'closed against open' },
] as const;

/** Places on a page of the table. */
const ROWS = 25;

/** How a second one to compare comes about. */
const ANOTHER: Readonly<Record<GroupBy, string>> = {
  place: 'Add a place under Apparatus, choose it above the column and mark a resonance there.',
  fork: 'Add a fork under Apparatus, choose it above the column and mark a resonance with it.',
  ends: 'Choose the other kind of column above the picture and mark a resonance in it.',
};

/** Is a difference real? Places, temperatures, forks, column types; what they have in common cancels. */
@customElement('bench-compare')
export class CompareElement extends PartElement {
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

  @property({ attribute: false }) session!: Session;
  @state() private by: GroupBy = 'place';
  /** Of many groups the one that is set against the others; null: the first. */
  @state() private oneId: string | null = null;
  /** Where the pairs that are shown begin, and the places of the table. */
  @state() private from = 0;
  @state() private tableFrom = 0;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  private onBy(by: string): void {
    const way = WAYS.find((one) => one.by === by);
    if (way === undefined) return;
    this.by = way.by;
    this.oneId = null;
    this.from = 0;
  }

  private onOne(id: string): void {
    this.oneId = id;
    this.from = 0;
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
          ${choice({
            options: WAYS.map(({ by, name }) => ({ value: by, name })),
            now: () => this.by,
            choose: (by) => this.onBy(by),
          })}</label
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
      <h2>Speed against temperature${workingOut(this.session.isWorkingOut)}</h2>
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
    const { value, isPending } = this.session.answers.ask(
      {
        kind: 'compare',
        about: this.session.experiment,
        ask: { by: this.by, oneId: this.oneId, from: this.from },
      },
      compareGroups,
    );
    if (value === null || value.by !== this.by) return html`<p>${workingOut(isPending)}</p>`;
    const nameGroup = groupNames(this.session.experiment, this.by);
    if (value.groupIds.length < 2 && !isPending) {
      const one = value.groupIds.at(0);
      return html`<p>
        ${
          one === undefined
            ? 'There is no mark with a length yet: measure under Measure first.'
            : `There is only “${nameGroup(one)}” to compare yet. ${ANOTHER[this.by]}`
        }
      </p>`;
    }
    return html`${this.choiceOfOne(value, nameGroup)}
      ${isPending ? html`<p>${workingOut(isPending)}</p>` : nothing} ${this.pairs(value, nameGroup)}
      <bench-pages
        what="pairs"
        .total=${value.pairCount}
        .from=${value.from}
        .size=${value.oneId === null ? value.pairCount : PAIRS_AT_A_TIME}
        @page-change=${(event: CustomEvent<number>) => (this.from = event.detail)}
      ></bench-pages>`;
  }

  /** With many groups, which is set against the others: nobody reads thousands of pairs. */
  private choiceOfOne({ groupIds, oneId }: CompareFindings, nameGroup: NameGroup) {
    if (oneId === null) return nothing;
    return html`<p class="small">
        ${groupIds.length} of them make ${(groupIds.length * (groupIds.length - 1)) / 2} pairs. Choose one: it
        is compared with each of the others.
      </p>
      <label
        >Against the others
        ${choice({
          options: groupIds.map((id) => ({ value: id, name: nameGroup(id) })),
          now: () => this.oneId ?? oneId,
          choose: (id) => this.onOne(id),
        })}</label
      >`;
  }

  private pairs({ pairs }: CompareFindings, nameGroup: NameGroup) {
    const { experiment } = this.session;
    const isHidden = hidesTheory(experiment);
    const nameMark = markNames(experiment);
    return html`<ul class="stack">
      ${pairs.map((finding) =>
        finding.differenceMps === null
          ? noComparisonWords(finding, nameGroup, nameMark).map((words) => html`<li>${words}</li>`)
          : html`<li>
              ${comparisonWords(isHidden ? comparisonWithoutTheory(finding) : finding, nameGroup)}
            </li>`,
      )}
    </ul>`;
  }

  private table() {
    const { experiment, outcome } = this.session;
    const { places } = outcome;
    if (places.length === 0) return nothing;
    const labels = placeLabels(experiment);
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
          ${pageOf(places, this.tableFrom, ROWS).map(({ placeId, solution }) => {
            const lines = resultLines(solution);
            return html`<tr>
              <th scope="row">${labels.get(placeId) ?? ''}</th>
              <td class="number">
                ${lines.speed === null ? '—' : `${lines.speed.value} ± ${lines.speed.uncertainty} m/s`}
              </td>
              <td>
                ${lines.facts.find(({ kind }) => kind === 'difference')?.value ?? 'temperature not noted'}
              </td>
            </tr>`;
          })}
        </tbody>
      </table>
      <bench-pages
        what="places"
        .total=${places.length}
        .from=${this.tableFrom}
        .size=${ROWS}
        @page-change=${(event: CustomEvent<number>) => (this.tableFrom = event.detail)}
      ></bench-pages>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-compare': CompareElement;
  }
}
