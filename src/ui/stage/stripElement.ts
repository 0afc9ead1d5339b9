import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { isUnsure } from '../../marks/unsureMark.ts';
import type { Experiment } from '../../notebook/experiment.ts';
import { markIndex } from '../../notebook/markList.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { words } from '../../words/inUse.ts';
import { flagLabel, stripWords } from '../../words/page/strip.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { ThemeWatch } from '../themeWatch.ts';
import type { StripChart } from './stripChart.ts';

/** The last minute as a strip: tone at the fork's frequency, the room in the same band, the whole sound; flags on it. */
@customElement('bench-strip')
export class StripElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .plot {
        position: relative;
        block-size: var(--strip-height, 11rem);
      }
      canvas {
        position: absolute;
        inset: 0;
      }
      .plot p {
        position: absolute;
        inset: 0;
        display: grid;
        place-items: center;
        text-align: center;
        padding: var(--gap-3);
        border: 1px dashed var(--edge);
        border-radius: var(--radius);
      }
      .legend {
        display: flex;
        flex-wrap: wrap;
        gap: 0 var(--gap-4);
        font-size: var(--text-small);
      }
      .legend span::before {
        content: '';
        display: inline-block;
        inline-size: 1.75rem;
        margin-inline-end: var(--gap-1);
        vertical-align: middle;
        border-block-start: 3px solid var(--tone);
      }
      .legend .room::before {
        border-block-start: 3px dashed var(--room);
      }
      .legend .all::before {
        border-block-start: 2px dotted var(--ink-soft);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @query('canvas') private canvas!: HTMLCanvasElement;
  @state() private words: string = words.stripLabels.nothing;
  @state() private chart: StripChart | null = null;
  private isAskedFor = false;
  private labels: { readonly of: Experiment; readonly at: (timeS: number) => string } | null = null;
  private drawn = 0;
  /** A canvas doesn't follow the page's colours by itself, whoever changes them. */
  protected readonly themes = new ThemeWatch(this, () => this.chart?.recolour(getComputedStyle(this)));
  protected readonly watch = new SessionWatch(this, ['live', 'capture', 'notebook'], () => this.onLive());

  override firstUpdated(): void {
    if (this.session.hearing.trace.points.length > 0) void this.loadChart();
  }

  /** The chart comes with the first sound: the page itself doesn't wait for it. */
  private async loadChart(): Promise<void> {
    if (this.isAskedFor) return;
    this.isAskedFor = true;
    const { StripChart } = await import('./stripChart.ts');
    if (!this.isConnected) return;
    this.chart = new StripChart(this.canvas, getComputedStyle(this));
    this.onLive();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.chart?.destroy();
    this.chart = null;
    this.isAskedFor = false;
  }

  private onLive(): void {
    const now = performance.now();
    if (now - this.drawn < 80) return;
    this.drawn = now;
    if (this.session.hearing.isListening) void this.loadChart();
    this.chart?.show(this.session.hearing.trace, this.labelAt());
    this.words = stripWords(this.session.hearing.trace);
  }

  /** A flag bears the number of its mark. */
  private labelAt(): (timeS: number) => string {
    const { experiment } = this.session;
    if (this.labels?.of !== experiment) {
      const index = markIndex(experiment);
      const heard = experiment.marks.flatMap((mark) =>
        mark.evidence === null
          ? []
          : [[mark.evidence.timeS, flagLabel(index.numberOf(mark.id), isUnsure(mark))] as const],
      );
      const at = new Map(heard);
      this.labels = { of: experiment, at: (timeS) => at.get(timeS) ?? '' };
    }
    return this.labels.at;
  }

  override render() {
    return html`
      <div class="plot">
        <canvas role="img" aria-label=${words.stripLabels.alternative(this.words)}></canvas>
        ${this.chart === null ? html`<p class="small" aria-hidden="true">${words.stripLabels.empty}</p>` : nothing}
      </div>
      <p class="legend" aria-hidden="true">
        <span>${words.stripLabels.tone}</span><span class="room">${words.stripLabels.room}</span
        ><span class="all">${words.stripLabels.all}</span>
      </p>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-strip': StripElement;
  }
}
