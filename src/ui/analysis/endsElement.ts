import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { endPlot } from '../../report/plots/endPlot.ts';
import { plotPicture } from '../../report/plots/picture.ts';
import type { Session } from '../../session/session.ts';
import { measuredTubes, otherRecords, tubesOfRecords } from '../../session/experiment/measuredTubes.ts';
import { laterWords } from '../../words/inUse.ts';
import { tubeNames } from '../../words/tubeNames.ts';
import { endRatio } from '../../solver/endRatio.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { PartElement } from '../parts/partElement.ts';
import { workingOut } from '../parts/workingOut.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/pictureElement.ts';

/** End correction against diameter: the open experiment's tube and those of the notebook's other experiments. */
@customElement('bench-ends')
export class EndsElement extends PartElement {
  static override styles = sharedStyles;

  @property({ attribute: false }) session!: Session;
  /** Of the notebook's other experiments. */
  @state() private records: readonly unknown[] = [];
  protected readonly watch = new SessionWatch(this, ['notebook', 'answers']);

  override firstUpdated(): void {
    // Without a notebook there is the open experiment alone.
    void this.session.keeping.list().then((listed) => {
      if ('value' in listed) this.records = otherRecords(this.session.experiment.id, listed.value);
    });
  }

  override render() {
    const { experiment, outcome } = this.session;
    const others = this.session.answers.ask(
      { kind: 'tubes', about: this.records, ask: null },
      tubesOfRecords,
    );
    const measured = [...measuredTubes(experiment, outcome), ...(others.value ?? [])];
    const names = tubeNames(measured);
    const tubes = measured.map((tube, index) => ({ ...tube, name: names[index] }));
    return html`<section class="stack" aria-label=${laterWords.ends.heading}>
      <h2>${laterWords.ends.heading}${workingOut(others.isPending || this.session.isWorkingOut)}</h2>
      <p class="lead">${laterWords.ends.lead}</p>
      <bench-picture
        name="end-correction"
        .picture=${plotPicture(endPlot(tubes, endRatio(tubes)))}
      ></bench-picture>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-ends': EndsElement;
  }
}
