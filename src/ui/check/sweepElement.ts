import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { sweepDurationS } from '../../capture/sweepPlan.ts';
import type { SweepPlan } from '../../capture/sweepPlan.ts';
import { LOUDEST_AMPLITUDE, TonePlayer } from '../../capture/tonePlayer.ts';
import { plotPicture } from '../../report/plots/picture.ts';
import { sweepPlot } from '../../report/plots/sweepPlot.ts';
import { trustWords } from '../../words/captureTrust.ts';
import { laterWords } from '../../words/inUse.ts';
import { listeningWarningWords } from '../../words/listening.ts';
import {
  lostWords,
  sweepFailureWords,
  sweepFaultWords,
  sweepNote,
  sweepRows,
  sweepWords,
} from '../../words/sweep.ts';
import type { SweepRemark } from '../../words/sweep.ts';
import type { SweepResonances } from '../../resonance/sweep/sweepResonances.ts';
import type { CaptureTrust } from '../../session/hearing/captureTrust.ts';
import type { SweepFindings, SweepRun, SweepState } from '../../session/hearing/sweepRun.ts';
import { sweepRange } from '../../session/hearing/sweepRange.ts';
import { sweepFault } from '../../session/hearing/sweepFault.ts';
import type { Session } from '../../session/session.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { QUANTITIES } from '../readQuantity.ts';
import type { PageEvent } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/pictureElement.ts';
import '../parts/lengthField.ts';
import '../parts/numberField.ts';

/** Slow enough that the narrowest resonance is met by ten frames, fast enough for a lesson. */
const RATE_HZ_PER_S = 12;
/** Of the cap: the played sweep starts quiet, and the device's own volume does the rest. */
const LOUDNESS = 0.25;

const GROWS_EVERY_MS = 1000;

const loadTools = () => import('./sweepTools.ts');

/** The other way round: the column's length stays, a slowly swept tone finds the pitches at which it resonates. */
@customElement('bench-sweep')
export class SweepCardElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      .fields {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(8rem, 1fr));
        gap: var(--gap-2);
      }
      .speed {
        font-size: clamp(1.5rem, 1.2rem + 1.4vw, 2.25rem);
        font-weight: 600;
        line-height: 1.1;
      }
      label.choice {
        display: flex;
        align-items: center;
        gap: var(--gap-2);
        min-block-size: var(--target);
      }
      progress {
        inline-size: 100%;
      }
      .length {
        font-size: var(--text-small);
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private lengthM: number | null = null;
  @state() private fromHz = 200;
  @state() private toHz = 800;
  @state() private isPractice = true;
  @state() private sweepState: SweepState = { kind: 'idle' };
  @state() private fault: string | null = null;
  /** What the sweep that goes on has heard until now. */
  @state() private growing: SweepResonances | null = null;
  private grewAt = 0;
  /** Whether a person chose the range: then none is proposed any more. */
  private isOwnRange = false;
  private readonly player = new TonePlayer();
  private sweep: SweepRun | null = null;
  /** Null until they are needed. */
  private tools: Awaited<ReturnType<typeof loadTools>> | null = null;
  /** Of the sweep whose result is shown. */
  private wasPractice = true;
  protected readonly watch = new SessionWatch(this, ['notebook']);

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.cancel();
  }

  private get plan(): SweepPlan {
    return { fromHz: this.fromHz, toHz: this.toHz, rateHzPerS: RATE_HZ_PER_S };
  }

  private async start(): Promise<void> {
    const { lengthM, plan } = this;
    if (lengthM === null) {
      this.fault = laterWords.sweepCard.noLength;
      return;
    }
    const fault = sweepFault(this.session.experiment, lengthM, plan, this.isPractice);
    this.fault = fault === null ? null : sweepFaultWords(fault);
    if (fault !== null) return;
    this.tools ??= await loadTools();
    // Meanwhile the view may have been left, or the button pressed once more.
    if (!this.isConnected || this.sweep?.state.kind === 'running') return;
    // One microphone, one listener.
    this.session.hearing.stop();
    const { experiment, hearing } = this.session;
    this.wasPractice = this.isPractice;
    const { SweepRun, sweepSource } = this.tools;
    const source = sweepSource(this.isPractice, experiment, lengthM, plan, hearing.microphoneId);
    this.sweep = new SweepRun(source, plan, experiment.gainCheck ?? null, () => this.onSweep());
    try {
      if (!this.isPractice) await this.player.sweep(plan, LOUDEST_AMPLITUDE * LOUDNESS);
      await this.sweep.start();
    } catch {
      this.cancel();
      this.fault = laterWords.tone.cannotPlay;
    }
  }

  private cancel(): void {
    this.sweep?.cancel();
    this.player.stop();
  }

  private onSweep(): void {
    const next = this.sweep?.state ?? { kind: 'idle' };
    if (next.kind !== 'running') this.player.stop();
    if (next.kind === 'failed') this.fault = sweepFailureWords(next.failure);
    this.sweepState = next;
    this.grow();
  }

  /** The curve shows once a second: who sweeps sees what is heard before it is over. */
  private grow(): void {
    const now = performance.now();
    if (this.sweepState.kind !== 'running') this.growing = null;
    else if (now - this.grewAt >= GROWS_EVERY_MS) {
      this.grewAt = now;
      this.growing = this.sweep?.soFar ?? null;
    }
  }

  private onRange(change: { readonly fromHz?: number; readonly toHz?: number }): void {
    this.isOwnRange = true;
    this.fromHz = change.fromHz ?? this.fromHz;
    this.toHz = change.toHz ?? this.toHz;
  }

  private onLength(event: PageEvent<'length-change'>): void {
    this.lengthM = event.detail?.lengthM ?? null;
    const range = this.lengthM === null ? null : sweepRange(this.session.experiment, this.lengthM);
    if (range !== null && !this.isOwnRange) {
      this.fromHz = range.fromHz;
      this.toHz = range.toHz;
    }
    // Browsers let a page play only soon after a button was pressed: nothing should be waited for then.
    if (this.lengthM !== null) loadTools().catch(() => undefined);
  }

  private onPractice(event: Event): void {
    this.isPractice = (event.target as HTMLInputElement).checked;
  }

  private onNote(note: string): void {
    const isKept = this.session.change('note sweep', (experiment) => ({
      ...experiment,
      note: experiment.note === '' ? note : `${experiment.note}\n${note}`,
    }));
    if (isKept) this.session.tell('info', laterWords.sweepCard.noted);
  }

  override render() {
    const isRunning = this.sweepState.kind === 'running';
    return html`<section class="stack" aria-label=${laterWords.sweepCard.heading}>
      <h2>${laterWords.sweepCard.heading}</h2>
      <p class="lead">${laterWords.sweepCard.lead}</p>
      <div class="fields">
        <div class="length">
          ${laterWords.sweepCard.length}
          <bench-length-field
            label=${laterWords.sweepCard.lengthField}
            .lengthM=${this.lengthM}
            @length-change=${this.onLength}
          ></bench-length-field>
        </div>
        <bench-number-field
          label=${laterWords.sweepCard.from}
          .kind=${QUANTITIES.forkHz}
          .value=${this.fromHz}
          @quantity-change=${(event: PageEvent<'quantity-change'>) => this.onRange({ fromHz: event.detail })}
        ></bench-number-field>
        <bench-number-field
          label=${laterWords.sweepCard.to}
          .kind=${QUANTITIES.forkHz}
          .value=${this.toHz}
          @quantity-change=${(event: PageEvent<'quantity-change'>) => this.onRange({ toHz: event.detail })}
        ></bench-number-field>
      </div>
      <label class="choice"
        ><input
          type="checkbox"
          .checked=${live(this.isPractice)}
          ?disabled=${isRunning}
          @change=${this.onPractice}
        />
        ${laterWords.sweepCard.practice}</label
      >
      ${this.isPractice ? nothing : html`<p class="small">${laterWords.tone.mute}</p>`}
      <p class="row">
        ${
          isRunning
            ? html`<button @click=${this.cancel}>${laterWords.sweepCard.cancel}</button>`
            : html`<button class="primary" @click=${this.start}>${laterWords.sweepCard.start}</button>
                <span class="small">${this.takes}</span>`
        }
      </p>
      ${
        this.sweepState.kind === 'running'
          ? html`<label class="small"
                >${laterWords.sweepCard.sweeping} <progress max="1" .value=${this.sweepState.share}></progress
              ></label>
              ${this.growing === null ? nothing : this.picture(this.growing, laterWords.sweepCard.soFar)}`
          : nothing
      }
      ${this.fault === null ? nothing : html`<p class="fault" role="alert">${this.fault}</p>`}
      ${this.sweepState.kind === 'done' ? this.result(this.sweepState) : nothing}
      <p class="caution">${laterWords.sweepCard.caution}</p>
    </section>`;
  }

  /** Null where no such sweep is possible. */
  private get takes(): string {
    const { takes, takesUnknown } = laterWords.sweepCard;
    return this.durationS === null ? takesUnknown : takes(this.durationS);
  }

  private get durationS(): number | null {
    return this.toHz > this.fromHz ? sweepDurationS(this.plan) : null;
  }

  private result(findings: SweepFindings) {
    const { found, trust } = findings;
    const doubts = this.doubts(findings);
    const { experiment } = this.session;
    const { lengthM } = this;
    const speed = lengthM === null ? null : (this.tools?.speedFromSweep(experiment, lengthM, found) ?? null);
    if (lengthM === null || speed === null) {
      return html`${doubts}
        <p role="status">${laterWords.sweepCard.noResonance}</p>
        ${this.picture(found)}`;
    }
    const words = sweepWords(speed);
    const isHidden = experiment.lesson?.hideTheory === true;
    return html`${doubts}
      <div role="status" class="stack">
        <p class="speed">${words.speed}</p>
        <p class="small">${isHidden ? '' : words.detail}</p>
      </div>
      <div class="scroll">
        <table>
          <thead>
            <tr>
              <th scope="col">${laterWords.sweepCard.order}</th>
              <th scope="col" class="number">${laterWords.sweepCard.resonance}</th>
              <th scope="col" class="number">${laterWords.sweepCard.speed}</th>
            </tr>
          </thead>
          <tbody>
            ${sweepRows(speed).map(
              (row) =>
                html`<tr>
                  <th scope="row">${row.order}</th>
                  <td class="number">${row.frequency}</td>
                  <td class="number">${row.speed}</td>
                </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <p>
        <button @click=${() => this.onNote(sweepNote(speed, lengthM, this.remark(trust)))}>
          ${laterWords.sweepCard.note}
        </button>
      </p>
      ${this.picture(found)}`;
  }

  /** What the notes must say of a sweep besides its result. */
  private remark({ kind }: CaptureTrust): SweepRemark | null {
    if (this.wasPractice) return 'practice';
    return kind === 'trusted' ? null : kind;
  }

  /** What stands against the levels of this sweep, and what to do about it. */
  private doubts({ found, trust, warnings }: SweepFindings) {
    const lost = lostWords(found);
    if (trust.kind === 'trusted' && warnings.length === 0 && lost === null) return nothing;
    const heading = trust.kind === 'doubtful' ? laterWords.sweepCard.inDoubt : laterWords.sweepCard.notProven;
    return html`<div class="stack" role="note" aria-label=${laterWords.sweepCard.doubts}>
      ${
        trust.kind === 'trusted'
          ? nothing
          : html`<p class="caution"><strong>${heading}</strong> ${trustWords(trust, 'sweep')}</p>`
      }
      ${warnings.map((warning) => html`<p class="caution">${listeningWarningWords(warning)}</p>`)}
      ${lost === null ? nothing : html`<p class="caution">${lost}</p>`}
    </div>`;
  }

  /** @param words  in place of what a whole sweep shows */
  private picture(found: SweepResonances, words?: string) {
    const plot = sweepPlot(found, [this.fromHz, this.toHz]);
    return html`<bench-picture
      name="sweep"
      .picture=${plotPicture(words === undefined ? plot : { ...plot, words })}
    ></bench-picture>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-sweep': SweepCardElement;
  }
}
