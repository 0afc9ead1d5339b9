import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { fitPlot, residualPlot } from '../../report/plots/fitPlot.ts';
import { plotPicture } from '../../report/plots/picture.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { BenchWatch } from '../benchWatch.ts';
import { BenchElement } from '../parts/benchElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/benchPicture.ts';

/** The fit line and what it leaves over. */
@customElement('bench-fit-picture')
export class BenchFitPicture extends BenchElement {
  static override styles = sharedStyles;

  @property({ attribute: false }) session!: BenchSession;
  protected readonly watch = new BenchWatch(this, ['notebook', 'answers']);

  override render() {
    const { outcome, experiment } = this.session;
    const solution = outcome.places.find((one) => one.placeId === experiment.present.placeId)?.solution;
    if (solution === undefined || solution.speedMps === null) return nothing;
    return html`<section class="stack" aria-label="Fit">
      <h2>Fit</h2>
      <p class="lead">The slope is the speed in the tube; the start below zero is the end correction.</p>
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
    'bench-fit-picture': BenchFitPicture;
  }
}
