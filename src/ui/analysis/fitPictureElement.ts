import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { fitPlot, residualPlot } from '../../report/plots/fitPlot.ts';
import { plotPicture } from '../../report/plots/picture.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/pictureElement.ts';

/** The fit line and what it leaves over. */
@customElement('bench-fit-picture')
export class FitPictureElement extends PartElement {
  static override styles = sharedStyles;

  @property({ attribute: false }) session!: Session;
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  override render() {
    const { outcome, experiment } = this.session;
    const solution = outcome.places.find((one) => one.placeId === experiment.present.placeId)?.solution;
    if (solution === undefined || solution.speedMps === null) return nothing;
    return html`<section class="stack" aria-label=${laterWords.fit.heading}>
      <h2>${laterWords.fit.heading}</h2>
      <p class="lead">${laterWords.fit.lead}</p>
      <bench-picture name="fit" .picture=${plotPicture(fitPlot(experiment, solution))}></bench-picture>
      <bench-picture
        name="residuals"
        .picture=${plotPicture(residualPlot(experiment, solution))}
      ></bench-picture>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-fit-picture': FitPictureElement;
  }
}
