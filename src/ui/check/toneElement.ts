import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { LOUDEST_AMPLITUDE, TonePlayer } from '../../capture/tonePlayer.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { SessionWatch } from '../sessionWatch.ts';
import { QUANTITIES } from '../readQuantity.ts';
import type { PageEvent } from '../parts/events.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import '../parts/numberField.ts';

/** A played tone where no fork is at hand: starts quiet, swells, and is capped. */
@customElement('bench-tone')
export class ToneElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      input[type='range'] {
        vertical-align: middle;
        padding: 0;
        inline-size: 12rem;
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @state() private pitchHz: number | null = null;
  /** Part of the cap, 1..100. */
  @state() private loudness = 15;
  @state() private isPlaying = false;
  @state() private fault: string | null = null;
  private readonly player = new TonePlayer();
  protected readonly watch = new SessionWatch(this, ['notebook']);

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stop();
  }

  private stop(): void {
    this.player.stop();
    this.isPlaying = false;
  }

  private async play(): Promise<void> {
    try {
      const amplitude = (LOUDEST_AMPLITUDE * this.loudness) / 100;
      await this.player.play(this.pitchHz ?? this.session.presentFork.nominalHz, amplitude);
      this.isPlaying = true;
      this.fault = null;
    } catch {
      this.stop();
      this.fault = laterWords.tone.cannotPlay;
    }
  }

  private onToggle(): void {
    if (this.isPlaying) this.stop();
    else void this.play();
  }

  private onPitch(event: PageEvent<'quantity-change'>): void {
    this.pitchHz = event.detail;
    if (this.isPlaying) void this.play();
  }

  private onLoudness(event: Event): void {
    this.loudness = Number((event.target as HTMLInputElement).value);
    if (this.isPlaying) void this.play();
  }

  override render() {
    return html`<section class="stack" aria-label=${laterWords.tone.heading}>
      <h2>${laterWords.tone.heading}</h2>
      <p class="lead">${laterWords.tone.lead}</p>
      <bench-number-field
        label=${laterWords.tone.pitch}
        .kind=${QUANTITIES.forkHz}
        .value=${this.pitchHz ?? this.session.presentFork.nominalHz}
        @quantity-change=${this.onPitch}
      ></bench-number-field>
      <label
        >${laterWords.tone.loudness}
        <input
          type="range"
          min="1"
          max="100"
          aria-valuetext=${laterWords.tone.loudnessNow(this.loudness)}
          .value=${String(this.loudness)}
          @input=${this.onLoudness}
      /></label>
      <p class="small">${laterWords.tone.mute}</p>
      <p>
        <button aria-pressed=${this.isPlaying ? 'true' : 'false'} @click=${this.onToggle}>
          ${this.isPlaying ? laterWords.tone.stop : laterWords.tone.play}
        </button>
      </p>
      ${this.fault === null ? nothing : html`<p class="fault" role="alert">${this.fault}</p>`}
      <p class="caution">${laterWords.tone.caution}</p>
    </section>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-tone': ToneElement;
  }
}
