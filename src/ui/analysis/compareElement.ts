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
import { laterWords } from '../../words/inUse.ts';
import { markNames } from '../../words/markNames.ts';
import { resultLines, speedWords } from '../../words/result.ts';
import { SessionWatch } from '../sessionWatch.ts';
import type { PageEvent } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { choice } from '../parts/choice.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { pageOf } from '../parts/pagesElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import '../parts/pictureElement.ts';
import './endsElement.ts';
import './turnRoundElement.ts';

const WAYS: readonly GroupBy[] = ['place', 'fork', 'ends'];

/** Places on a page of the table. */
const ROWS = 25;

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
    const way = WAYS.find((one) => one === by);
    if (way === undefined) return;
    this.by = way;
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
      <section class="sheet stack" aria-label=${laterWords.compare.region}>
        <h2>${laterWords.compare.heading}</h2>
        <p class="lead">${laterWords.compare.lead}</p>
        <label
          >${laterWords.compare.by}
          ${choice({
            options: WAYS.map((by) => ({ value: by, name: laterWords.compare.ways[by] })),
            now: () => this.by,
            choose: (by) => this.onBy(by),
          })}</label
        >
        ${this.findings()}
      </section>
      ${isHidden ? html`<p class="sheet">${laterWords.compare.theoryHidden}</p>` : this.temperatures()}
      ${
        isHidden
          ? nothing
          : html`<bench-turn-round class="sheet" .session=${this.session}></bench-turn-round>
              <bench-ends class="sheet" .session=${this.session}></bench-ends>`
      }
    </div>`;
  }

  private temperatures() {
    return html`<section class="sheet stack" aria-label=${laterWords.temperatures.heading}>
      <h2>${laterWords.temperatures.heading}${workingOut(this.session.isWorkingOut)}</h2>
      <p class="lead">${laterWords.temperatures.lead}</p>
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
        ${one === undefined ? laterWords.compare.noMark : laterWords.compare.onlyOne[this.by](nameGroup(one))}
      </p>`;
    }
    return html`${this.choiceOfOne(value, nameGroup)}
      ${isPending ? html`<p>${workingOut(isPending)}</p>` : nothing} ${this.pairs(value, nameGroup)}
      <bench-pages
        list="pairs"
        .total=${value.pairCount}
        .from=${value.from}
        .size=${value.oneId === null ? value.pairCount : PAIRS_AT_A_TIME}
        @page-change=${(event: PageEvent<'page-change'>) => (this.from = event.detail)}
      ></bench-pages>`;
  }

  /** With many groups, which is set against the others: nobody reads thousands of pairs. */
  private choiceOfOne({ groupIds, oneId }: CompareFindings, nameGroup: NameGroup) {
    if (oneId === null) return nothing;
    return html`<p class="small">${laterWords.compare.manyPairs(groupIds.length)}</p>
      <label
        >${laterWords.compare.against}
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
            <th scope="col">${laterWords.temperatures.columns.place}</th>
            <th scope="col" class="number">${laterWords.temperatures.columns.speed}</th>
            <th scope="col">${laterWords.temperatures.columns.theory}</th>
          </tr>
        </thead>
        <tbody>
          ${pageOf(places, this.tableFrom, ROWS).map(({ placeId, solution }) => {
            const lines = resultLines(solution);
            return html`<tr>
              <th scope="row">${labels.get(placeId) ?? ''}</th>
              <td class="number">
                ${lines.speed === null ? laterWords.temperatures.noSpeed : speedWords(lines.speed)}
              </td>
              <td>
                ${lines.facts.find(({ kind }) => kind === 'difference')?.value ?? laterWords.temperatures.noTemperature}
              </td>
            </tr>`;
          })}
        </tbody>
      </table>
      <bench-pages
        list="places"
        .total=${places.length}
        .from=${this.tableFrom}
        .size=${ROWS}
        @page-change=${(event: PageEvent<'page-change'>) => (this.tableFrom = event.detail)}
      ></bench-pages>
    </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-compare': CompareElement;
  }
}
