import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Complex } from '../../numeric/complex.ts';
import { circlePicture } from '../../report/plots/circlePlot.ts';
import { loudestPlace, phasorAt } from '../../resonance/following/loudestPlace.ts';
import { resonanceCircles } from '../../session/experiment/resonanceCircles.ts';
import { presentSolution } from '../../session/experiment/turnRound.ts';
import type { Session } from '../../session/session.ts';
import { ratioDb } from '../../tone/level.ts';
import { loudestPlaceWords } from '../../words/circle.ts';
import { laterWords } from '../../words/inUse.ts';
import { markNames } from '../../words/markNames.ts';
import { choice } from '../parts/choice.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { SessionWatch } from '../sessionWatch.ts';
import '../parts/pictureElement.ts';

/** Where no mark has a circle: 1.5 times the fork's own sound, 60° ahead. */
const EXAMPLE: Complex = { re: 0.75, im: 1.5 * Math.sin(Math.PI / 3) };

/** Why the loudest place is not the resonance, with this experiment's own circle. */
@customElement('bench-circle')
export class CircleElement extends PartElement {
  static override styles = sharedStyles;

  @property({ attribute: false }) session!: Session;
  @state() private chosen = '';
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  override render() {
    const { outcome, experiment } = this.session;
    const circles = resonanceCircles(experiment, presentSolution(experiment, outcome));
    const nameMark = markNames(experiment);
    const shown = circles.find(({ key }) => key === this.chosen) ?? circles.at(-1) ?? null;
    const name = shown === null ? laterWords.circlePlot.example : nameMark(shown.key);
    const share = shown?.share ?? EXAMPLE;
    return html`<section class="stack" aria-label=${laterWords.circle.heading}>
      <h2>${laterWords.circle.heading}</h2>
      <p class="lead">${laterWords.circle.lead}</p>
      ${
        circles.length < 2 || shown === null
          ? nothing
          : html`<label
              >${laterWords.circle.mark}
              ${choice({
                options: circles.map(({ key }) => ({ value: key, name: nameMark(key) })),
                now: () => this.shownKey(circles),
                choose: (key) => (this.chosen = key),
              })}</label
            >`
      }
      <p>${shown === null ? laterWords.circle.example : laterWords.circle.own(name)}</p>
      <bench-picture name="circle" .picture=${circlePicture(share, name)}></bench-picture>
      ${this.found(share, shown?.halfWidthM ?? null)}
      ${shown === null || shown.halfWidthM !== null ? nothing : html`<p>${laterWords.circle.noMillimetres}</p>`}
      <p>${laterWords.circle.stays}</p>
    </section>`;
  }

  /** The newest one until another is chosen. */
  private shownKey(circles: readonly { readonly key: string }[]): string {
    return (circles.find(({ key }) => key === this.chosen) ?? circles.at(-1))?.key ?? '';
  }

  private found(share: Complex, halfWidthM: number | null) {
    const place = loudestPlace(share);
    if (place === null) return html`<p>${loudestPlaceWords(null)}</p>`;
    const { halfWidths, size } = place;
    const { re, im } = phasorAt(share, 0);
    const louderDb = ratioDb(size * size, re * re + im * im);
    const offsetM = halfWidthM === null ? null : halfWidths * halfWidthM;
    return html`<p><strong>${loudestPlaceWords({ halfWidths, offsetM, louderDb })}</strong></p>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-circle': CircleElement;
  }
}
