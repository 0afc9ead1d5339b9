import { html, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { guard } from 'lit/directives/guard.js';
import { live } from 'lit/directives/live.js';
import type { Experiment } from '../../notebook/experiment.ts';
import { words } from '../../words/inUse.ts';
import { stampedForkWords } from '../../words/page/stage.ts';
import { columnWords, ruleReadingWords } from '../../words/page/columnPicture.ts';
import type { Outcome } from '../../session/experiment/outcome.ts';
import { shownPlaces } from '../../notebook/keptBack.ts';
import { predictColumn } from '../../session/experiment/predictColumn.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { send } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { WidthWatch } from '../parts/widthWatch.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../measure/lengthSlotElement.ts';
import { columnGeometry, toPx } from './columnGeometry.ts';
import type { ColumnGeometry } from './columnGeometry.ts';
import { answerStrength, nearness, nodesAndAntinodes, standingWave, stemsOf } from './columnScene.ts';
import type { Stem } from './columnScene.ts';
import { columnStyles } from './columnStyles.ts';
import { forkArt } from './forkArt.ts';
import { ruleArt } from './ruleArt.ts';
import { stemsArt } from './stemArt.ts';
import { FINE_STEP_M } from './slideSteps.ts';
import { expectedArt, nodesArt, tubeArt, wallsArt, waveArt } from './tubeArt.ts';

/**
 * The air column along its metre rule, to scale, with what is heard, the marks and the handle that slides it.
 * @fires slide  detail: the column's new length in metres
 */
@customElement('bench-column')
export class ColumnElement extends PartElement {
  static override styles = [sharedStyles, columnStyles];

  @property({ attribute: false }) session!: Session;
  /** Length of the column, m, without the rule's zero offset. */
  @property({ type: Number }) lengthM = 0.3;
  /** Where the handle is, m: the tube may still be on its way there. */
  @property({ type: Number }) goalM = 0.3;
  @property({ type: Boolean }) forkAtMouth = true;
  @property({ type: Boolean }) showExpected = true;
  @property({ type: Boolean }) showWave = true;
  /** Whether the column that is heard is the drawn one: a real column's length nobody has told. */
  @property({ type: Boolean }) isHeard = true;
  /** Whether anybody has told how long the column is. */
  @property({ type: Boolean }) isSet = true;
  @property() quantity: 'pressure' | 'displacement' = 'pressure';
  /** Whether lengths are typed over the tube. */
  @property({ type: Boolean }) isTyped = false;
  @state() private widthPx = 900;
  protected readonly width = new WidthWatch(this, (widthPx) => (this.widthPx = Math.round(widthPx)));
  private lastRender = 0;
  private stems: { experiment: Experiment; outcome: Outcome; list: readonly Stem[] } | null = null;
  protected readonly watch = new SessionWatch(this, ['live', 'notebook', 'capture', 'answers'], () =>
    this.onChange(),
  );

  private onChange(): void {
    // Twenty pictures a second would be drawn for nothing: ten are as smooth as a level needs.
    const now = performance.now();
    if (this.session.hearing.isListening && now - this.lastRender < 90) return;
    this.lastRender = now;
    this.requestUpdate();
  }

  private onSlide(event: Event): void {
    const centimetres = Number((event.target as HTMLInputElement).value);
    send(this, 'slide', centimetres / 100);
  }

  /** Puts the keyboard into the length that is typed next. */
  async focusLength(): Promise<void> {
    await this.updateComplete;
    await this.renderRoot.querySelector('bench-length-slot')?.focusLength();
  }

  /** Whether the keyboard is on the slider. */
  get hasKeyboard(): boolean {
    return (this.renderRoot as ShadowRoot).activeElement?.hasAttribute('data-column') === true;
  }

  /** Marks change seldom, the picture ten times a second. */
  private stemsNow(): readonly Stem[] {
    const { experiment, outcomeIfAny: outcome } = this.session;
    if (this.stems?.experiment !== experiment || this.stems.outcome !== outcome)
      this.stems = { experiment, outcome, list: stemsOf(experiment, outcome) };
    return this.stems.list;
  }

  override render() {
    const { experiment, outcomeIfAny: outcome } = this.session;
    const { trace } = this.session.hearing;
    const geometry = columnGeometry(this.widthPx, experiment.tube.travelM);
    const prediction = predictColumn(experiment, outcome);
    const mouthM = experiment.rule.zeroOffsetM;
    const look = { ends: experiment.present.ends, mouthM, farEndM: mouthM + this.lengthM };
    const { isListening } = this.session.hearing;
    const isUnknown = !this.isHeard && (isListening || !this.isSet);
    const shown = shownPlaces(experiment, prediction.basis, isListening);
    const showsExpected = this.showExpected && shown.expected;
    const showsWave = this.showWave && shown.wave && !isUnknown;
    const strength = isListening
      ? answerStrength(trace.points)
      : showsExpected && !isUnknown
        ? 0.5 * nearness(prediction, look.farEndM)
        : 0;
    const fork = this.session.presentFork;
    const stems = this.stemsNow();
    const wave = standingWave(prediction, this.lengthM, this.quantity);
    const slotPx = toPx(geometry, isUnknown ? mouthM : look.farEndM);
    return html`
      ${
        this.isTyped
          ? html`<bench-length-slot .session=${this.session} .atPx=${slotPx}></bench-length-slot>`
          : nothing
      }
      <div class="box">
        <svg
          role="img"
          aria-label=${columnWords(experiment, isUnknown ? null : this.lengthM, stems)}
          viewBox="0 0 ${geometry.widthPx} ${geometry.heightPx}"
          height=${geometry.heightPx}
        >
          <defs>
            <pattern
              id="hatch"
              width="7"
              height="7"
              patternUnits="userSpaceOnUse"
              patternTransform="rotate(45)"
            >
              <path class="hatch" d="M0 0 V7" />
            </pattern>
          </defs>
          ${guard([geometry.widthPx, geometry.travelM], () => ruleArt(geometry))}
          ${
            this.isTyped && this.session.turn.mark !== null && !isUnknown
              ? svg`<path class="hanger" d=${`M${slotPx} -2 V${geometry.tubeTopPx}`} />`
              : nothing
          }
          <rect
            class=${isUnknown ? 'air answer' : 'air'}
            x=${toPx(geometry, mouthM)}
            y=${geometry.tubeTopPx}
            width=${Math.max((isUnknown ? geometry.travelM - mouthM : this.lengthM) * geometry.pxPerM, 0)}
            height=${geometry.tubeBottomPx - geometry.tubeTopPx}
            .style=${`--strength:${strength.toFixed(2)}`}
          />
          ${showsExpected ? expectedArt(geometry, prediction.expected) : nothing}
          ${showsWave ? waveArt(geometry, wave, { ...look, strength, quantity: this.quantity }) : nothing}
          ${
            showsWave && strength > 0.3
              ? nodesArt(geometry, nodesAndAntinodes(prediction, this.lengthM), mouthM)
              : nothing
          }
          ${isUnknown ? wallsArt(geometry, mouthM) : tubeArt(geometry, look)}
          ${forkArt(geometry, {
            label: stampedForkWords(fork.nominalHz),
            isSounding: trace.presentSounding !== null && isListening,
            isAtMouth: this.forkAtMouth,
          })}
          ${guard([geometry.widthPx, geometry.travelM, stems], () => svg`${stemsArt(geometry, stems)}`)}
        </svg>
        ${
          this.session.hearing.isListening && !this.isHeard
            ? html`<div class="handle-room"></div>`
            : this.handle(geometry, mouthM)
        }
      </div>
    `;
  }

  /** A native slider over the rule: its thumb stands under the piston. */
  private handle(geometry: ColumnGeometry, mouthM: number) {
    // A rule may begin so far off, and a tube be so short, that there is hardly anything to slide.
    const longestM = Math.max(geometry.travelM - mouthM, 0);
    const shortestM = Math.min(0.02, longestM);
    // A slider's thumb stays inside its box, so the box reaches half a thumb beyond the travel.
    const halfThumbPx = 22;
    const left = toPx(geometry, mouthM + shortestM) - halfThumbPx;
    const width = (longestM - shortestM) * geometry.pxPerM + 2 * halfThumbPx;
    return html`
      <input
        type="range"
        data-column
        aria-label=${words.columnLabels.handle}
        class=${this.isSet ? '' : 'waits'}
        aria-valuetext=${this.isSet ? ruleReadingWords(mouthM + this.goalM) : words.columnLabels.notSet}
        min=${shortestM * 100}
        max=${longestM * 100}
        step=${FINE_STEP_M * 100}
        .value=${live(String(this.goalM * 100))}
        .style=${`left:${left}px;width:${width}px;top:${geometry.ruleBottomPx - 2}px`}
        @input=${this.onSlide}
      />
      <div class="handle-room"></div>
    `;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-column': ColumnElement;
  }
}
