import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { endPlot } from '../../report/plots/endPlot.ts';
import { plotPicture } from '../../report/plots/picture.ts';
import type { StoredExperiment } from '../../notebook/notebookStore.ts';
import type { BenchSession } from '../../session/benchSession.ts';
import { notebookTubes } from '../../session/benchTubes.ts';
import { endRatio } from '../../solver/endRatio.ts';
import { BenchWatch } from '../benchWatch.ts';
import { BenchElement } from '../parts/benchElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/benchPicture.ts';

/** End correction against diameter: the open experiment's tube and those of the notebook's other experiments. */
@customElement('bench-ends')
export class BenchEnds extends BenchElement {
  static override styles = sharedStyles;

  @property({ attribute: false }) session!: BenchSession;
  @state() private stored: readonly StoredExperiment[] = [];
  protected readonly watch = new BenchWatch(this, ['notebook']);

  override firstUpdated(): void {
    // Without a notebook there is the open experiment alone.
    void this.session.keeping.list().then((listed) => (this.stored = 'value' in listed ? listed.value : []));
  }

  override render() {
    const tubes = notebookTubes(this.session.experiment, this.stored);
    return html`<section class="stack" aria-label="End correction against diameter">
      <h2>End correction against diameter</h2>
      <p class="lead">
        One point a tube, each an experiment of its own in the notebook; the end correction needs resonances
        of two orders.
      </p>
      <bench-picture
        name="end-correction"
        .picture=${plotPicture(endPlot(tubes, endRatio(tubes)))}
      ></bench-picture>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-ends': BenchEnds;
  }
}
