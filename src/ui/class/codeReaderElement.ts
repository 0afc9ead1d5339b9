import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { ClassDesk } from '../../classroom/classDesk.ts';
import type { Session } from '../../session/session.ts';
import { laterWords } from '../../words/inUse.ts';
import { PartElement } from '../parts/partElement.ts';
import { sharedStyles } from '../sharedStyles.ts';
import { takeCode } from './takeCode.ts';

/** Between two looks, ms: a hand holds a screen still for longer. */
const LOOK_MS = 200;
/** Longer side of the picture that is looked at, pixels: enough for the largest code over half of the picture. */
const LOOK_PX = 900;

/** Reads groups' codes by the device's camera, which is asked for by a press alone. */
@customElement('bench-code-reader')
export class CodeReaderElement extends PartElement {
  static override styles = [
    sharedStyles,
    css`
      video {
        inline-size: 100%;
        max-inline-size: 30rem;
        background: #000000;
      }
      @media print {
        :host {
          display: none;
        }
      }
    `,
  ];

  @property({ attribute: false }) session!: Session;
  @property({ attribute: false }) desk!: ClassDesk;
  @state() private stream: MediaStream | null = null;
  @state() private said = '';
  @query('video') private video!: HTMLVideoElement;
  private timer = 0;
  private last = '';

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.stop();
  }

  private async start(): Promise<void> {
    const devices = (navigator as Partial<Navigator>).mediaDevices;
    if (devices === undefined) {
      this.said = laterWords.camera.none;
      return;
    }
    try {
      const stream = await devices.getUserMedia({
        video: { facingMode: 'environment', width: { ideal: 1280 } },
        audio: false,
      });
      if (!this.isConnected) {
        stream.getTracks().forEach((track) => track.stop());
        return;
      }
      this.stream = stream;
      this.said = laterWords.camera.lead;
      await this.updateComplete;
      this.video.srcObject = stream;
      await this.video.play();
      const { decodeQR } = await import('qr/decode.js');
      this.look(decodeQR);
    } catch (error) {
      this.stop();
      const { name } = error as Error;
      this.said =
        name === 'NotAllowedError'
          ? laterWords.camera.refused
          : name === 'NotFoundError'
            ? laterWords.camera.none
            : laterWords.camera.busy;
    }
  }

  private stop(): void {
    clearTimeout(this.timer);
    this.stream?.getTracks().forEach((track) => track.stop());
    this.stream = null;
    this.last = '';
    this.said = '';
  }

  private look(decode: typeof import('qr/decode.js').decodeQR): void {
    if (this.stream === null) return;
    const text = textIn(this.video, decode);
    // A code stays before the camera for many looks.
    if (text !== null && text !== this.last) {
      this.last = text;
      void takeCode(text, this.desk).then(({ said }) => (this.said = said));
    }
    this.timer = window.setTimeout(() => this.look(decode), LOOK_MS);
  }

  override render() {
    const isOn = this.stream !== null;
    return html`<div class="stack">
      <p>
        <button
          aria-pressed=${isOn ? 'true' : 'false'}
          @click=${() => (isOn ? this.stop() : void this.start())}
        >
          ${isOn ? laterWords.camera.stop : laterWords.camera.start}
        </button>
      </p>
      ${isOn ? html`<video muted playsinline aria-label=${laterWords.camera.picture}></video>` : nothing}
      <p role="status">${this.said}</p>
    </div>`;
  }
}

/** The code in the camera's picture; null where there is none to be read. */
function textIn(video: HTMLVideoElement, decode: typeof import('qr/decode.js').decodeQR): string | null {
  const { videoWidth, videoHeight } = video;
  if (videoWidth === 0) return null;
  const scale = Math.min(1, LOOK_PX / Math.max(videoWidth, videoHeight));
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(videoWidth * scale);
  canvas.height = Math.round(videoHeight * scale);
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) return null;
  context.drawImage(video, 0, 0, canvas.width, canvas.height);
  const { data, width, height } = context.getImageData(0, 0, canvas.width, canvas.height);
  try {
    return decode({ data, width, height });
  } catch {
    return null;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'bench-code-reader': CodeReaderElement;
  }
}
